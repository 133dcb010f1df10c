import { makeReader } from '../language/reader.ts';
import { GRAMMAR_VERSION } from '../language/version.ts';
import { type ExportedState, exportState } from '../record/export-state.ts';
import { MemoryArchive } from '../record/memory-archive.ts';
import type { TimelineOptions } from '../record/timeline.ts';
import type { View } from '../rules/matter.ts';
import { nextDue, openMatters } from '../rules/matters.ts';
import { notReadyWords, readinessOf } from '../rules/readiness.ts';
import { RULES_VERSION } from '../rules/version.ts';
import { DAY, type Instant, toIso } from '../time/instant.ts';
import { toLocal } from '../time/zone.ts';
import { lines } from '../words/message.ts';
import { strikeSettled } from './after/strike-settled.ts';
import { nextMark } from './after/warm-up-marks.ts';
import { instantOf } from './apply.ts';
import { causeOf } from './cause-of.ts';
import { Draft } from './draft.ts';
import type { Post } from './effect.ts';
import type { Input, NoteInput } from './input.ts';
import { Looks } from './looks.ts';
import { Memory } from './memory.ts';
import { Readers } from './readers.ts';
import { isSavedDesk, MADE_UNDER, type SavedDesk } from './saved-desk.ts';
import type { Session } from './session.ts';
import { type DeskOptions, Standing } from './standing.ts';
import type { Cause, Turn, Versions } from './turn.ts';
import { type Looked, look } from './turns/look.ts';
import { onEdit } from './turns/on-edit.ts';
import { onNote } from './turns/on-note.ts';
import { onReaction } from './turns/on-reaction.ts';
import { onRedaction } from './turns/on-redaction.ts';
import { onTick } from './turns/on-tick.ts';

const MADE: Versions = { grammar: GRAMMAR_VERSION, rules: RULES_VERSION };

/** What was said of matters is forgotten after this long, once they are settled; looked at every so many turns. */
const SAID_KEPT_DAYS = 400;
const FORGET_EVERY_TURNS = 4_096;

/**
 * The desk: one turn at a time, from what was heard or what fell due to what is kept and what is said. Everything it knows
 * is folded from turns, so reading the journal back gives the same desk. It knows no clock: every instant is an argument.
 */
export class Desk {
  readonly #readers: Readers;
  readonly #options: DeskOptions;
  readonly #memory: Memory;
  readonly #looks = new Looks();
  #standing: Standing | null = null;
  #turns = 0;

  /**
   * `readers`: where to take readers from; desks that come and go in one process may share it. `archive`: where what is only
   * history is kept; it must be empty, or as it was when what is restored was saved.
   */
  constructor(
    readers = new Readers(makeReader),
    { archive = new MemoryArchive(), ...rest }: TimelineOptions = {},
  ) {
    this.#readers = readers;
    this.#options = { archive, ...rest };
    this.#memory = new Memory(archive);
  }

