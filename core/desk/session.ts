import type { LearnedWord, Reader } from '../language/read.ts';
import type { Practice } from '../practice/practice.ts';
import type { Timeline } from '../record/timeline.ts';
import type { Vouched } from '../record/vouched.ts';
import type { View } from '../rules/matter.ts';
import type { Instant } from '../time/instant.ts';
import type { Draft } from './draft.ts';
import type { LateNotes } from './late-notes.ts';
import type { Looks } from './looks.ts';
import type { NoteLog } from './note-log.ts';
import type { PostLog } from './post-log.ts';
import type { QuestionLog } from './question-log.ts';

/** What one turn works with: everything the desk knows, the instant, and the turn that is being made. */
export interface Session {
  readonly practice: Practice;
  readonly read: Reader;
  readonly learned: readonly LearnedWord[];
  readonly timeline: Timeline;
  readonly notes: NoteLog;
  readonly posts: PostLog;
  readonly questions: QuestionLog;
  readonly late: LateNotes;
  readonly looks: Looks;
  readonly now: Instant;
  readonly draft: Draft;
}

/** What rules look at, as things stand in this session. */
export function viewOf(session: Omit<Session, 'draft'>): View {
  const { looks, practice, timeline, posts, now } = session;
  return looks.view(practice, timeline, posts, now);
}

/** Who speaks, where and when: what every entry of a note shares. */
export interface Speaker {
  readonly from: string;
  readonly room: string;
  /** When the note was typed. */
  readonly noted: Instant;
  /** Event id of the note, for reactions and replies. */
  readonly note: string;
  /** How far the chat vouches for this person, where it can know. */
  readonly vouched?: Vouched;
  /** False for a deletion: whoever runs a server could forge one. */
  readonly typed?: false;
}

/** How far the chat vouches for somebody, to be spread into what keeps it; nothing where the chat cannot know. */
export function vouching({ vouched }: { readonly vouched?: Vouched }): { readonly vouched?: Vouched } {
  return vouched === undefined ? {} : { vouched };
}
