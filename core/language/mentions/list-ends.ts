import { isNumber, matchAt, type Scan, textAt } from './scan.ts';
import { idAt } from './tip-id.ts';

/** True where what stands behind a joint is none of the list before it. */
export function endsList(scan: Scan, at: number): boolean {
  return namesScanner(scan, at) || isFronted(scan, at) || isClock(scan, at);
}

/** "Used tip 4, 9am": no tip 9. */
function isClock(scan: Scan, at: number): boolean {
  return isNumber(scan, at) && /^(?:am|pm|a\.m\.?|p\.m\.?|o'clock|oclock|ish)$/.test(textAt(scan, at + 1));
}

/** "I have bagged 12, and 14 I have sent": who did it stands behind what it was done to. */
function isFronted(scan: Scan, at: number): boolean {
  const item = idAt(scan, at, true);
  if (item === null || !/^(i|we|he|she|they|i've|we've|ive|weve)$/.test(textAt(scan, item.to))) return false;
  return (
    /^(have|has|had|did|'ve|then|also|just|am|was)$/.test(textAt(scan, item.to + 1)) ||
    pastVerb(scan, item.to + 1)
  );
}

function pastVerb(scan: Scan, at: number): boolean {
  return matchAt(scan, at)?.senses.some((s) => s.sort === 'verb' && s.form === 'd') === true;
}

/** "Tips 31 and 32 + no 2" where a scanner is called number two. */
function namesScanner(scan: Scan, at: number): boolean {
  const match = matchAt(scan, at);
  return (
    match !== null &&
    match.to > at + 1 &&
    match.senses.some((s) => s.tag === 'scanner-name' || s.tag === 'scanner-bare')
  );
}

/** "Debris on 3, 8 is fine": behind a comma alone, an id with a verb of one thing speaks of that one. */
export function opensClause(scan: Scan, to: number, next: number): boolean {
  if (textAt(scan, to) !== ',' || next !== to + 1) return false;
  const item = idAt(scan, next, false);
  return item !== null && OPENS.test(textAt(scan, item.to));
}

const OPENS =
  /^(is|was|has|had|isn't|wasn't|hasn't|isnt|wasnt|hasnt|needs|needed|looks|still|not|yet|'s|doesn't|didn't|won't|wouldn't|wants|waiting|awaiting)$/;
