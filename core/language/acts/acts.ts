import type { Clause } from '../clause.ts';
import { made } from '../frames/frame.ts';
import { wordsNumber } from '../lexicon/count.ts';
import type { Entity, Part } from '../part.ts';
import type { Made } from '../result.ts';
import { timeOf } from '../roles/time.ts';
import { resolveForward } from '../times/forward.ts';

const YES =
  /^(yes|yes go ahead|go ahead|yes go for it|yep|yeah|yup|yh|aye|y|ya|yes it (has|did|is|was)|yeh|yea|sure|ok yes|yes please|yes pls|of course|correct|that's right|thats right|right|yes it's|affirmative|yessir|yip|yas|yess|yes (they|we|i) (have|did|are|were)|it (has|did|is)|absolutely|definitely|grand yeah|yeah it (has|did|is|was)|yep it (has|did|is|was)|indeed|si|ja|exactly|true|yes that's right|👍|go on|yeah go on|yes do|please do|yes thanks|yes thank you|yes ta|sure thing|yeah please|confirmed|confirm)$/;
const NO =
  /^(no|nope|nah|no it (hasn't|didn't|isn't|wasn't|hasnt|didnt|isnt|wasnt)|naw|n|no thanks|no thank you|not yet|not really|no ta|no not yet|nay|nope not yet|negative|it (hasn't|didn't|isn't|wasn't|hasnt|didnt)|no (they|we|i) (haven't|didn't|aren't|weren't|havent|didnt)|no way|👎|neither|none|no chance|nah mate|no sorry|sorry no|wrong|no don't|no leave it)$/;
const DONE =
  /^(done|is done|done so it is|all done|done it|did it|that's done|thats done|done that|sorted|all sorted|done now|just done|it's done|its done|both done|finished|completed|have done|i've done it|ive done it|done and dusted|that's sorted|thats sorted|dun|done done|job done|did that|done thanks|done sorry|already done|done already|yes done|yep done|yeah done|did it already|just did it|just done it|done ta|took care of it|taken care of|ticked off|✅|✔|☑|all finished|been done|it's been done|that's been done|it is done|done both|all complete|complete|sorted it|sorted now|done for today|just did|i did it|we did it|doneski|done ya|all good done|sorted thanks|done this|that one's done|that is done)$/;
const UNDO =
  /^((can you |could you |please |pls |plz |oops |sorry |no |wait |scrap that |whoops |actually |ah |oh )*(undo|undo that|undo it|undo this|undo last|undo the last|undo the last one|undo please|scrap that|scratch that|scratch my last entry|scratch my last|scratch the last one|delete that last one|delete my last entry|undo my last entry|delete last entry|ignore that undo|undo ignore that|delete that entry|delete that|delete the last one|delete last|ignore that|ignore the last one|ignore that last one|ignore my last|ignore last|ignore the last message|ignore my last message|ignore last message|ignore me|cancel that|cancel the last one|take that back|i take that back|forget that|forget the last one|remove that|strike that|disregard|disregard that|disregard the last one|disregard my last|disregard my last message|that was wrong|that's wrong|thats wrong|that was a mistake|my mistake|wrong one|revert|revert that|undo my last|never mind my last message|nevermind my last message|strike that last one|strike the last one|ignore last msg|ignore my last msg|ignore last|undo my last note|undo my last message|undo my last one|undo that last one|rewind that|never mind that|nevermind that|bin that|wipe that|scrub that|wrong chat|wrong group|didn't happen|that didn't happen|delete my last|delete my last message|delete my last one|scrap the last one|scrap last|scrap that last note|scrap the last note|scrap my last note|scrap that note|scrap that last one|delete that note|delete that last note|delete my last note|remove my last note|ignore my last note|ignore that note|ignore that last note|cancel that note|void that|void the last one|cancel my last|cancel last|cancel my last message|remove the last one|remove my last|take the last one back|i was wrong|delete last one|undo last one|undo last note|undo the last note)( please| pls| plz| sorry| thanks| thx| ta| x| mate| thank you)*)$/;
/** What is said before an act that means nothing to it, and after it. */
const BEFORE_ACT =
  /^((ok|okay|oh|hi|hey|ah|oops|yes|sorry|um|right|well|morning|hiya|hello|och|gosh|god|kindly|please|pls|and|but|fair|fair enough|whoops|actually|no|wait|argh|damn|everyone|all|team|bot|can you|could you|would you|so)( |$))+/;
/** "Scratch that last entry, I was on the wrong page", "last entry - ignore": a word that takes back, and what was said. */
const TAKE_BACK =
  /^(undo|scrap|scratch|delete|ignore|disregard|forget|strike|remove|cancel|void|retract|withdraw)( (that|the|my|this|last|previous|above|prior|latest|one|entry|message|msg|note|post|line|bit|thing))+( (please|pls|thanks|ta|sorry|all))*( (it|it's|that|that's|i|my|was|wrong|sent|meant|because|as|mistake|error)( .*)?)?$/;
const TAKEN_BACK =
  /^(that |the |my )?(last|previous|above|latest) (one|entry|message|msg|note|post|line) ((please|pls|was|is|should be|to be|can be) )*(ignore|ignored|undo|undone|scrap|scratch|delete|deleted|disregard|wrong|a mistake|mistake)( (wrong|sorry|please|it was|i was)( .*)?)?$/;

const LATER =
  /^(later|not now|remind me later|remind me|remind me again|snooze|snooze it|in a bit|in a minute|in a mo|in a min|ask me later|ask later|ask me again later|ask me again|will do later|later please|later pls|do it later|i'll do it later|ill do it later|remind me in a bit|give me a minute|give me a bit|give me a sec|hold off|not just now|not right now|not yet remind me later|bit later|maybe later|remind later|come back to me|put it off|put that off|leave it for now|can't now|cant now|busy now|busy|busy at the moment|wait|hold on|hang on|one sec|one minute|two ticks|in a while|remind us later|after this patient|after this one|when i'm free|when im free|remind me shortly|later on|come back later|later thanks|later ta|too busy|too busy now|ask me in a bit|ask again later|ping me later|nudge me later|give us a minute|remind me when i'm done|in a second|in a sec|shortly)$/;
const LATER_AT =
  /^(later in|later,|give us a nudge|give me a nudge|give us a shout|give me a shout|nudge|shout|remind me|remind us|remember me|remember us|ask me|ask me again|snooze|later|give me|give us|ping me|nudge me|can you remind me|could you remind me|please remind me|pls remind me|do it|put it off|put that off|ask again|try me|ask|come back|come back to me|remind me again|remind|not now|not yet|tell me again|nudge us|poke me|prompt me|set a reminder|reminder|reminder please|snooze it|snooze for|hold off|hold it|push it|push it back|can you ask me|can you ask me again|remind me about it|remind me about that|will you remind me|wait|delay it|delay|postpone it|leave it|leave it till)( again| please| pls| after| thanks| ta| about it| about that| this| that| it| me| until| till| for| another| to)*$/;

/** The whole note, or a sentence of it, as something to do with what was said; `null` where it is none. */
export function readAct(c: Clause): Made | null {
  const text = words(c);
  const bare = text.replace(
    /^(ok|okay|oh|hi|hey|ah|oops|yes|sorry|um|right|well|morning|hiya|hello)( |$)/,
    '',
  );
  const short = text.replace(
    /( (please|pls|plz|thanks|thank you|thx|ta|cheers|x|xx|now|all|mate|sorry|everyone|team|boss|bot|love|hun))+$/,
    '',
  );
  for (const one of [text, short, bare, bare.replace(/( (please|pls|thanks|thx|ta|x|xx|sorry))+$/, '')]) {
    if (DONE.test(one)) return made('done', {});
    if (UNDO.test(one)) return made('undo', {});
    if (YES.test(one)) return made('yes', {});
    if (NO.test(one)) return made('no', {});
    if (
      LATER.test(one) &&
      !c
        .entities('time')
        .some(
          ({ entity }) =>
            (entity.span.shift !== undefined && entity.span.shift.minutes !== null) ||
            entity.span.clocks.length > 0,
        )
    )
      return made('later', {});
  }
  const told = text.replace(BEFORE_ACT, '');
  if (!namesItem(c) && (TAKE_BACK.test(told) || TAKEN_BACK.test(told))) return made('undo', {});
  return laterAt(c) ?? closing(c) ?? amend(c) ?? pick(c);
}

function namesItem(c: Clause): boolean {
  return c.parts.some((p) => /^(tips|scanner|load|autoclave|no-scanner)$/.test(p.entity?.is ?? ''));
}

function words(c: Clause): string {
  return c.parts
    .filter((p) => !p.mark || p.senses.length > 0)
    .map((p) => (p.entity?.is === 'time' ? c.scope.note.slice(...c.scope.offset(p)).toLowerCase() : p.text))
    .join(' ')
    .replace(/ 's/g, "'s")
    .trim();
}

/** "Snooze 20 minutes": a length with no "in" before it. */
function lengthOf(c: Clause): number | null {
  for (const [i, part] of c.parts.entries()) {
    const value = wordsNumber(part);
    const unit = c.parts[i + 1]?.text ?? '';
    if (value !== null && /^(min|mins|minute|minutes)$/.test(unit)) return value;
    if (value !== null && /^(hour|hours|hr|hrs)$/.test(unit)) return value * 60;
  }
  return null;
}

/** "With a patient, remind me in 20 minutes": where the asking for it begins, after what is said first. */
function reminderAt(c: Clause): number {
  const at = c.parts.findIndex(
    (p, i) => i > 0 && c.parts[i - 1]?.mark && /^(remind|ask|nudge|ping|prompt|snooze)/.test(p.text),
  );
  return at < 0 || namesItem(c) ? 0 : at;
}

function laterAt(c: Clause): Made | null {
  const times = c.entities('time');
  const minutes = times.length === 0 && c.parts.length <= 8 ? lengthOf(c) : null;
  if (
    minutes !== null &&
    c.word(/^(snooze|remind me|remind us|give me|give us|later|ask me|nudge|remind|wait|ping me)$/) >= 0
  ) {
    return made('later', { until: c.scope.time.at + minutes * 60_000 });
  }
  if (times.length === 0) return null;
  const rest = c.parts.slice(reminderAt(c)).filter((p) => p.entity?.is !== 'time' && !p.mark);
  const text = rest
    .map((p) => p.text)
    .join(' ')
    .replace(
      /^(ok|hi|hey|sorry|yes|no|can you|could you|kindly|please|pls|will you|would you|i'm with a patient|busy|not now)( |$)/,
      '',
    )
    .replace(/^(please|pls) /, '')
    .replace(/ (please|pls|thanks|ta|x)$/, '');
  const timeOnly = rest.length === 0;
  if (!timeOnly && !LATER_AT.test(text)) return null;
  if (timeOnly && !(times.length > 1 && /^(later|not now)/i.test(c.scope.note.trim()))) return null;
  const time = timeOf(c);
  if (time === null) return null;
  const when = resolveForward(time.span, c.scope.time);
  const until =
    when.exact || when.times.length > 0 || time.span.days.length > 0 || time.span.part !== undefined
      ? when.start
      : null;
  if (until === null || until <= c.scope.time.at) return made('later', {});
  return made('later', { until });
}

function closing(c: Clause): Made | null {
  const incident = c.at('incident');
  const shut = c.at('shut');
  if (incident < 0 || shut < 0) return null;
  const wide = c.parts.slice(0, Math.max(incident, shut));
  if (
    wide.some((p) => p.unknown || p.entity !== undefined || p.senses.some((s) => s.sort === 'other')) ||
    Math.min(incident, shut) > 3
  )
    return null;
  if (c.has('neg', 'wh', 'oblige') && Math.max(c.at('neg'), c.at('oblige')) < shut) return null;
  const last = Math.max(incident, shut);
  const after = c.parts
    .slice(last + 1)
    .filter((p, i) => !(i === 0 && (p.mark || /^(because|as|since|with)$/.test(p.text))));
  const [first] = after;
  const end = c.parts[c.parts.length - 1];
  if (first === undefined || end === undefined) return made('close', {});
  const reason = c.scope.note
    .slice(c.scope.offset(first)[0], c.scope.offset(end)[1])
    .replace(/^[\s:,.\-–—;]+|[\s.!]+$/g, '');
  return made('close', reason === '' ? {} : { reason });
}

const SORRY =
  /^(och|gosh|my|fat|fingers|thumbs|confusion|correct|right|for the|for|everyone|thank you|oopsie|whoops|whoopsy|dear|wrote|it's|i|make|srry|sry|sorry|excuse me|lads|guys|everyone|pardon|oops|correction|whoops|i meant|meant|i mean|actually|no|make that|should be|should have been|should've been|that should be|that should have been|it was|was|that's|wrong|typo|apologies|soz|my bad|mistake|it should be|wait|edit|correct that to|change that to|change it to|scrap that|rather|not|that was|it's|its|it is|\*|corr|amend|amend that to|amendment|ah|oh|sry|my mistake|whoopsie|hang on|i should have said|i should've said|should say|should read|that should say|read|meant to say|meant to put|meant to type|supposed to be|change to|swap|to|and|instead|for|instead of|with|,|autocorrect|fat fingers|wrong tip|wrong number|wrong one|make it|i ment|ment|wasn't|wasnt|isn't|isnt|the|replace|mean|meaning|that one|instead|it wasn't|that wasn't|was actually|it was actually|please|pls|change|thats|tip|tips|scanner|load|number|in fact|to be|of|rather than|ah sorry|oh sorry|so sorry|bad|say|said|read|typed|put|wrote|i said|i put|i typed|i wrote|meant|all|just|one|that|it|this|is|be|have|been|should|would|'s)$/;

interface Id {
  readonly at: number;
  id: string;
}

/** The ids of a note that is nothing but a correction; `null` where it says anything more. */
function idsIn(c: Clause): Id[] | null {
  const ids: Id[] = [];
  for (const [at, part] of c.parts.entries()) {
    const id = plainId(part.entity) ?? spokenId(part, c);
    if (id === 'many' || (id === null && part.entity !== undefined)) return null;
    if (id !== null) ids.push({ id, at });
    else if (!part.mark && !SORRY.test(part.text) && !/^(x|xx|ta|thanks|team)$/.test(part.text)) return null;
  }
  alike(c, ids);
  return ids;
}

const NOT = /^(not|instead of|rather than|wasn't|wasnt|isn't|isnt|it wasn't|that wasn't)$/;
const CORRECTS =
  /sorry|oops|correct|meant|i mean|make (that|it)|should|typo|actually|wrong|edit|mistake|whoops|ment|soz|amend|\*|that to|rather|it was|instead/;

/** "Sorry, tip 5 not 4", "I meant 5", "not 4, 5", "make that blue". */
function amend(c: Clause): Made | null {
  const [first, second, third] = idsIn(c) ?? [];
  if (first === undefined || third !== undefined) return null;
  const not = c.parts.findIndex((p) => NOT.test(p.text));
  const text = words(c);
  if (second === undefined) return not < 0 && CORRECTS.test(text) ? made('amend', { to: first.id }) : null;
  if (not >= 0) {
    const wrong = second.at > not && first.at < not ? second : first.at > not ? first : second;
    return made('amend', { from: wrong.id, to: wrong === first ? second.id : first.id });
  }
  const exchanged = /change|swap|replace/.test(text) && /\bto\b|with|for/.test(text);
  return exchanged ? made('amend', { from: first.id, to: second.id }) : null;
}

/** "Load 44 not 43", "scanner 1 not 2": a bare number is of the same sort as what it stands beside. */
function alike(c: Clause, ids: readonly Id[]): void {
  const sorts = ids.map(({ at }) => c.parts[at]?.entity);
  const load = sorts.some((entity) => entity?.is === 'load');
  const scanner = sorts.some((entity) => entity?.is === 'scanner');
  for (const one of ids) {
    const entity = c.parts[one.at]?.entity;
    if (entity?.is !== 'tips' || entity.named) continue;
    const digits = one.id.replace(/\D/g, '').replace(/^0+(?=\d)/, '');
    if (load) one.id = digits;
    if (scanner) one.id = c.names.scannerIds.find((id) => id.replace(/\D/g, '') === digits) ?? one.id;
  }
}

/** A number in words stands for the tip of that number, where there is one. */
function spokenId(part: Clause['parts'][number], c: Clause): string | null {
  const sense = part.entity === undefined ? part.senses.find((s) => s.tag === 'number') : undefined;
  if (sense === undefined || part.text === 'one') return null;
  return c.names.tips.find('', sense.ref)[0] ?? sense.ref;
}

function plainId(entity: Entity | undefined): string | 'many' | null {
  switch (entity?.is) {
    case 'tips':
      return entity.which === undefined ? only([...entity.ids, ...entity.unknown]) : 'many';
    case 'scanner':
    case 'load':
      return only(entity.ids);
    case 'site':
    case 'autoclave':
      return entity.id;
    case 'room':
      return entity.rooms[0]?.split('/')[1] ?? null;
    case 'number':
      return entity.text;
    default:
      return null;
  }
}

function only(ids: readonly string[]): string | 'many' {
  const [id, more] = ids;
  return id === undefined || more !== undefined ? 'many' : id;
}

/** Words that may stand beside the answer to "which one?". */
const BESIDE =
  /^(the|please|pls|number|option|one|no|no.|ta|thanks|x|it's|its|that|was|it|it was|yes|yeah|sorry|that one|i meant|in|at|to|xx|um|oh|tip|scanner|'s|that's|choice|erm|of|err|er)$/;

/** A number or a name and nothing more: the answer to "which one?". */
function pick(c: Clause): Made | null {
  if (c.parts.some((p) => p.text === '->' || p.text === 'on')) return null;
  const [solid, more] = c.parts.filter((p) => p.entity !== undefined || (!p.mark && !BESIDE.test(p.text)));
  if (more !== undefined) return null;
  const choice =
    solid === undefined ? oneAlone(c) : (figureOf(c, solid) ?? nameOf(solid) ?? wordOf(c, solid));
  return choice === null ? null : made('pick', { choice });
}

/** "One" said as a number. */
function oneAlone(c: Clause): string | null {
  if (c.parts.length > 3 || c.parts.some((p) => /^(the|that|it)$/.test(p.text))) return null;
  return numberOf(c.parts.find((p) => numberOf(p) !== null));
}

function numberOf(part: Part | undefined): string | null {
  return part?.senses.find((s) => s.tag === 'number')?.ref ?? null;
}

/** The figures as they were typed. */
function figureOf(c: Clause, part: Part): string | null {
  const typed = c.scope.note.slice(...c.scope.offset(part));
  if (/^#\d+$/.test(typed)) return typed.slice(1);
  const { entity } = part;
  if (entity?.is !== 'tips' || entity.named || entity.ids.length + entity.unknown.length !== 1) return null;
  const figures = typed.replace(/\D/g, '');
  return figures === '' ? (entity.ids[0] ?? entity.unknown[0] ?? null) : figures;
}

function nameOf(part: Part): string | null {
  const id = plainId(part.entity);
  const unknown = part.entity?.is === 'tips' && part.entity.unknown.length > 0;
  return id === null || id === 'many' || unknown ? null : id;
}

function wordOf(c: Clause, part: Part): string | null {
  if (part.entity !== undefined) return null;
  const place = ['first', 'second', 'third'].indexOf(part.text);
  if (place >= 0 && c.parts.length <= 3) return String(place + 1);
  if (/^(passed|failed)$/.test(part.text) && c.parts.length <= 2) return part.text;
  return numberOf(part);
}
