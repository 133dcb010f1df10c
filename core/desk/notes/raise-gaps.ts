import { questionFor } from '../../answers/questions.ts';
import type { Gap } from '../../language/read.ts';
import { sitesOfChatRoom } from '../../practice/look-up.ts';
import { item } from '../../reading/slots.ts';
import { loadMeant } from '../../record/load-key.ts';
import type { Purpose } from '../../rules/question.ts';
import { toIso } from '../../time/instant.ts';
import { apply } from '../apply.ts';
import { itemsLately } from '../follow-on/told.ts';
import { askPerson } from '../questions/ask-person.ts';
import { buttonsFor } from '../questions/buttons.ts';
import { type Session, type Speaker, viewOf } from '../session.ts';
import { type Filled, fillGap } from './fill-gap.ts';
import { hintedLately, rememberHint } from './hint.ts';

/** What a note left open: what the record completes without doubt, and what has to be asked. */
export interface Gaps {
  readonly filled: readonly Filled[];
  readonly open: readonly Gap[];
}

/** Completes what the record leaves no doubt of. A doubt that points at danger counts from now, whatever the answer. */
export function fillGaps(session: Session, speaker: Speaker, gaps: readonly Gap[]): Gaps {
  const sites = sitesOfChatRoom(session.practice, speaker.room).map((site) => site.id);
  const filled: Filled[] = [];
  const open: Gap[] = [];
  for (const gap of gaps) {
    doubt(session, speaker, gap);
    const known = fillGap(gap, viewOf(session), sites);
    if (known === null) open.push(gap);
    else filled.push(known);
  }
  return { filled, open };
}

/** Asks back what is open, with numbered choices; what was warned of has been said before. */
export function askGaps(session: Session, speaker: Speaker, open: readonly Gap[]): void {
  for (const gap of open) ask(session, speaker, gap);
}

function doubt(session: Session, speaker: Speaker, gap: Gap): void {
  const of = item.safeParse(gap.unclear.of);
  if (gap.unclear.about !== 'certainty' || !of.success) return;
  // Of a load that no note has spoken of there is nothing yet that the doubt could hold back.
  const { state } = session.timeline;
  if (of.data.startsWith('load:') && loadMeant(state, of.data.slice('load:'.length)) === undefined) return;
  const first = session.draft.entries.length;
  const when = toIso(speaker.noted);
  session.draft.enter({ kind: 'doubted', when, item: of.data }, { ...speaker, by: speaker.from });
  apply(session.timeline, session.draft.entries.slice(first));
}

function ask(session: Session, speaker: Speaker, gap: Gap): void {
  const { draft } = session;
  const sites = sitesOfChatRoom(session.practice, speaker.room).map((site) => site.id);
  const wording = questionFor(gap, viewOf(session), sites, itemsLately(session, speaker));
  if (wording === null) return;
  if (gap.draft === undefined && hintedLately(session, speaker.room)) return;
  const { message, choices, shown } = wording;
  const purpose = completion(gap, speaker, draft.number);
  const key = draft.post(speaker.room, {
    about: 'question',
    message,
    replyTo: speaker.note,
    buttons: buttonsFor(choices, purpose, shown),
  });
  if (purpose === null) {
    rememberHint(session, speaker.room, '');
    return;
  }
  askPerson(session, speaker, key, choices, purpose);
}

function completion(gap: Gap, speaker: Speaker, turn: number): Purpose | null {
  if (gap.draft === undefined) return null;
  const { list, entry } = gap.draft;
  return {
    sort: 'complete',
    turn,
    list,
    draft: entry,
    about: gap.unclear.about,
    slot: gap.slot ?? '',
    form: gap.form ?? 'confirm',
    ...(gap.words === undefined ? {} : { words: gap.words }),
    author: speaker.from,
    note: speaker.note,
    noted: speaker.noted,
  };
}
