import type { Item } from '../reading/slots.ts';
import type { About } from '../rules/about.ts';
import type { Message } from '../words/message.ts';

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
  | {
      readonly does: 'pin';
      readonly key: string;
      readonly room: string;
      readonly post: string;
      /** Key of the post that was pinned in its place before. */
      readonly instead?: string;
    }
  | {
      readonly does: 'file';
      readonly key: string;
      readonly room: string;
      readonly name: string;
      readonly type: string;
      readonly content: string;
    };
