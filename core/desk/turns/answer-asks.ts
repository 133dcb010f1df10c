import { answer } from '../../answers/answer.ts';
import type { NoteRead } from '../../language/read.ts';
import { lines } from '../../words/message.ts';
import { explain } from '../acts/why.ts';
import type { Target } from '../input.ts';
import { refusesExport } from '../notes/guard-export.ts';
import { offerWalk, walkOn, wantsWalk } from '../questions/walk.ts';
import { type Session, type Speaker, viewOf } from '../session.ts';

/** Answers every ask of a note, each in a post of its own, in reply to it. */
export function answerAsks(
  session: Session,
  speaker: Speaker,
  read: NoteRead,
  target?: Target,
  text?: string,
): void {
  const { draft } = session;
  for (const ask of read.reading.asks) {
    if (ask.kind === 'why') {
      explain(session, speaker, target);
      continue;
    }
    if (refusesExport(session, speaker, ask)) continue;
    if (ask.kind === 'how' && text !== undefined && wantsWalk(text)) {
      walkOn(session, speaker, ask.topic, 0);
      continue;
    }
    const view = {
      ...viewOf(session),
      room: speaker.room,
      from: speaker.from,
      entries: session.timeline,
    };
    const { about, message, items, file } = answer(ask, view);
    const offers = ask.kind === 'how' && text !== undefined;
    const told = offers ? [...message, ...lines('One by one? “walk me through it”.')] : message;
    const key = draft.post(speaker.room, { about, message: told, items, replyTo: speaker.note });
    if (offers) offerWalk(session, speaker, key, ask.topic);
    if (file !== undefined) draft.file(speaker.room, file);
  }
}
