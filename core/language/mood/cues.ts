import type { Clause } from '../clause.ts';
import { hasTag } from '../part.ts';
import { formsAt } from './forms.ts';

const WEAK_REQUEST =
  /^(please|pls|plz|plese|pleae|kindly|someone|somebody|everyone|everybody|whoever|always|go and|try|try to|try 2|lets|let's|tell|ask|mind|must)$/;

/** A word of asking that what follows may yet tell of; "tell Kofi 5 is sterile" never does. */
function isWeak(c: Clause, i: number): boolean {
  const text = c.parts[i]?.text ?? '';
  return WEAK_REQUEST.test(text) && !(text === 'tell' && c.parts[i + 1]?.entity?.is === 'person');
}

interface Cues {
  neg: boolean;
  intend: boolean;
  oblige: boolean;
  request: boolean;
  urge: boolean;
  doubt: boolean;
}

/** "Cliff told me he used K7": what a colleague said of himself is no hearsay. */
function doubts(c: Clause, i: number): boolean {
  const part = c.parts[i];
  return hasTag(part, 'doubt') && !(part?.text === 'told me' && c.parts[i - 1]?.entity?.is === 'person');
}

/** What in a clause tells how it stands to what it says, besides the part that says it. */
export function cuesOf(c: Clause, verb: number): Cues {
  const cues: Cues = { neg: false, intend: false, oblige: false, request: false, urge: false, doubt: false };
  for (const [i, part] of c.parts.entries()) {
    if (part.entity !== undefined || i === verb) continue;
    if (doubts(c, i)) cues.doubt = true;
    if (denies(c, i, verb)) cues.neg = true;
    if (i > verb) continue;
    if (hasTag(part, 'intend')) cues.intend = true;
    if (hasTag(part, 'oblige')) cues.oblige = true;
    if (!hasTag(part, 'request')) continue;
    if (isWeak(c, i)) cues.request = true;
    else cues.urge = true;
  }
  return cues;
}

/** The last of the words of asking that stand together from `cue` on. */
function lastCue(c: Clause, cue: number): number {
  let at = cue;
  while (c.parts[at + 1]?.entity === undefined && hasTag(c.parts[at + 1], 'request')) at++;
  return at;
}

/** A denial before what is said; behind it only where what was not done is named first. */
function denies(c: Clause, i: number, verb: number): boolean {
  // "No wiping done on green"; "no 4" is a number.
  if (c.parts[i]?.text === 'no' && formsAt(c.parts[i + 1]).includes('g')) return true;
  if (
    c.parts[i]?.text === 'no' &&
    c.parts[i + 1]?.entity === undefined &&
    (hasTag(c.parts[i + 1], 'scanner') || hasTag(c.parts[i + 1], 'tip'))
  )
    return true;
  // "Instead of 5 I used 6" denies nothing of 6.
  if (/^(instead of|rather than)$/.test(c.parts[i]?.text ?? '') && c.parts[i + 1]?.entity !== undefined)
    return false;
  return i < verb ? hasTag(c.parts[i], 'neg') : deniesFronted(c, i, verb);
}

/** "Bag I did not make", "cover I haven't put": what was not done is named first. */
function deniesFronted(c: Clause, i: number, verb: number): boolean {
  if (!hasTag(c.parts[i], 'neg')) return false;
  const aux = /^(did|have|has|had|was|were|do|is|are|could)$/.test(c.parts[i - 1]?.text ?? '')
    ? i - 2
    : i - 1;
  const subject = aux > verb && /^(i|we|he|she|they|nobody)$/.test(c.parts[aux]?.text ?? '');
  return subject && !c.parts.slice(i).some((p) => formsAt(p).includes('d'));
}

/** True where somebody is asked to do something: "someone bring …", "please send …". */
export function requests(c: Clause): boolean {
  const cue = c.parts.findIndex(
    (part) =>
      part.entity === undefined &&
      hasTag(part, 'request') &&
      !/^(everyone|everybody|mind|try)$/.test(part.text),
  );
  if (cue < 0) return false;
  const next = c.parts.findIndex(
    (part, i) => i > cue && part.entity === undefined && formsAt(part) !== '' && !hasTag(part, 'be'),
  );
  const forms = formsAt(c.parts[next]);
  // "Please somebody wash 6": who is asked stands right before what is to be done.
  if (next === lastCue(c, cue) + 1 && forms.includes('b') && !forms.includes('d')) return true;
  // "Pls smne wash 4": one word that nobody knows between the asking and what is to be done.
  const stray = next === lastCue(c, cue) + 2 && c.parts[next - 1]?.unknown === true;
  if (stray && forms.includes('b') && !forms.includes('d')) return true;
  const polite = c.parts.slice(0, next).some((part) => /^(please|pls|plz|kindly)$/.test(part.text));
  if (
    (polite || /^(mind|remember|don't forget|make sure)$/.test(c.parts[cue]?.text ?? '')) &&
    forms.includes('b') &&
    /^(put|set|shut|cut|split)$/.test(c.parts[next]?.text ?? '')
  )
    return true;
  return next >= 0 && forms.includes('b') && !forms.includes('d') && !forms.includes('n');
}