  /**
   * Everything that it knows, for a snapshot beside its archive, which must be kept as it is then; `cut` as in
   * `Timeline.save`. `null` before a practice file was taken.
   */
  save(cut?: SavedDesk['timeline']['through']): SavedDesk | null {
    if (this.#standing === null) return null;
    return { made: MADE_UNDER, turns: this.#turns, ...this.#standing.save(cut), ...this.#memory.save() };
  }

  /**
   * Goes on from what `save` gave; this desk must be new. `false`, and nothing taken, where another build made it: then
   * the journal has to be replayed from its first line.
   */
  restore(saved: unknown): boolean {
    if (!isSavedDesk(saved)) return false;
    const standing = Standing.restore(this.#readers, saved, this.#options);
    if (standing === null) return false;
    this.#standing = standing;
    this.#turns = saved.turns;
    this.#memory.restore(saved);
    return true;
  }

  /** Number of the last turn. */
  get turns(): number {
    return this.#turns;
  }

  /** Whether anything that it knows is in its archive alone. */
  get needsArchive(): boolean {
    const { notes, posts } = this.#memory;
    const talk = notes.needsArchive || posts.needsArchive;
    return talk || (this.#standing?.timeline.needsArchive ?? false);
  }

  /** Folds a turn of the journal. */
  replay(number: number, turn: Turn): void {
    const { cause } = turn;
    if (cause.sort === 'practice') {
      const taken = { turn: number, at: turn.at, options: this.#options };
      this.#standing = Standing.take(this.#readers, cause.file, this.#standing, taken);
      this.#memory.posts.upSince ??= instantOf(turn.at);
    }
    this.#standing?.fold(turn);
    this.#remember(turn, number);
  }

  /** Whether an event was taken already. */
  knows(id: string): boolean {
    return this.#memory.notes.knows(id);
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
    return this.#standing?.file === file ? null : this.#note({ sort: 'practice', file }, now);
  }

  /** A note that made the reader fail, three times: kept aside and said so, so that nothing is lost in silence. */
  setAside(id: string, room: string, why: string, now: Instant): Turn {
    const say = 'I could not take that note in and have set it aside. Please type it again in other words.';
    return this.#note({ sort: 'set-aside', id, room, why }, now, (draft) => {
      draft.post(room, { about: 'question', message: lines(say), replyTo: id });
    });
  }

  /** The machine's clock jumped from where it would have stood: noted, so that the record's times can be judged. */
  clockJumped(from: Instant, now: Instant): Turn {
    return this.#note({ sort: 'clock', was: toIso(from) }, now);
  }

  /** Answers what a note asks while nothing can be written; nothing is kept. */
  look(input: NoteInput, now: Instant): Looked {
    const session = this.#session(now);
    if (session === null) return { effects: [], onlyAsks: false };
    return look({ ...session, draft: new Draft(this.#turns + 1, causeOf(input), now) }, input);
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
    return this.#memory.posts.all().map(({ post }) => post);
  }

  /** What rules and answers look at. Throws Error before a practice file was taken. */
  view(now: Instant): View {
    if (this.#standing === null) throw new Error('no practice file was taken yet');
    const { practice, timeline } = this.#standing;
    return this.#looks.view(practice, timeline, this.#memory.posts, now);
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
    // Its entries were folded as they were made: what is said depends on them.
    this.#remember(turn, draft.number);
    return turn;
  }

  /** A turn of the program's own, with nothing to be read. */
  #note(cause: Cause, now: Instant, say?: (draft: Draft) => void): Turn {
    const draft = new Draft(this.#turns + 1, cause, now);
    say?.(draft);
    const turn = draft.finish(MADE);
    this.replay(draft.number, turn);
    return turn;
  }

  #session(now: Instant): Omit<Session, 'draft'> | null {
    if (this.#standing === null) return null;
    const { practice, read, learned, timeline } = this.#standing;
    const { notes, posts, questions, late } = this.#memory;
    return { practice, read, learned, timeline, notes, posts, questions, late, looks: this.#looks, now };
  }

  /** "The lead has not spoken that day" is asked of the record: so the first word of each person and day is kept. */
  #firstWordToday(cause: Cause, now: Instant): boolean {
    if (cause.sort !== 'note' || this.#standing === null) return false;
    const { timezone } = this.#standing.practice;
    const last = this.#memory.posts.lastSpoke(cause.from);
    return last === null || toLocal(last, timezone).date !== toLocal(now, timezone).date;
  }

  #remember(turn: Turn, number: number): void {
    this.#turns = number;
    this.#memory.fold(turn, number);
    this.#standing = this.#standing?.taught(turn) ?? null;
    if (number % FORGET_EVERY_TURNS === 0 && this.#standing !== null) this.#forgetSaid(instantOf(turn.at));
  }

  #forgetSaid(now: Instant): void {
    const open = new Set(openMatters(this.view(now)).map(({ key }) => key));
    this.#memory.posts.forgetBefore(now - SAID_KEPT_DAYS * DAY, (matter) => open.has(matter));
  }
}
