/** Keys under which a string is a person. */
const personKeys: ReadonlySet<string> = new Set(['from', 'by', 'person', 'person_to', 'mentions']);
/** Keys under which a string is what somebody typed. */
const textKeys: ReadonlySet<string> = new Set(['text', 'html', 'reason', 'raw']);

/** Where people and texts go when they are taken out of a turn. */
export interface Keeper {
  /** The pseudonym (`p1`, …) of a person, the same each time. */
  person(name: string): string;
  /** What stands in the line for a text: a salted commitment and the number it is kept under. */
  text(text: string): { ref: number; sealed: string };
}

/** Where they come from when they are put back. */
export interface Opener {
  nameOf(pseudonym: string): string;
  textOf(ref: number): string;
}

/** A turn with people and texts taken out, and where they were. */
export interface SealedTurn {
  turn: unknown;
  pointers: string[];
}

/**
 * Takes people's names and free text out of a turn (keys from, by, person, person_to, mentions; text, html,
 * reason, raw, at any depth). Gives a copy that is JSON, well-formed, and the JSON Pointers of what was taken.
 * Throws a TypeError on what JSON cannot hold.
 */
export function sealTurn(turn: unknown, keeper: Keeper): SealedTurn {
  const pointers: string[] = [];
  return { turn: sealed(turn, '', '', keeper, pointers) ?? null, pointers };
}

function sealed(value: unknown, key: string, pointer: string, keeper: Keeper, pointers: string[]): unknown {
  if (typeof value === 'string') return sealedString(value.toWellFormed(), key, pointer, keeper, pointers);
  if (typeof value !== 'object' || value === null) return plain(value);
  if ('toJSON' in value && typeof value.toJSON === 'function') {
    return sealed(value.toJSON(key), key, pointer, keeper, pointers);
  }
  if (Array.isArray(value)) {
    return value.map((each, at) => sealed(each, key, `${pointer}/${at}`, keeper, pointers) ?? null);
  }
  const members: [string, unknown][] = [];
  for (const [name, member] of Object.entries(value)) {
    const kept = sealed(member, name, `${pointer}/${escaped(name)}`, keeper, pointers);
    if (kept !== undefined) members.push([name.toWellFormed(), kept]);
  }
  return Object.fromEntries(members);
}

function sealedString(
  text: string,
  key: string,
  pointer: string,
  keeper: Keeper,
  pointers: string[],
): unknown {
  if (personKeys.has(key)) {
    pointers.push(pointer);
    return keeper.person(text);
  }
  if (textKeys.has(key)) {
    pointers.push(pointer);
    return keeper.text(text);
  }
  return text;
}

function plain(value: unknown): unknown {
  if (typeof value === 'number' && !Number.isFinite(value)) throw new TypeError(`${value} is not JSON.`);
  if (typeof value === 'bigint' || typeof value === 'symbol' || typeof value === 'function') {
    throw new TypeError(`A ${typeof value} is not JSON.`);
  }
  return value;
}

/** A key as a step of a JSON Pointer (RFC 6901, section 3). */
function escaped(key: string): string {
  return key.toWellFormed().replaceAll('~', '~0').replaceAll('/', '~1');
}

// The same few pointers come back on every line: each is split once. Bounded, as keys could be anything.
const splitPointers = new Map<string, readonly string[]>();

function stepsOf(pointer: string): readonly string[] {
  const known = splitPointers.get(pointer);
  if (known !== undefined) return known;
  const steps = pointer
    .split('/')
    .slice(1)
    .map((step) => step.replaceAll('~1', '/').replaceAll('~0', '~'));
  if (splitPointers.size > 10_000) splitPointers.clear();
  splitPointers.set(pointer, steps);
  return steps;
}

/** Puts people and texts back into a parsed line, in place. */
export function openLine(line: { turn: unknown; sealed?: string[] }, opener: Opener): void {
  if (line.sealed === undefined) return;
  for (const pointer of line.sealed) openAt(line, stepsOf(pointer), opener);
}

function openAt(line: { turn: unknown }, steps: readonly string[], opener: Opener): void {
  if (steps.length === 0) {
    line.turn = opened(line.turn, opener);
    return;
  }
  let at: unknown = line.turn;
  for (let i = 0; i < steps.length - 1; i++) at = memberOf(at, steps[i] ?? '');
  const last = steps[steps.length - 1] ?? '';
  if (!isBag(at) || !Object.hasOwn(at, last)) return;
  Object.defineProperty(at, last, {
    value: opened(at[last], opener),
    writable: true,
    enumerable: true,
    configurable: true,
  });
}

function opened(kept: unknown, opener: Opener): unknown {
  if (typeof kept === 'string') return opener.nameOf(kept);
  const ref = memberOf(kept, 'ref');
  return typeof ref === 'number' ? opener.textOf(ref) : kept;
}

function memberOf(value: unknown, key: string): unknown {
  return isBag(value) && Object.hasOwn(value, key) ? value[key] : undefined;
}

function isBag(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}
