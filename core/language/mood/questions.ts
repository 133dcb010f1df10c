import { hasTag, type Part } from '../part.ts';

/** "When it was returned", "when the post comes": a clause that hangs on another. */
function isSubordinate(parts: readonly Part[], next: Part): boolean {
  if (next.mark || next.entity !== undefined) return false;
  if (
    /^(did|was|were|is|are|'s|has|have|had|will|do|does|should|can|could|would|must|shall|last|next|we|you|u|i|(do|did|can|could|should|shall|may|must|have|will) (we|i|you))$/.test(
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

/** "Did the helix get done", "did the load pass": what was done would be told as passed, not pass. */
function didGo(first: Part, next: Part, parts: readonly Part[]): boolean {
  return (
    first.text === 'did' &&
    (/^(the|that|this|our|my|all)$/.test(next.text) || isThing(next)) &&
    parts.some((p) => p.entity === undefined && /^(get|pass|fail|come|go|finish|settle)$/.test(p.text))
  );
}

/** True where a clause opens as a question does. */
export function opensQuestion(parts: readonly Part[]): boolean {
  return namesWhatIsAsked(parts) || opensAsOne(parts);
}

/** "Last time green was wiped", "scans that used tip 4": asked for by its name; nothing that was done now. */
function namesWhatIsAsked(parts: readonly Part[]): boolean {
  const opening = parts.slice(0, 4).map(({ text }) => text);
  return /^(?:the )?(?:last time (?!i |ago)|scans (?:that|which|with) )/.test(opening.join(' '));
}

function opensAsOne(parts: readonly Part[]): boolean {
  const at = parts.findIndex((part) => part.entity !== undefined || !opener(part));
  const first = parts[at];
  if (first === undefined || first.entity !== undefined) return false;
  const next = parts[at + 1];
  if (next !== undefined && asksNothing(first, next, parts)) return false;
  if (hasTag(first, 'wh') || hasTag(first, 'anyq') || first.text === 'are all') return true;
  if (next === undefined) return false;
  if (
    /^(is|are|r|am|was|were|has|have|had|can|could|should|will|would|may|shall|isn't|aren't|hasn't|haven't|wasn't|did|do|does|didn't|doesn't|don't)$/.test(
      first.text,
    )
  ) {
    // "Did blue's calibration 30 minutes ago": what is done is owned, and nothing asks.
    if (first.text === 'did' && next.entity?.is === 'scanner' && parts[at + 2]?.text === "'s") return false;
    if (haveBeen(first, next, parts) || didGo(first, next, parts) || ofThing(first, next)) return true;
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

/** "Is autoclave ready": the article is left out. */
function ofThing(first: Part, next: Part): boolean {
  return /^(is|are|has|does)$/.test(first.text) && isThing(next);
}

function isThing({ entity, senses }: Part): boolean {
  return entity === undefined && senses.some(({ sort, tag }) => sort === 'noun' && THINGS.has(tag));
}

const THINGS = new Set(['scanner', 'tip', 'autoclave', 'cover', 'spore', 'penetration', 'control', 'leak']);

const SUBJECTS =
  /^(we|i|you|u|people|anyone|anybody|any1|any 1|some 1|every 1|it|they|there|any|he|she|someone|somebody|everyone|us|something|anything|scanner|tip|tips|ye|ya|it possible|either|everything|the scanner)$/;

const OPENERS =
  /^(hi|hello|hey|hiya|morning|so|um|umm|er|erm|uh|sorry|ok|okay|please|pls|and|but|also|guys|all|team|girls|ladies|quick question|oh|right|well|then|just|actually|hi all|morning all|folks|everyone|q|question|excuse me|to ask again|asking again|now|remind me again|again|yo|alright|lads|anyway|btw|hi team|hi guys|hi everyone|good morning|afternoon|thanks|quick one|random q|out of interest|before i start|before i forget|silly question|dumb question|stupid question|eh|aye|ah|hmm)$/;

function opener(part: Part): boolean {
  return part.mark || OPENERS.test(part.text);
}
