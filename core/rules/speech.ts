import type { Item } from '../reading/slots.ts';
import type { Decision } from '../record/decision.ts';
import type { FindingKind, FindingOf } from '../record/finding.ts';
import type { Message } from '../words/message.ts';
import type { About } from './about.ts';
import type { View } from './matter.ts';
import type { Choice, Purpose } from './question.ts';

/** What a rule wants said at once because of something that was just noted. */
export interface Speech {
  readonly about: About;
  readonly items: readonly Item[];
  readonly message: Message;
  /** Chat identities whose phones should ring; the author of the note is added to warnings by the desk. */
  readonly mentions: readonly string[];
  /** The post is a question: its choices, who may answer, how long it stays. */
  readonly asks?: {
    readonly choices: readonly Choice[];
    /** `null`: anyone in the room. */
    readonly person: string | null;
    /** Minutes; `null`: until it is answered. */
    readonly lasts: number | null;
    readonly purpose: Purpose;
  };
  /** The post asks for what the entry of its finding lacks: the answer stands in that slot, at the entry's own time. */
  readonly completes?: {
    /** `tips`: what was in the load whose result the entry is. */
    readonly slot: 'autoclave' | 'load' | 'tips';
    readonly choices: readonly Choice[];
  };
  /** Recorded with it (an incident opened, a hold). */
  readonly decides?: readonly Decision[];
}

/** Turns a finding into what is said: warnings first. An empty list where it is only kept in the record. */
export type Speak<K extends FindingKind = FindingKind> = (
  finding: FindingOf<K>,
  view: View,
) => readonly Speech[];

export type SpeakTable = { readonly [K in FindingKind]: Speak<K> };
