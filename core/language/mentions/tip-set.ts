import type { TipSet } from '../../reading/slots.ts';
import type { TipsSaid } from '../part.ts';
import { endOfTag, type Finder, type Found, isNumber, type Scan, textAt } from './scan.ts';
import { tipList } from './tip-list.ts';
import { BARRING, barring, FILLERS, NOUNS, setBySense, setNamed, WHOLE } from './tip-set-words.ts';

/** "All the used tips bar 3", "the rest of the bagged ones", "all tips". */
export const tipsBySet: Finder = (scan, from) => {
  const head = textAt(scan, from);
  const stated = allBut(scan, from);
  if (stated !== null) return stated;
  if (!WHOLE.has(head) && head !== 'the' && setNamed(head) === undefined) return null;
  const lead = leadOf(scan, from);
  if (lead === null) return null;
  const said = relativeSet(scan, lead.to);
  if (said !== null && lead.whole) return withExceptions(scan, said.which, said.to, lead.rest);
  const which = setNamed(textAt(scan, lead.to)) ?? setBySense(scan, lead.to);
  const at = which === undefined ? lead.to : lead.to + 1;
  const noun = textAt(scan, at);
  if (!NOUNS.has(noun))
    return lead.whole && which !== undefined ? bareSet(scan, from, which, at, lead.rest) : null;
  if (which !== undefined && countsOut(scan, at + 1)) return null;
  const whole = lead.whole || (which !== undefined && opens(scan, from));
  if (!isSet(which, whole, noun, head)) return null;
  // "used tips 2 and 6" names them.
  if (tipList(scan, at + 1, 'several') !== null && !BARRING.has(textAt(scan, at + 1))) return null;
  return withExceptions(scan, which ?? 'all', at + 1, lead.rest);
};

/** How many words may tell what is so of all but some: "everything is back on the shelf bar 3". */
const MOST_SAID = 7;

/**
 * "Everything's sterile but 4 and 6", "all of em bagged bar 3": all, and those left out stand at the end. Without this the
 * ones left out would be the only ones named.
 */
