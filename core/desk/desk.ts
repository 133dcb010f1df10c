import { lines } from '../answers/message.ts';
import type { LearnedWord, Reader } from '../language/read.ts';
import { makeReader } from '../language/reader.ts';
import { GRAMMAR_VERSION } from '../language/version.ts';
import { parsePractice } from '../practice/parse.ts';
import type { Practice } from '../practice/practice.ts';
import { type ExportedState, exportState } from '../record/export-state.ts';
import { makeEntry } from '../record/make-entry.ts';
import { Timeline } from '../record/timeline.ts';
import type { View } from '../rules/matter.ts';
import { nextDue, openMatters } from '../rules/matters.ts';
import { notReadyWords, readinessOf } from '../rules/readiness.ts';
import { RULES_VERSION } from '../rules/version.ts';
import { DAY, type Instant, toIso } from '../time/instant.ts';
import { toLocal } from '../time/zone.ts';
import { strikeSettled } from './after/strike-settled.ts';
import { nextMark } from './after/warm-up-marks.ts';
import { apply, instantOf } from './apply.ts';
import { Draft } from './draft.ts';
import type { Post } from './effect.ts';
import type { Input, NoteInput } from './input.ts';
import { LateNotes } from './late-notes.ts';
import { NoteLog } from './note-log.ts';
import { PostLog } from './post-log.ts';
import { QuestionLog } from './question-log.ts';
import { Readers } from './readers.ts';
import { rememberNote } from './remember-note.ts';
import { isSavedDesk, MADE_UNDER, type SavedDesk } from './saved-desk.ts';
import type { Session } from './session.ts';
import type { Cause, Turn, Versions } from './turn.ts';
import { type Looked, look } from './turns/look.ts';
import { onEdit } from './turns/on-edit.ts';
import { onNote } from './turns/on-note.ts';
import { onReaction } from './turns/on-reaction.ts';
import { onRedaction } from './turns/on-redaction.ts';
import { onTick } from './turns/on-tick.ts';
import { withAdded } from './with-added.ts';

const MADE: Versions = { grammar: GRAMMAR_VERSION, rules: RULES_VERSION };

/** Entries that a snapshot keeps beside its state: corrections and late notes of some weeks need no others. */
const RECENT = 4_000;
/** What was said of matters is forgotten after this long, once they are settled; looked at every so many turns. */
const SAID_KEPT_DAYS = 400;
const FORGET_EVERY_TURNS = 4_096;

/** What holds once a practice file was taken: everything a turn works with but its own draft. */
interface Standing {
  practice: Practice;
  file: string;
  /** Made when it is needed: reading a journal back passes by thousands. */
  read: Reader | null;
  learned: readonly LearnedWord[];
  readonly timeline: Timeline;
}

/**
 * The desk: one turn at a time, from what was heard or what fell due to what is kept and what is said. Everything it knows
 * is folded from turns, so reading the journal back gives the same desk. It knows no clock: every instant is an argument.
 */
export class Desk {
  readonly #notes = new NoteLog();
  readonly #posts = new PostLog();
  readonly #questions = new QuestionLog();
  readonly #late = new LateNotes();
  readonly #readers: Readers;
  #turns = 0;
  #standing: Standing | null = null;

  /** `readers`: where to take readers from; desks that come and go in one process may share it. */
  constructor(readers = new Readers(makeReader)) {
    this.#readers = readers;
  }

