import { endOfTag, matchAt, type Scan, textAt } from './scan.ts';

/** A place between two ids of a list where it might have ended. */
export interface Stop {
  /** How many ids stand before it. */
  readonly ids: number;
  /** The token behind the last of them. */
  readonly to: number;
  /** How plainly it parts: 1 for "and", 2 for a comma, 3 for "and tip", 4 for "also". */
  readonly strength: number;
}

/** How plainly what stands between two ids, `to` and `next`, parts them. */
export function strengthOf(scan: Scan, to: number, next: number): number {
  let strength = 1;
  for (let at = to; at < next; at++) {
    const text = textAt(scan, at);
    if (text === 'also') strength = 4;
    else if (endOfTag(scan, at, 'tip') > 0) strength = Math.max(strength, 3);
    else if (text === ',') strength = Math.max(strength, 2);
  }
  return strength;
}

/** What is done to tips on their way round; after these a list of ids is what it was done to. */
const DONE_TO: ReadonlySet<string> = new Set(['use', 'send', 'bag', 'wash', 'load', 'hold']);

/** What a tip is, said behind its number. */
const IS =
  /^(?:is|are|was|were|needs|need|looks|'s|isn't|isnt|aren't|arent|wasn't|not|still|sterile|steril|missing|fine|cracked|torn|wet|dirty|clean|spotless)$/;

/**
 * "Used 5, 4 and 6 sterile": something was done to ids, and behind the last of them stands how one is. They cannot all be
 * both, and of 5 the second would be a dangerous record.
 */
export function tellsAnother(scan: Scan, from: number, to: number): boolean {
  return IS.test(textAt(scan, to)) && isDoneTo(scan, from);
}

function isDoneTo(scan: Scan, from: number): boolean {
  let at = from - 1;
  while (at >= 0 && /^(?:tips?|the|no|nos|number|numbers|#)$/.test(textAt(scan, at))) at--;
  if (/^with$/.test(textAt(scan, at))) return true;
  if (textAt(scan, at) === 'on' && matchAt(scan, at - 1)?.senses.some(({ tag }) => tag === 'debris') === true)
    return true;
  const match = at < 0 ? null : matchAt(scan, at);
  const senses = match?.senses ?? [];
  if (/^(?:is|are|was|were)$/.test(textAt(scan, at))) return false;
  return senses.some((s) => s.sort === 'verb' && DONE_TO.has(s.tag) && s.form !== 'n');
}

/**
 * Where such a list ends: at its plainest place, the last of several; before the last id where one alone is spoken of.
 * `null` where "and" is all there is.
 */
export function lastStop(scan: Scan, to: number, stops: readonly Stop[]): Stop | null {
  const plainest = Math.max(...stops.map(({ strength }) => strength));
  if (plainest > 1) return stops.findLast(({ strength }) => strength === plainest) ?? null;
  const isOne = /^(?:is|was|'s|isn't|isnt|wasn't)$/.test(textAt(scan, to));
  return isOne || stops.length === 1 ? (stops.at(-1) ?? null) : null;
}
