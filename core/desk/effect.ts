import type { Message } from '../answers/message.ts';
import type { Item } from '../reading/slots.ts';

/**
 * What a post is for. `warning` is kept for infection, so that nobody mutes it; `caution` is for the rest
 * that should make someone stop and look.
 */
export type About =
  | 'answer'
  | 'question'
  | 'warning'
  | 'caution'
  | 'incident'
  | 'look-back'
  | 'calibration'
  | 'settle'
  | 'warm-up'
  | 'clean'
  | 'cover'
  | 'tips'
  | 'load'
  | 'spore-test'
  | 'fault'
  | 'supply'
  | 'order'
  | 'set-up'
  | 'brief'
  | 'close-out'
  | 'board'
  | 'escalation'
  | 'record'
  | 'privacy'
  | 'help';

/** A post: `key` is derived from the turn that made it and never used twice. */
export interface Post {
  readonly does: 'post';
  readonly key: string;
  readonly room: string;
  readonly message: Message;
  readonly about: About;
  readonly items: readonly Item[];
  /** Event id of the note that is answered, or key of a post of ours. */
  readonly replyTo?: string;
  /** Chat identities of those whose phones should ring. */
  readonly mentions: readonly string[];
  /** Reactions offered under it as buttons. */
  readonly buttons?: readonly string[];
}

/** Everything the desk may want done in a chat room; the outbox does it once, in order. */
export type Effect =
  | Post
  | {
      readonly does: 'react';
      readonly key: string;
      readonly room: string;
      /** Event id of the note. */
      readonly to: string;
      readonly emoji: string;
    }
  | {
      readonly does: 'edit';
      readonly key: string;
      readonly room: string;
      /** Key of the post. */
      readonly post: string;
      readonly message: Message;
    }
  | { readonly does: 'redact'; readonly key: string; readonly room: string; readonly post: string }
  | { readonly does: 'pin'; readonly key: string; readonly room: string; readonly post: string }
  | {
      readonly does: 'file';
      readonly key: string;
      readonly room: string;
      readonly name: string;
      readonly type: string;
      readonly content: string;
    };
