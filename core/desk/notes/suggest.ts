import type { NoteRead } from '../../language/read.ts';
import { slipsBetween, suggestionFor } from '../../language/suggest.ts';
import type { Practice } from '../../practice/practice.ts';
import { YES_NO } from '../../rules/question.ts';
import { lines, type Message } from '../../words/message.ts';
import type { NoteInput } from '../input.ts';
import { askPerson } from '../questions/ask-person.ts';
import type { Session, Speaker } from '../session.ts';
import { hintedLately, rememberHint } from './hint.ts';

/**
 * One line with what was probably meant where a note is nearly one: "mvoed grene to norht", "tip 44". A yes takes it as the
 * note would have been. At most one in ten minutes in a chat room, and none where anything else was said.
 */
export function suggest(session: Session, speaker: Speaker, input: NoteInput, read: NoteRead): void {
  const { draft, practice } = session;
  if (!saysNothing(read) || draft.effects.length > 0 || draft.entries.length > 0) return;
  if (input.replyTo !== undefined || hintedLately(session, speaker.room)) return;
  const meant = suggestionFor(
    practice,
    input.text,
    { at: input.at, from: input.from, room: input.room },
    session.read,
  );
  if (meant === null) {
    const hint = hintOf(practice, input.text);
    if (hint === null) return;
    rememberHint(
      session,
      speaker.room,
      draft.post(speaker.room, { about: 'question', message: hint, replyTo: speaker.note }),
    );
    return;
  }
  const key = draft.post(speaker.room, {
    about: 'question',
    message: lines([`Did you mean “${meant.text}”? `, { strong: 'yes' }, ' or ', { strong: 'no' }]),
    replyTo: speaker.note,
    buttons: ['✅', '❌'],
  });
  rememberHint(session, speaker.room, key);
  const [fact] = meant.read.reading.facts;
  const [ask] = meant.read.reading.asks;
  askPerson(session, speaker, key, YES_NO, {
    sort: 'complete',
    turn: draft.number,
    list: fact === undefined ? 'asks' : 'facts',
    draft: { ...(fact ?? ask) },
    about: 'what',
    slot: '',
    form: 'confirm',
    author: speaker.from,
    note: speaker.note,
    noted: speaker.noted,
  });
}

/** A bare name counts as nothing where nothing was asked. */
function saysNothing({ reading: { facts, asks, acts, plans, unclear } }: NoteRead): boolean {
  return (
    facts.length + asks.length + plans.length + unclear.length === 0 &&
    acts.every(({ kind }) => kind === 'pick')
  );
}

/** What to say to a thing of ours alone that is none of the practice's: "tip 44", "scaner D", "norht". */
function hintOf(practice: Practice, text: string): Message | null {
  const words = text.trim().replace(/[.!?]+$/, '');
  const [, noun, id] =
    /^(?:the )?(\p{L}{3,8})(?: ?#?(?=\d)| (?=\p{L}))(\p{L}{0,2}-?\d{1,4}|\p{L})$/iu.exec(words) ?? [];
  if (noun !== undefined && id !== undefined) {
    if (isNear(noun, 'tip') || isNear(noun, 'tips')) return ofTip(practice, id);
    return isNear(noun, 'scanner') ? ofScanner(practice, id) : null;
  }
  return /^\p{L}{4,}$/u.test(words) ? ofSite(practice, words) : null;
}

function isNear(typed: string, word: string): boolean {
  return slipsBetween(typed.toLowerCase(), word, 1) <= 1;
}

const WHAT = 'What was done with it?';

function ofTip({ tips }: Practice, id: string): Message | null {
  const ids = tips.map((tip) => tip.id);
  const asked = id.toLowerCase();
  if (ids.length === 0 || ids.some((own) => own.toLowerCase() === asked || own.replace(/\D/g, '') === asked))
    return null;
  const near = ids.filter((own) => slipsBetween(asked, own.toLowerCase(), 1) <= 1).slice(0, 2);
  const which = near.length === 0 ? 'Which did you mean?' : `Did you mean tip ${near.join(' or ')}?`;
  return lines([{ strong: `There is no tip ${id}.` }, ` ${which} ${WHAT}`]);
}

function ofScanner({ scanners }: Practice, id: string): Message | null {
  if (scanners.length === 0 || scanners.some((own) => own.id.toLowerCase() === id.toLowerCase())) return null;
  const names = scanners.map(({ name }) => name);
  const which = names.length > 3 ? 'Which did you mean?' : `Did you mean ${orOf(names)}?`;
  return lines([{ strong: `There is no scanner ${id.toUpperCase()}.` }, ` ${which} ${WHAT}`]);
}

/** A slip of a site's name, and nothing else. */
function ofSite({ sites, scanners }: Practice, word: string): Message | null {
  const typed = word.toLowerCase();
  const near = sites.filter(({ name, also }) =>
    [name, ...also].some((own) => own.length > 3 && slipsBetween(typed, own.toLowerCase(), 1) === 1),
  );
  const [site, more] = near;
  const named = sites.some(({ name, also }) => [name, ...also].some((own) => own.toLowerCase() === typed));
  if (site === undefined || more !== undefined || named) return null;
  const scanner = scanners[0]?.name ?? 'scanner';
  return lines([
    { strong: `Did you mean ${site.name}?` },
    ` Say what was done, such as “moved ${scanner} to ${site.name}”.`,
  ]);
}

function orOf(names: readonly string[]): string {
  return names.length === 1 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} or ${names.at(-1)}`;
}
