/** How a value is personal: a person, what somebody typed, or words of ours about them, in any shape. */
export type Personal = 'person' | 'text' | 'whole';

/** Keys under which a string, or each string of an array, is personal; `whole` takes in all that is under the key. */
const personal: ReadonlyMap<string, Personal> = new Map([
  ['from', 'person'],
  ['by', 'person'],
  ['person', 'person'],
  ['person_to', 'person'],
  ['author', 'person'],
  ['mentions', 'person'],
  ['text', 'text'],
  ['html', 'text'],
  ['reason', 'text'],
  ['raw', 'text'],
  ['words', 'text'],
  ['caption', 'text'],
  ['file', 'text'], // the practice file, which names people
  ['message', 'whole'],
]);

/** A key as it is met on every line: written once. */
export interface Key {
  name: string;
  /** As JSON with its colon, after what opens the object. */
  first: string;
  /** The same after a comma. */
  next: string;
  kind: Personal | undefined;
  /** As a step of a JSON Pointer (RFC 6901, section 3). */
  step: string;
}

/** The key of a turn itself. */
export const root: Key = { name: '', first: '', next: '', kind: undefined, step: '' };
// Bounded, as keys could be anything.
const keys = new Map<string, Key>();

/** What is known of a key. Throws TypeError on half a character. */
export function keyOf(name: string): Key {
  const known = keys.get(name);
  if (known !== undefined) return known;
  if (!name.isWellFormed()) throw new TypeError('A key with half a character in it is not JSON.');
  const step = `/${name.replaceAll('~', '~0').replaceAll('/', '~1')}`;
  const text = `${JSON.stringify(name)}:`;
  const key = { name, first: `{${text}`, next: `,${text}`, kind: personal.get(name), step };
  if (keys.size > 10_000) keys.clear();
  keys.set(name, key);
  return key;
}
