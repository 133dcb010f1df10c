/** How a value is personal: a person, what somebody typed, or words of ours about them, in any shape. */
type Personal = 'person' | 'text' | 'whole';

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

/** Where people and texts go when they are taken out of a turn. */
export interface Keeper {
  /** The pseudonym (`p1`, …) of a person, the same each time. */
  person(name: string): string;
  /** What stands in the line for a text: a salted commitment and the number it is kept under. `json`: it is JSON. */
  text(text: string, json: boolean): { ref: number; sealed: string };
}

/** The canonical text of a turn with people and texts taken out, and where they were. */
export interface SealedTurn {
  text: string;
  pointers: string[];
  /** Whether reading the text again gives something else than was given (left-out members, half characters). */
  changed: boolean;
}

/**
 * Takes people's names and free text out of a turn (by the keys above, at any depth) while writing it as canonical JSON (RFC 8785) in one pass: the copy and the second
 * walk of a general writer cost a quarter of an append. Gives the text, well-formed, and the JSON Pointers of
 * what was taken. Throws a TypeError on what JSON cannot hold.
 */
export function sealTurn(turn: unknown, keeper: Keeper): SealedTurn {
  const sealing: Sealing = { keeper, path: [], pointers: [], changed: false };
  const text = written(turn, '', sealing) ?? 'null';
  return { text, pointers: sealing.pointers, changed: sealing.changed };
}

interface Sealing {
  keeper: Keeper;
  /** Steps to the value in hand. */
  path: (string | number)[];
  pointers: string[];
  changed: boolean;
}

function written(value: unknown, key: string, sealing: Sealing): string | undefined {
  if (typeof value === 'string') {
    const kind = personal.get(key);
    return kind === undefined ? writtenString(value, sealing) : writtenPersonal(value, kind, sealing);
  }
  if (!isBag(value)) return writtenPlain(value, sealing);
  if (personal.get(key) === 'whole') return writtenWhole(value, sealing);
  if (typeof value.toJSON === 'function') {
    sealing.changed = true;
    return written(value.toJSON(key), key, sealing);
  }
  if (sealing.path.length > 200)
    throw new TypeError('A turn this deep, or one that holds itself, is not kept.');
  return Array.isArray(value) ? writtenArray(value, key, sealing) : writtenObject(value, sealing);
}

function writtenArray(value: readonly unknown[], key: string, sealing: Sealing): string {
  let text = '[';
  for (let at = 0; at < value.length; at++) {
    sealing.path.push(at);
    text += (at > 0 ? ',' : '') + (written(value[at], key, sealing) ?? 'null');
    sealing.path.pop();
  }
  return `${text}]`;
}

function writtenObject(value: Record<string, unknown>, sealing: Sealing): string {
  let text = '';
  // RFC 8785 orders by UTF-16 code unit, as sort() does.
  for (const key of Object.keys(value).sort()) {
    sealing.path.push(key);
    const member = written(value[key], key, sealing);
    if (member !== undefined) text += `${text === '' ? '{' : ','}${writtenKey(key)}:${member}`;
    sealing.path.pop();
  }
  return text === '' ? '{}' : `${text}}`;
}

/** Nothing that JSON escapes, no half characters: by far the most strings. */
const simple = /^[ !#-[\]-~]*$/;

function writtenString(value: string, sealing: Sealing): string {
  return simple.test(value) ? `"${value}"` : JSON.stringify(wellFormed(value, sealing));
}

function writtenPersonal(value: string, kind: Personal, sealing: Sealing): string {
  const { path, pointers, keeper } = sealing;
  const text = wellFormed(value, sealing);
  pointers.push(pointerOf(path));
  if (kind === 'person') return `"${keeper.person(text)}"`;
  const { ref, sealed } = keeper.text(text, false);
  return `{"ref":${ref},"sealed":"${sealed}"}`;
}

function writtenWhole(value: object, sealing: Sealing): string {
  sealing.pointers.push(pointerOf(sealing.path));
  sealing.changed = true; // as it is not looked into, what JSON leaves out of it is not known
  const { ref, sealed } = sealing.keeper.text(JSON.stringify(value), true);
  return `{"json":true,"ref":${ref},"sealed":"${sealed}"}`;
}

function wellFormed(value: string, sealing: Sealing): string {
  if (value.isWellFormed()) return value;
  sealing.changed = true;
  return value.toWellFormed();
}

function writtenPlain(value: unknown, sealing: Sealing): string | undefined {
  if (typeof value === 'number' && !Number.isFinite(value)) throw new TypeError(`${value} is not JSON.`);
  if (typeof value === 'bigint' || typeof value === 'symbol' || typeof value === 'function') {
    throw new TypeError(`A ${typeof value} is not JSON.`);
  }
  if (value === undefined || Object.is(value, -0)) sealing.changed = true;
  return JSON.stringify(value);
}

// Keys come back on every line. Bounded, as they could be anything.
const writtenKeys = new Map<string, string>();

function writtenKey(key: string): string {
  const known = writtenKeys.get(key);
  if (known !== undefined) return known;
  if (!key.isWellFormed()) throw new TypeError('A key with half a character in it is not JSON.');
  const text = JSON.stringify(key);
  if (writtenKeys.size > 10_000) writtenKeys.clear();
  writtenKeys.set(key, text);
  return text;
}

/** A path as a JSON Pointer (RFC 6901, section 3). */
function pointerOf(path: readonly (string | number)[]): string {
  let pointer = '';
  for (const step of path) {
    pointer += typeof step === 'number' ? `/${step}` : `/${step.replaceAll('~', '~0').replaceAll('/', '~1')}`;
  }
  return pointer;
}

function isBag(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}