  /** Everything that it knows, for a snapshot; `cut` as in `Timeline.save`. `null` before a practice file was taken. */
  save(cut?: SavedDesk['timeline']['through']): SavedDesk | null {
    if (this.#standing === null) return null;
    const { file, learned, timeline } = this.#standing;
    return {
      made: MADE_UNDER,
      turns: this.#turns,
      file,
      learned,
      timeline: timeline.save(RECENT, cut),
      notes: this.#notes.save(),
      posts: this.#posts.save(),
      questions: this.#questions.all(),
      late: this.#late.waiting(),
    };
  }

  /**
   * Goes on from what `save` gave; this desk must be new. `false`, and nothing taken, where another build made it: then
   * the journal has to be replayed from its first line. So it has when anything here throws NeedsWholeRecord.
   */
  restore(saved: unknown): boolean {
    if (!isSavedDesk(saved)) return false;
    const parsed = parsePractice(saved.file);
    if ('mistakes' in parsed) return false;
    const { practice } = parsed;
    const { file, learned, turns } = saved;
    this.#standing = { practice, file, learned, timeline: Timeline.restore(saved.timeline), read: null };
    this.#turns = turns;
    this.#notes.restore(saved.notes);
    this.#posts.restore(saved.posts);
    this.#questions.restore(saved.questions);
    this.#late.restore(saved.late);
    return true;
  }

  /** Number of the last turn. */
  get turns(): number {
    return this.#turns;
  }

  /** How many entries it keeps in memory. */
  get size(): number {
    return this.#standing?.timeline.size ?? 0;
  }

  /** Folds a turn of the journal. */
  replay(number: number, turn: Turn): void {
    this.#turns = number;
    const { cause } = turn;
    if (cause.sort === 'practice') this.#takePractice(cause.file, number, turn.at);
    if (this.#standing !== null) {
      const { timeline } = this.#standing;
      for (const place of turn.setsAside ?? []) timeline.setAside(place);
      apply(timeline, turn.entries ?? []);
    }
    this.#remember(turn, number);
  }

  /** Whether an event was taken already. */
  knows(id: string): boolean {
    return this.#notes.knows(id);
  }

  /** What is to be kept and said of one thing heard; `null` where it is nobody's business. */
  take(input: Input, now: Instant): Turn | null {
    return this.#turn(causeOf(input), now, input.from, (session) => {
      switch (input.sort) {
        case 'note':
          return onNote(session, input);
        case 'edit':
          return onEdit(session, input);
        case 'redaction':
          return onRedaction(session, input);
        case 'reaction':
          return onReaction(session, input);
      }
    });
  }

  /** What has fallen due by now; `null` when nothing has. */
  tick(now: Instant): Turn | null {
    return this.#turn({ sort: 'tick' }, now, null, onTick);
  }

  /**
   * Takes a practice file into the record where it differs from the one in force; `null` when it does not.
   * The text must have been checked: throws RangeError on one with mistakes.
   */
  settings(file: string, now: Instant): Turn | null {
    if (this.#standing?.file === file) return null;
    const draft = new Draft(this.#turns + 1, { sort: 'practice', file }, now);
    const turn = draft.finish(MADE);
    this.replay(draft.number, turn);
    return turn;
  }

  /** A note that made the reader fail, three times: kept aside and said so, so that nothing is lost in silence. */
  setAside(id: string, room: string, why: string, now: Instant): Turn {
    const draft = new Draft(this.#turns + 1, { sort: 'set-aside', id, room, why }, now);
    const message = lines(
      'I could not take that note in and have set it aside. Please type it again in other words.',
    );
    draft.post(room, { about: 'question', message, replyTo: id });
    const turn = draft.finish(MADE);
    this.replay(draft.number, turn);
    return turn;
  }

  /** The machine's clock jumped from where it would have stood: noted, so that the record's times can be judged. */
  clockJumped(from: Instant, now: Instant): Turn {
    const draft = new Draft(this.#turns + 1, { sort: 'clock', was: toIso(from) }, now);
    const turn = draft.finish(MADE);
    this.replay(draft.number, turn);
    return turn;
  }

  /** Answers what a note asks while nothing can be written; nothing is kept. */
  look(input: NoteInput, now: Instant): Looked {
    const standing = this.#session(now);
    if (standing === null) return { effects: [], onlyAsks: false };
    return look({ ...standing, draft: new Draft(this.#turns + 1, causeOf(input), now) }, input);
  }

  /** The next instant after `after` at which something falls due; `null` when nothing is waited for. */
  next(after: Instant): Instant | null {
    const session = this.#session(after);
    if (session === null) return null;
    const times = [nextDue(this.view(after)), nextMark(session, after)].filter((at) => at !== null);
    return times.length === 0 ? null : Math.min(...times);
  }

  /** Posts made so far that are at hand, oldest first. */
  posts(): readonly Post[] {
    return this.#posts.all().map(({ post }) => post);
  }

  /** What rules and answers look at. Throws Error before a practice file was taken. */
  view(now: Instant): View {
    if (this.#standing === null) throw new Error('no practice file was taken yet');
    const { practice, timeline } = this.#standing;
    return { practice, state: timeline.state, said: this.#posts, now };
  }

  /** The state as it is shown to the outside, with what the rules say of each scanner at that instant. */
  exported(now: Instant): ExportedState {
    const view = this.view(now);
    return exportState(view.state, ({ id }) => {
      const readiness = readinessOf(view, id);
      const { calibrationDue, ready } = readiness;
      return { calibrationDue, ready, notReadyBecause: notReadyWords(readiness) };
    });
  }

  #turn(cause: Cause, now: Instant, from: string | null, work: (session: Session) => void): Turn | null {
    const standing = this.#session(now);
    if (standing === null) throw new Error('no practice file was taken yet');
    const draft = new Draft(this.#turns + 1, cause, now);
    const session: Session = { ...standing, draft };
    work(session);
    strikeSettled(session, from);
    if (draft.empty && !this.#firstWordToday(cause, now)) return null;
    const turn = draft.finish(MADE);
    this.#turns = draft.number;
    this.#remember(turn, draft.number);
    return turn;
  }

  #session(now: Instant): Omit<Session, 'draft'> | null {
    if (this.#standing === null) return null;
    const { practice, file, learned, timeline } = this.#standing;
    this.#standing.read ??= this.#readers.for(file, withAdded(practice, timeline.state), learned);
    const { read } = this.#standing;
    return {
      practice,
      read,
      learned,
      timeline,
      notes: this.#notes,
      posts: this.#posts,
      questions: this.#questions,
      late: this.#late,
      now,
    };
  }

  /** "The lead has not spoken that day" is asked of the record: so the first word of each person and day is kept. */
  #firstWordToday(cause: Cause, now: Instant): boolean {
    if (cause.sort !== 'note' || this.#standing === null) return false;
    const { timezone } = this.#standing.practice;
    const last = this.#posts.lastSpoke(cause.from);
    return last === null || toLocal(last, timezone).date !== toLocal(now, timezone).date;
  }

  /** Everything of a turn but its entries, which are folded where the turn is made. */
  #remember(turn: Turn, number: number): void {
    const at = instantOf(turn.at);
    const { cause } = turn;
    if ('noted' in cause) {
      this.#posts.spoke(cause.from, instantOf(cause.noted));
      this.#late.fold(turn, number, at, instantOf(cause.noted));
    }
    rememberNote(this.#notes, turn, number);
    if (turn.of !== undefined && turn.setsAside !== undefined) {
      this.#notes.corrected(turn.of, turn.correction === 'removed' || turn.correction === 'undone');
    }
    this.#rememberSaid(turn, at);
    this.#late.toldIn(turn);
    if (teaches(turn)) this.#learn();
    if (number % FORGET_EVERY_TURNS === 0) this.#forgetSaid(at);
  }

  #forgetSaid(now: Instant): void {
    if (this.#standing === null) return;
    const open = new Set(openMatters(this.view(now)).map(({ key }) => key));
    this.#posts.forgetBefore(now - SAID_KEPT_DAYS * DAY, (matter) => open.has(matter));
  }

  #rememberSaid(turn: Turn, at: Instant): void {
    for (const key of turn.answered ?? []) this.#questions.close(key);
    for (const question of turn.asked ?? []) this.#questions.ask(question);
    for (const { matter, stage } of turn.said ?? []) this.#posts.said(matter, stage, at);
    for (const effect of turn.effects) {
      if (effect.does !== 'post') continue;
      const told = (turn.said ?? []).filter((one) => one.post === effect.key);
      const matters = new Set(told.map(({ matter }) => matter));
      const marks = new Set(told.flatMap((one) => one.marks ?? []));
      this.#posts.posted(effect, at, [...matters], [...marks]);
    }
    for (const { finding, post } of turn.warned ?? []) this.#posts.warnedOf(finding, post);
    for (const key of turn.settled ?? []) this.#posts.settle(key);
    for (const key of turn.reopened ?? []) this.#posts.reopen(key);
    for (const { matter, until } of turn.putOff ?? []) this.#posts.putOff(matter, instantOf(until));
  }

  #takePractice(file: string, number: number, at: string): void {
    const parsed = parsePractice(file);
    if ('mistakes' in parsed)
      throw new RangeError('a practice file with mistakes cannot be taken into the record');
    const { practice } = parsed;
    const learned = this.#standing?.learned ?? [];
    const timeline = this.#standing?.timeline ?? new Timeline(practice);
    if (this.#standing !== null) {
      // From here on the record is judged by the new file; what came before keeps the old one.
      const what = { kind: 'practice', when: at, file: JSON.stringify(practice) } as const;
      const noted = instantOf(at);
      timeline.add([makeEntry({ what, turn: number, index: 0, noted, by: null, from: '', room: '' })]);
    }
    this.#posts.upSince ??= instantOf(at);
    this.#standing = { practice, file, learned, timeline, read: null };
  }

  #learn(): void {
    if (this.#standing === null) return;
    const { timeline } = this.#standing;
    this.#standing.learned = [...timeline.state.words].map(([words, { means }]) => ({ words, means }));
    this.#standing.read = null;
  }
}

/** A word explained, a tip that arrived, or something taken back: the reader is to know, or to know no longer. */
function teaches({ entries = [], setsAside = [] }: Turn): boolean {
  return setsAside.length > 0 || entries.some(({ what }) => what.kind === 'word' || what.kind === 'added');
}

function causeOf(input: Input): Cause {
  const { id, room, from } = input;
  const noted = toIso(input.at);
  if (input.sort === 'note') return { sort: 'note', id, room, from, noted };
  const of =
    input.sort === 'edit' ? input.edits : input.sort === 'redaction' ? input.redacts : targetId(input.reacts);
  return { sort: input.sort, id, room, from, noted, of };
}

function targetId(target: Extract<Input, { sort: 'reaction' }>['reacts']): string {
  return 'note' in target ? target.note : target.post;
}
