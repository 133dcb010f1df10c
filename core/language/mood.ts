import type { Clause, Mood } from './clause.ts';
import { hasTag, type Part } from './part.ts';

const WEAK_REQUEST =
  /^(please|pls|plz|plese|pleae|kindly|someone|somebody|everyone|everybody|whoever|always|go and|try|try to|try 2|lets|let's|tell|ask|mind|must)$/;

/** Forms in which the part that says what happened stands. */
function formsAt(part: Part | undefined): string {
  if (part === undefined) return '';
  const verbs = part.senses.filter((s) => s.sort === 'verb');
  // A noun that could be a verb too ("autoclave") says nothing of mood.
  if (
    part.senses.some((s) => s.sort === 'noun' || s.sort === 'name') &&
    verbs.every((s) => s.form === 'b' || s.form === 's')
  )
    return '';
  return [...new Set(verbs.map((s) => s.form))].join('');
}

/** Whether "did" carries the past for a base form ("did send tip 4"). */
function didBefore(c: Clause, verb: number): boolean {
  return (
    /^(did|have to|had to)$/.test(c.parts[verb - 1]?.text ?? '') ||
    /^(managed to|got to|remembered to)$/.test(c.parts[verb - 1]?.text ?? '')
  );
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

function cuesOf(c: Clause, verb: number): Cues {
  const cues: Cues = { neg: false, intend: false, oblige: false, request: false, urge: false, doubt: false };
  for (const [i, part] of c.parts.entries()) {
    if (part.entity !== undefined || i === verb) continue;
    if (doubts(c, i)) cues.doubt = true;
    if (i > verb) continue;
    if (hasTag(part, 'neg')) cues.neg = true;
    if (hasTag(part, 'intend')) cues.intend = true;
    if (hasTag(part, 'oblige')) cues.oblige = true;
    if (!hasTag(part, 'request')) continue;
    if (WEAK_REQUEST.test(part.text)) cues.request = true;
    else cues.urge = true;
  }
  return cues;
}

/** The part that says what is done: of the verbs that the frame used, a base form counts before what it names. */
function pivotOf(c: Clause, verb: number): number {
  const forms = formsAt(c.parts[verb]);
  if (forms.includes('d') && !/^(i'm|we're|be|is|are|'s)$/.test(c.parts[verb]?.text ?? '')) return verb;
  for (const [i, part] of c.parts.entries()) {
    if (!c.used.has(i) || part.entity !== undefined) continue;
    const own = formsAt(part);
    if (
      own.includes('b') &&
      !own.includes('d') &&
      !hasTag(part, 'be') &&
      !hasTag(part, 'do') &&
      !hasTag(part, 'glue') &&
      part.senses.every((s) => s.sort === 'verb')
    )
      return i;
  }
  return verb;
}

/** True where somebody is asked to do something: "someone bring …", "please send …". */
function requests(c: Clause): boolean {
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
  const polite = c.parts.slice(0, next).some((part) => /^(please|pls|plz|kindly)$/.test(part.text));
  if (
    (polite || /^(mind|remember|don't forget|make sure)$/.test(c.parts[cue]?.text ?? '')) &&
    forms.includes('b') &&
    /^(put|set|shut|cut|split)$/.test(c.parts[next]?.text ?? '')
  )
    return true;
  return next >= 0 && forms.includes('b') && !forms.includes('d') && !forms.includes('n');
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
  return (
    before.text === 'after' || (hasTag(before, 'finish') && /^(finished|done|completed)$/.test(before.text))
  );
}

/** A base form that tells what was done all the same: "I send already", "I begin now", "scan is finish". */
function isBrokenPast(c: Clause, pivot: number, forms: string): boolean {
  const part = c.parts[pivot];
  const before = c.parts[pivot - 1]?.text ?? '';
  if (forms.includes('b') && c.word(/^already$/) >= 0) return true;
  if (hasTag(part, 'start') && /^(i|we)$/.test(before)) return true;
  return hasTag(part, 'finish') && /^(is|'s|are)$/.test(before);
}

/** True where the part that says what happened stands for something past. */
function isPast(c: Clause, pivot: number, forms: string, intend: boolean): boolean {
  if (forms === '' || forms.includes('d') || isBrokenPast(c, pivot, forms)) return true;
  if (isOver(c, pivot, forms) || didBefore(c, pivot)) return true;
  const base = forms.includes('b') && (/^(to|i|we|and)$/.test(c.parts[pivot - 1]?.text ?? '') || intend);
  return forms.includes('n') && !base;
}

/** "Will be calibrated" is meant; "will need … used tip 4" has a past of its own. */
function isMeant(c: Clause, pivot: number, forms: string, past: boolean): boolean {
  const gets = c.parts
    .slice(0, pivot)
    .some((p, i, all) => hasTag(p, 'get') && all.slice(0, i).some((q) => hasTag(q, 'intend')));
  if (gets) return true;
  if (!past || isOver(c, pivot, forms) || forms === '' || forms.includes('b')) return true;
  return /^(be|get|have)$/.test(c.parts[pivot - 1]?.text ?? '');
}

/** How the clause stands to what it says: only what is stated can become a fact. `future` says that its time lies ahead. */
export function moodOf(c: Clause, verb: number, future: boolean): Mood {
  const pivot = pivotOf(c, verb);
  const cues = cuesOf(c, pivot);
  if (cues.doubt && !(cues.oblige && formsAt(c.parts[pivot]).includes('b'))) return 'doubted';
  if (cues.neg || cues.urge || cues.oblige || requests(c) || c.has('habit')) return 'void';
  const forms = formsAt(c.parts[pivot]);
  const past = isPast(c, pivot, forms, cues.intend);
  if (cues.intend && isMeant(c, pivot, forms, past)) return 'planned';
  if (past) return future ? 'planned' : 'stated';
  if (forms.includes('s')) return future ? 'planned' : 'stated';
  if (forms.includes('g')) return future || !PROGRESS.has(tagAt(c, pivot)) ? 'planned' : 'stated';
  return c.carries ? 'planned' : 'void';
}

/** What is under way is a fact already: nothing more needs to happen for it. */
const PROGRESS = new Set([
  'scan',
  'take',
  'bring',
  'go',
  'move',
  'leave',
  'travel',
  'run',
  'start',
  'send',
  'load',
  'be',
  'fog',
  'disconnect',
  'sick',
  'lose',
  'hold',
  'get',
  'come',
  'cold',
  'shut',
  'finish',
  'open',
  'incubate',
  'sterilise',
  'put',
  'drop',
  'retire',
  'cancel',
  'fail',
  'crack',
  'tear',
]);

function tagAt(c: Clause, at: number): string {
  return c.parts[at]?.senses.find((s) => s.sort === 'verb' && s.form === 'g')?.tag ?? '';
}

/** "When it was returned", "when the post comes": a clause that hangs on another. */
function isSubordinate(parts: readonly Part[], next: Part): boolean {
  if (next.mark || next.entity !== undefined) return false;
  if (
    /^(did|was|were|is|are|'s|has|have|had|will|do|does|should|can|could|would|must|shall|last|next|we|you|u|i)$/.test(
      next.text,
    )
  )
    return false;
  return !parts.some((p) => /^(the )?last$|\?/.test(p.text));
}

/** Opens with a word of questions and asks nothing: "when it was returned", "list done and dusted". */
function asksNothing(first: Part, next: Part, parts: readonly Part[]): boolean {
  if (first.text === 'when') return isSubordinate(parts, next);
  return first.text === 'list' && /^(done|is|'s|was|finished|complete|completed)/.test(next.text);
}

/** "Have the scanners been calibrated": "have" opens a question only where "been" follows. */
function haveBeen(first: Part, next: Part, parts: readonly Part[]): boolean {
  return (
    first.text === 'have' && /^(the|those|all|both)$/.test(next.text) && parts.some((p) => p.text === 'been')
  );
}

/** True where a clause opens as a question does. */
export function opensQuestion(parts: readonly Part[]): boolean {
  const at = parts.findIndex((part) => part.entity !== undefined || !opener(part));
  const first = parts[at];
  if (first === undefined || first.entity !== undefined) return false;
  const next = parts[at + 1];
  if (next !== undefined && asksNothing(first, next, parts)) return false;
  if (hasTag(first, 'wh') || hasTag(first, 'anyq')) return true;
  if (next === undefined) return false;
  if (
    /^(is|are|r|am|was|were|has|have|had|can|could|should|will|would|may|shall|isn't|aren't|hasn't|haven't|wasn't|did|do|does|didn't|doesn't|don't)$/.test(
      first.text,
    )
  ) {
    // "Did blue's calibration 30 minutes ago": what is done is owned, and nothing asks.
    if (first.text === 'did' && next.entity?.is === 'scanner' && parts[at + 2]?.text === "'s") return false;
    if (haveBeen(first, next, parts)) return true;
    if (next.entity !== undefined) return next.entity.is !== 'time' || first.text !== 'was';
    return (
      SUBJECTS.test(next.text) ||
      (!/^(have|had|do|did|don't)$/.test(first.text) &&
        /^(the|that|this|my|our|your|those|these|all|both|every|'s)$/.test(next.text)) ||
      (next.unknown && !/^(have|had|will)$/.test(first.text))
    );
  }
  return /^(can i|could i|can we|could we|am i|are we|should i|do i|do we|shall i|should we|may i|can you tell me|did you|have we|have i)$/.test(
    first.text,
  );
}

const SUBJECTS =
  /^(we|i|you|u|people|anyone|anybody|any1|it|they|there|any|he|she|someone|somebody|everyone|us|something|anything|scanner|tip|tips|ye|ya|it possible|either|everything|the scanner)$/;

const OPENERS =
  /^(hi|hello|hey|hiya|morning|so|um|umm|er|erm|uh|sorry|ok|okay|please|pls|and|but|also|guys|all|team|girls|ladies|quick question|oh|right|well|then|just|actually|hi all|morning all|folks|everyone|q|question|excuse me|to ask again|asking again|now|remind me again|again|yo|alright|lads|anyway|btw|hi team|hi guys|hi everyone|good morning|afternoon|thanks|quick one|random q|out of interest|before i start|before i forget|silly question|dumb question|stupid question|eh|aye|ah|hmm)$/;

function opener(part: Part): boolean {
  return part.mark || OPENERS.test(part.text);
}
