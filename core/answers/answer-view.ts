import type { Item } from '../reading/slots.ts';
import type { Entry } from '../record/entry.ts';
import type { About } from '../rules/about.ts';
import type { View } from '../rules/matter.ts';
import type { Message } from '../words/message.ts';

/** What an answer looks at besides the rules' view. */
export interface AskView extends View {
  /** Chat room and person that ask. */
  readonly room: string;
  readonly from: string;
  /** Every entry that holds, in the record's order. */
  readonly entries: readonly Entry[];
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
