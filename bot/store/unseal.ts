/** Where they come from when they are put back. */
export interface Opener {
  nameOf(pseudonym: string): string;
  textOf(ref: number): string;
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
  at[last] = opened(at[last], opener); // its own member, so nothing inherited is touched
}

function opened(kept: unknown, opener: Opener): unknown {
  if (typeof kept === 'string') return opener.nameOf(kept);
  const ref = memberOf(kept, 'ref');
  if (typeof ref !== 'number') return kept;
  const text = opener.textOf(ref);
  return memberOf(kept, 'json') === true ? parsed(text) : text;
}

/** Empty where what was kept is lost: whoever shows it then shows nothing. */
function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return [];
  }
}

/** What a JSON Pointer points to in a turn, or undefined. */
export function valueAt(turn: unknown, pointer: string): unknown {
  let at = turn;
  for (const step of stepsOf(pointer)) at = memberOf(at, step);
  return at;
}

function memberOf(value: unknown, key: string): unknown {
  return isBag(value) && Object.hasOwn(value, key) ? value[key] : undefined;
}

function isBag(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}
