import { leadOf } from '../../practice/look-up.ts';
import { canonical } from '../../reading/canonical.ts';
import type { Fact } from '../../reading/fact.ts';
import type { Correction } from '../../rules/question.ts';
import { mayLoosen } from '../../rules/rights.ts';
import { fromIso } from '../../time/instant.ts';
import { lines } from '../../words/message.ts';
import { followUp } from '../after/follow-up.ts';
import { speakFindings } from '../after/speak-findings.ts';
import { strikeReplies } from '../after/strike-replies.ts';
import { sayStillLeaning } from '../follow-on/still-leaning.ts';
import type { NoteLine } from '../note-log.ts';
import { enterFacts } from '../notes/enter-facts.ts';
import { type Session, type Speaker, vouching } from '../session.ts';
import { closeWaitingCorrections } from './close-questions.ts';
import { keepIncidents } from './keep-incidents.ts';
import { guarded, loosened } from './loosens.ts';

/**
 * Puts other facts in a note's place, from the note's own time, or takes them back. What it would loosen is taken from its
 * author within 10 minutes or from the lead, deputy or manager; otherwise it waits for the lead and nothing changes.
 * `speaker.noted` is when the correction was typed: the ten minutes are the person's. True when it was carried out.
 */
export function correct(
  session: Session,
  speaker: Speaker,
  note: NoteLine,
  facts: readonly Fact[],
  why: Correction['why'],
): boolean {
  const { draft, practice, timeline, now } = session;
  const whens = facts.flatMap(({ when }) => fromIso(when) ?? []);
  const isFar = timeline.isFar(note.turn, whens);
  const before = guarded(practice, timeline.state, now, isFar);
  const kept = timeline.ofTurn(note.turn);
  const { from, room, noted } = note;
  const author: Speaker = { from, room, noted, note: note.id, ...vouching(speaker) };
  const first = draft.entries.length;
  timeline.setAside(note.turn);
  const entered = enterFacts(session, author, facts, note.turn);
  const gains = loosened(practice, before, guarded(practice, timeline.state, now, isFar));
  closeWaitingCorrections(session, note.id, speaker.from);
  const may = mayLoosen({
    practice,
    author: note.from,
    asker: speaker.from,
    noted: note.noted,
    now: speaker.noted,
    typed: speaker.typed ?? true,
    ...vouching(speaker),
  });
  if (gains.length > 0 && !may) {
    draft.entries.length = first;
    draft.firstIndex.delete(note.turn);
    timeline.setAside(note.turn);
    timeline.add(kept);
    askLead(session, speaker, { why, note: note.id, place: note.turn, facts, author: speaker.from }, gains);
    return false;
  }
  draft.setsAside.push(note.turn);
  draft.correction = why;
  draft.of = note.id;
  keepIncidents(session, kept, note.turn);
  // What the note said before is gone; what it says now is followed up like a new one, in reply to the correction.
  const reply: Speaker = { ...author, note: speaker.note };
  const said = new Set(kept.map(({ fact }) => canonical(fact)));
  const same = entered.filter(({ what }) => said.has(canonical(what)));
  if (same.length < Math.max(kept.length, entered.length)) strikeReplies(session, note, same, speaker.from);
  const changed = entered.filter((entry) => !same.includes(entry));
  if (changed.length > 0) followUp(session, reply, changed, []);
  else speakFindings(session, reply);
  sayStillLeaning(session, note);
  return true;
}

function askLead(session: Session, speaker: Speaker, correction: Correction, gains: readonly string[]): void {
  const { draft, practice, now } = session;
  const lead = leadOf(practice);
  const message = lines(
    [{ strong: 'Not changed yet: ' }, `that correction would make ${gains.join(', ')}.`],
    `${lead === undefined ? 'The lead' : lead.name} has to allow it: yes or no?`,
  );
  const mentions = lead?.id == null ? [] : [lead.id];
  const key = draft.post(speaker.room, { about: 'question', message, replyTo: speaker.note, mentions });
  const choices = [
    { label: 'yes', value: 'yes' },
    { label: 'no', value: 'no' },
  ];
  const purpose = { sort: 'allow-correction', correction } as const;
  draft.asked.push({
    key,
    room: speaker.room,
    person: null,
    asked: now,
    until: null,
    choices,
    items: [],
    purpose,
  });
}
