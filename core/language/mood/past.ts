import type { Clause } from '../clause.ts';
import { hasTag } from '../part.ts';

/** Whether "did" carries the past for a base form ("did send tip 4"). */
function didBefore(c: Clause, verb: number): boolean {
  return (
    /^(did|have to|had to)$/.test(c.parts[verb - 1]?.text ?? '') ||
    /^(managed to|got to|remembered to)$/.test(c.parts[verb - 1]?.text ?? '')
  );
}

/** "I'm after calibrating", "finished wiping": an -ing form of what is over. */
function isOver(c: Clause, pivot: number, forms: string): boolean {
  const before = c.parts[pivot - 1];
  if (!forms.includes('g')) return false;
  // "Pouching done for tips 5 and 8", "washing of 3 is over".
  if (
    c.parts
      .slice(pivot + 1)
      .some((p) => hasTag(p, 'finish') && /^(over|done|finished|complete|completed)$/.test(p.text))
  )
    return true;
  if (before === undefined) return false;
  // "Gave it a second go at calibrating".
  if (
    before.text === 'at' &&
    c.word(/^(gave|had|took|given)$/) >= 0 &&
    c.word(/^(go|crack|try|shot|attempt|second go|another go)$/) >= 0
  )
    return true;
  return (
    before.text === 'after' || (hasTag(before, 'finish') && /^(finished|done|completed)$/.test(before.text))
  );
}

/** A base form that tells what was done all the same: "I send already", "I begin now", "scan is finish", "start scan". */
function isBrokenPast(c: Clause, pivot: number, forms: string): boolean {
  const part = c.parts[pivot];
  const before = c.parts[pivot - 1]?.text ?? '';
  if (forms.includes('b') && c.word(/^already$/) >= 0) return true;
  if (hasTag(part, 'start') && /^(i|we)$/.test(before)) return true;
  // With no article it is a telegram, not an order; and an order given in the chat comes too late anyway.
  if (pivot === 0 && hasTag(part, 'start') && c.parts[1]?.text === 'scan')
    return c.word(/^(?:when|once|whenever|asap|now)$/) < 0;
  return hasTag(part, 'finish') && /^(is|'s|are)$/.test(before);
}

/** True where the part that says what happened stands for something past. */
export function isPast(c: Clause, pivot: number, forms: string, intend: boolean): boolean {
  if (forms === '' || forms.includes('d') || isBrokenPast(c, pivot, forms)) return true;
  if (isOver(c, pivot, forms) || didBefore(c, pivot)) return true;
  const base = forms.includes('b') && (/^(to|i|we|and)$/.test(c.parts[pivot - 1]?.text ?? '') || intend);
  return forms.includes('n') && !base;
}

/** "Will be calibrated" is meant; "will need … used tip 4" has a past of its own. */
export function isMeant(c: Clause, pivot: number, forms: string, past: boolean): boolean {
  const gets = c.parts
    .slice(0, pivot)
    .some((p, i, all) => hasTag(p, 'get') && all.slice(0, i).some((q) => hasTag(q, 'intend')));
  if (gets) return true;
  if (!past || isOver(c, pivot, forms) || forms === '' || forms.includes('b')) return true;
  return /^(be|get|have)$/.test(c.parts[pivot - 1]?.text ?? '');
}
