import type { Clause, Mood } from './clause.ts';
import { hasTag, type Part } from './part.ts';

const WEAK_REQUEST =
  /^(please|pls|plz|plese|pleae|kindly|someone|somebody|everyone|everybody|whoever|always|go and|try|try to|try 2|lets|let's|tell|ask|mind|must)$/;
const SELF = /^(i|we|i've|we've|ive|weve|he|she|they|you)$/;

/** Forms in which the part that says what happened stands. */
function formsAt(part: Part | undefined): string {
  if (part === undefined) return '';
  const verbs = part.senses.filter((s) => s.sort === 'verb');
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

function cuesOf(c: Clause, verb: number): Cues {
  const cues: Cues = { neg: false, intend: false, oblige: false, request: false, urge: false, doubt: false };
  for (const [i, part] of c.parts.entries()) {
    if (part.entity !== undefined || i === verb) continue;
    if (hasTag(part, 'doubt')) cues.doubt = true;
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

/** How the clause stands to what it says: only what is stated can become a fact. `future` says that its time lies ahead. */
export function moodOf(c: Clause, verb: number, future: boolean): Mood {
  const cues = cuesOf(c, verb);
  const forms = formsAt(c.parts[verb]);
  const done =
    forms === '' || forms.includes('d') || forms.includes('n') || didBefore(c, verb) || forms.includes('s');
  if (cues.doubt) return cues.neg && !cues.doubt ? 'void' : 'doubted';
  if (cues.neg || cues.urge) return 'void';
  if (cues.oblige) return 'void';
  if (cues.intend)
    return forms === '' ||
      forms.includes('b') ||
      forms.includes('g') ||
      forms.includes('n') ||
      forms.includes('d')
      ? 'planned'
      : 'stated';
  if (forms.includes('g') && !forms.includes('d') && !forms.includes('n'))
    return future ? 'planned' : 'stated';
  if (!done) return future && SELF.test(c.parts[verb - 1]?.text ?? '') ? 'planned' : 'void';
  if (cues.request && !forms.includes('d') && forms.includes('b')) return 'void';
  return future ? 'planned' : 'stated';
}

/** True where a clause opens as a question does. */
export function opensQuestion(parts: readonly Part[]): boolean {
  const at = parts.findIndex((part) => part.entity !== undefined || !opener(part));
  const first = parts[at];
  if (first === undefined || first.entity !== undefined) return false;
  if (hasTag(first, 'wh') || hasTag(first, 'anyq')) return true;
  if (
    /^(is|are|was|were|has|have|had|did|do|does|can|could|should|will|would|can i|could i|can we|should i|do i|do we|shall i|should we|may i|isn't|aren't|hasn't|haven't|didn't|doesn't|wasn't|can you tell me|did you|have we|have i)$/.test(
      first.text,
    )
  ) {
    const next = parts[at + 1];
    return (
      next !== undefined &&
      (next.entity !== undefined ||
        !next.senses.some((s) => s.sort === 'verb' && s.form === 'd') ||
        /^(we|i|the|anyone|it)$/.test(next.text))
    );
  }
  return false;
}

const OPENERS =
  /^(hi|hello|hey|hiya|morning|so|um|umm|er|erm|uh|sorry|ok|okay|please|pls|and|but|also|guys|all|team|girls|ladies|quick question|oh|right|well|then|just|actually|hi all|morning all|folks|everyone|q|question|excuse me|to ask again|asking again|now|remind me again|again|yo|alright|lads|anyway|btw|hi team|hi guys|hi everyone|good morning|afternoon|thanks|quick one|random q|out of interest|before i start|before i forget|silly question|dumb question|stupid question|eh|aye|ah|hmm)$/;

function opener(part: Part): boolean {
  return part.mark || OPENERS.test(part.text);
}
