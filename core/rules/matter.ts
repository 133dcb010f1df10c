import type { Practice } from '../practice/practice.ts';
import type { Fact } from '../reading/fact.ts';
import type { Item } from '../reading/slots.ts';
import type { State } from '../record/state.ts';
import type { Instant } from '../time/instant.ts';
import type { Message } from '../words/message.ts';
import type { About } from './about.ts';
import type { Choice, Purpose } from './question.ts';

/** What every rule looks at: nothing else decides. */
export interface View {
  readonly practice: Practice;
  readonly state: State;
  readonly said: SaidLog;
  readonly now: Instant;
}

/** What has been said of matters, by whom it was put off: known from the turns, so a restart knows it too. */
export interface SaidLog {
  /** Everything that was said of a matter, another object whenever more was; `undefined`: nothing. */
  of(key: string): SaidOf | undefined;
  /** When this stage of the matter was delivered; `null` when it was not. */
  saidAt(key: string, stage: Stage): Instant | null;
  /** Keys of matters that begin with that and a bar, and end with one part more, of which anything was said. */
  saidUnder(start: string): readonly string[];
  /** Until when someone put it off ("later"); `null` when nobody did. */
  putOffUntil(key: string): Instant | null;
  /** The last time that anything was said in the chat room by this person, for "the lead has not spoken that day". */
  lastSpoke(person: string): Instant | null;
  /** When the record began: what fell due before then was never due. `null`: not known. */
  readonly upSince: Instant | null;
}

/** When each stage of a matter was delivered, and until when somebody put it off. */
export interface SaidOf {
  readonly first: Instant | null;
  readonly again: Instant | null;
  readonly lead: Instant | null;
  readonly putOff: Instant | null;
}

/** First asking, asking again, naming the lead. A matter is posted three times at most. */
export type Stage = 'first' | 'again' | 'lead';

/**
 * Something that is due until it is done or no longer true. Derived from the record at every look, never scheduled.
 * `key` names it by rule, item, original entry and local date, never by `when`, so that an edit does not ask twice.
 */
export interface Matter {
  readonly key: string;
  /** Name of the rule that says so. */
  readonly rule: string;
  readonly about: About;
  readonly site: string;
  /** Chat room to post in. */
  readonly room: string;
  readonly items: readonly Item[];
  /** When each stage falls due, already moved out of quiet hours; stages after one that was not said yet may be left out. */
  readonly stages: readonly { readonly stage: Stage; readonly at: Instant }[];
  /** Since when it holds, for posts that come late. */
  readonly since: Instant;
  /** Matters of one room with the same group that fall due together are one post. */
  readonly group: string;
  /** One line for a post that gathers several; starts with the important word. Mostly written when it is read. */
  readonly line: Message;
  /** Chat identities to mention at the `lead` stage. */
  readonly leads: readonly string[];
  /** What ✅ or "done" in reply records; absent where a tick can record nothing (a load's result, a release). */
  readonly tick?: (at: Instant, by: string) => readonly Fact[];
  /** The post asks something that is answered by a choice. */
  readonly asks?: { readonly choices: readonly Choice[]; readonly purpose: Purpose };
}

/** A rule: everything it finds open at this instant, said or not. */
export type Rule = (view: View) => readonly Matter[];
