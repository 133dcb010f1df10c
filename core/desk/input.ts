import type { Vouched } from '../record/vouched.ts';
import type { Instant } from '../time/instant.ts';

/**
 * One thing that happened in the chat, at the edge made plain: quoted fallback stripped, our own posts known by their keys.
 * `vouched`: how far the chat vouches for whoever did it, where it can know.
 */
export type Input =
  | {
      readonly sort: 'note';
      readonly id: string;
      readonly room: string;
      readonly from: string;
      readonly at: Instant;
      readonly vouched?: Vouched;
      readonly text: string;
      /** In a direct message, which colleagues cannot see. */
      readonly privately?: true;
      readonly replyTo?: Target;
    }
  | {
      readonly sort: 'edit';
      readonly id: string;
      readonly room: string;
      readonly from: string;
      readonly at: Instant;
      readonly vouched?: Vouched;
      readonly edits: string;
      /** An edit was deleted, and this is what the note says again. */
      readonly byDeletion?: true;
      /** When the note that it edits was typed, where the chat knows it. */
      readonly noteAt?: Instant;
      readonly text: string;
      /** In a direct message, which colleagues cannot see. */
      readonly privately?: true;
    }
  | {
      readonly sort: 'redaction';
      readonly id: string;
      readonly room: string;
      readonly from: string;
      readonly at: Instant;
      readonly vouched?: Vouched;
      readonly redacts: string;
    }
  | {
      readonly sort: 'reaction';
      readonly id: string;
      readonly room: string;
      readonly from: string;
      readonly at: Instant;
      readonly vouched?: Vouched;
      readonly reacts: Target;
      readonly emoji: string;
    };

/** What a reply or a reaction points at: somebody's note, or a post of ours by its key. */
export type Target = { readonly note: string } | { readonly post: string };

export type NoteInput = Extract<Input, { sort: 'note' }>;
