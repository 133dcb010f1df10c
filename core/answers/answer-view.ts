import type { Item } from '../reading/slots.ts';
import type { Timeline } from '../record/timeline.ts';
import type { About } from '../rules/about.ts';
import type { View } from '../rules/matter.ts';
import type { Message } from '../words/message.ts';

/** What an answer looks at besides the rules' view. */
export interface AskView extends View {
  /** Chat room and person that ask. */
  readonly room: string;
  readonly from: string;
  /** Entries that hold, found by when they happened, by what they speak of, or by their id. */
  readonly entries: Pick<Timeline, 'between' | 'placesAbout' | 'entry'>;
}

/** An answer: short enough for a phone; what is longer comes as a file. */
export interface Answer {
  readonly about: About;
  readonly message: Message;
  readonly items: readonly Item[];
  readonly file?: AnswerFile;
}

/** A file that goes with an answer, as text. */
export interface AnswerFile {
  readonly name: string;
  /** Media type. */
  readonly type: string;
  readonly content: string;
}
