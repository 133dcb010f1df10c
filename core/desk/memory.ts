import type { Archive } from '../record/archive.ts';
import type { Instant } from '../time/instant.ts';
import { instantOf } from './apply.ts';
import { LateNotes } from './late-notes.ts';
import { NoteLog } from './note-log.ts';
import { PostLog } from './post-log.ts';
import { QuestionLog } from './question-log.ts';
import { rememberNote } from './remember-note.ts';
import type { SavedDesk } from './saved-desk.ts';
import type { Turn } from './turn.ts';

/** What the desk remembers of the talk, folded from turns: notes, its own posts, what it asked, what waited for it. */
export class Memory {
  readonly notes: NoteLog;
  readonly posts: PostLog;
  readonly questions = new QuestionLog();
  readonly late = new LateNotes();

  /** `archive`: where old notes and warnings go; as it was when what is restored was saved. */
  constructor(archive: Archive) {
    this.notes = new NoteLog(archive);
    this.posts = new PostLog(archive);
  }

  /** Everything of a turn but its entries, which are the record's. */
  fold(turn: Turn, number: number): void {
    const at = instantOf(turn.at);
    const { cause } = turn;
    if ('noted' in cause) {
      this.posts.spoke(cause.from, instantOf(cause.noted));
      this.late.fold(turn, number, at, instantOf(cause.noted));
    }
    rememberNote(this.notes, turn, number);
    if (turn.of !== undefined && turn.setsAside !== undefined) {
      this.notes.corrected(turn.of, turn.correction === 'removed' || turn.correction === 'undone');
    }
    for (const key of turn.answered ?? []) this.questions.close(key);
    for (const question of turn.asked ?? []) this.questions.ask(question);
    this.#foldPosts(turn, at);
    this.late.toldIn(turn);
  }

  save(): Pick<SavedDesk, 'notes' | 'posts' | 'questions' | 'late'> {
    return {
      notes: this.notes.save(),
      posts: this.posts.save(),
      questions: this.questions.all(),
      late: this.late.waiting(),
    };
  }

  restore(saved: Pick<SavedDesk, 'notes' | 'posts' | 'questions' | 'late'>): void {
    this.notes.restore(saved.notes);
    this.posts.restore(saved.posts);
    this.questions.restore(saved.questions);
    this.late.restore(saved.late);
  }

  #foldPosts(turn: Turn, at: Instant): void {
    for (const { matter, stage } of turn.said ?? []) this.posts.said(matter, stage, at);
    for (const effect of turn.effects) {
      if (effect.does !== 'post') continue;
      const told = (turn.said ?? []).filter((one) => one.post === effect.key);
      const matters = new Set(told.map(({ matter }) => matter));
      const marks = new Set(told.flatMap((one) => one.marks ?? []));
      this.posts.posted(effect, at, [...matters], [...marks]);
    }
    for (const { finding, post } of turn.warned ?? []) this.posts.warnedOf(finding, post);
    for (const key of turn.settled ?? []) this.posts.settle(key);
    for (const key of turn.reopened ?? []) this.posts.reopen(key);
    for (const { matter, until } of turn.putOff ?? []) this.posts.putOff(matter, instantOf(until));
  }
}