function allBut(scan: Scan, from: number): Found | null {
  const head = textAt(scan, from);
  if ((head !== 'all' && head !== 'everything') || !(opens(scan, from) || ofThem(scan, from))) return null;
  let to = from + 1;
  if (head === 'all' && textAt(scan, to) === 'of') to++;
  if (/^(?:them|em|'em)$/.test(textAt(scan, to))) to++;
  // "All but 3 are sterile": those left out are named at once.
  if (barring(scan, to) > 0) return withExceptions(scan, 'all', to, false);
  // "All the used tips", "everything bagged is in": which of them is said.
  if (FILLERS.has(textAt(scan, to)) || NOUNS.has(textAt(scan, to)) || NOUNS.has(textAt(scan, to + 1)))
    return null;
  if (head === 'everything' && relativeSet(scan, to) !== null) return null;
  if (setNamed(textAt(scan, to)) !== undefined && AFTER_SET.test(textAt(scan, to + 1))) return null;
  for (let at = to + 1; at <= to + MOST_SAID && !isHard(textAt(scan, at)); at++) {
    const spared = sparedAt(scan, at);
    // "All good but 4 is cracked" goes on to tell of 4.
    if (spared === null) continue;
    if (!/^$|^[^\p{L}\p{N}]/u.test(textAt(scan, spared.to))) return null;
    const entity: TipsSaid = {
      is: 'tips',
      ids: [],
      unknown: [],
      choices: [],
      which: 'all',
      except: [],
      named: true,
    };
    return { entity, to };
  }
  return null;
}

/** "They're all sterile bar 4". */
function ofThem(scan: Scan, at: number): boolean {
  return /^(?:they're|theyre|they|are|'re|re)$/.test(textAt(scan, at - 1));
}

/** The tips named behind "bar", "except". */
function sparedAt(scan: Scan, at: number): ReturnType<typeof tipList> {
  const from = barring(scan, at);
  if (from < 0) return null;
  const noun = endOfTag(scan, from, 'tip');
  return tipList(scan, noun > 0 ? noun : from, 'several');
}

function isHard(text: string): boolean {
  return text === '' || /^[.!?;\n]$/.test(text);
}

/** "All used bar 3", "all washed are in": the noun goes unsaid. */
function bareSet(scan: Scan, from: number, which: TipSet, at: number, rest: boolean): Found | null {
  // "Used ones - all washed": the set was named before.
  const named = scan.tokens[from - 1]?.kind === 'mark' && NOUNS.has(textAt(scan, from - 2));
  // "All sterile but 4 and 6 are dirty" goes on to tell of those.
  const spared = textAt(scan, at) === 'but' ? sparedAt(scan, at) : null;
  if (spared !== null && /^(is|are|were|was)$/.test(textAt(scan, spared.to))) return null;
  const bare = !named && (barring(scan, at) > 0 || AFTER_SET.test(textAt(scan, at)));
  return bare ? withExceptions(scan, which, at, rest) : null;
}

/** "Everything that was sent", "all the tips that are washed", "everything used". */
function relativeSet(scan: Scan, from: number): { which: TipSet; to: number } | null {
  const everything = textAt(scan, from - 1) === 'everything';
  let at = from;
  if (!everything) {
    if (!NOUNS.has(textAt(scan, at))) return null;
    at++;
  }
  const relative = /^(that|which|we|i)$/.test(textAt(scan, at));
  if (relative) at++;
  while (relative && /^(was|were|is|are|'s|has|have|had|been|got|we|i|we've|i've)$/.test(textAt(scan, at)))
    at++;
  if (!relative && !everything) return null;
  const which = setNamed(textAt(scan, at)) ?? setBySense(scan, at);
  // "Everything washed" says what was done to all; with "that was", or a verb after it, it tells which.
  if (which === undefined || (!relative && !AFTER_SET.test(textAt(scan, at + 1)))) return null;
  return { which, to: at + 1 };
}

/** The beginning of a note, or of what a mark sets off: "used ones - all washed". */
function opens(scan: Scan, at: number): boolean {
  return at === 0 || scan.tokens[at - 1]?.kind === 'mark';
}

/** "Used ones on the tray are 13 and 14" names them. */
function countsOut(scan: Scan, from: number): boolean {
  for (let at = from; at < from + 6; at++)
    if (/^(are|is|:|were)$/.test(textAt(scan, at))) return isNumber(scan, at + 1);
  return isNumber(scan, from) || endOfTag(scan, from, 'tip') > 0;
}

/** What may follow "all used" where the noun goes unsaid. */
const AFTER_SET = /^(in|to|are|is|has|sent|gone|went|now|washed|bagged|except|sterile)$/;

/** Past "all of the", "the rest of the": whether every one is meant, and whether those named before are left out. */
function leadOf(scan: Scan, from: number): { to: number; whole: boolean; rest: boolean } | null {
  let to = from;
  let whole = false;
  let rest = false;
  while (FILLERS.has(textAt(scan, to)) || WHOLE.has(textAt(scan, to))) {
    whole ||= WHOLE.has(textAt(scan, to)) && textAt(scan, to) !== 'other';
    rest ||= /^(?:rest|others?|remaining)$/.test(textAt(scan, to));
    to++;
    if (to > from + 6) return null;
  }
  return { to, whole, rest };
}

function isSet(which: TipSet | undefined, whole: boolean, noun: string, head: string): boolean {
  if (which === undefined) return whole && (noun === 'tips' || /^(?:every|each)$/.test(head));
  return whole || noun === 'tips' || (noun === 'ones' && head === 'the');
}

function withExceptions(scan: Scan, which: TipSet, after: number, rest: boolean): Found {
  const set: TipsSaid = { is: 'tips', ids: [], unknown: [], choices: [], which, except: [], named: true };
  const entity: TipsSaid = rest ? { ...set, rest } : set;
  const at = barring(scan, after);
  if (at < 0) return { entity, to: after };
  const noun = endOfTag(scan, at, 'tip');
  const list = tipList(scan, noun > 0 ? noun : at, 'several');
  if (list === null || list.choices.length > 0) return { entity, to: after };
  return { entity: { ...entity, except: list.ids, unknown: list.unknown }, to: list.to };
}
