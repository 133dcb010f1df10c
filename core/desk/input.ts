import type { Instant } from '../time/instant.ts';

/** One thing that happened in the chat, at the edge made plain: quoted fallback stripped, our own posts known by their keys. */
export type Input =
  | {
      readonly sort: 'note';
      readonly id: string;
      readonly room: string;
      readonly from: string;
      readonly at: Instant;
      readonly text: string;
      readonly replyTo?: Target;
    }
  | {
      readonly sort: 'edit';
      readonly id: string;
      readonly room: string;
      readonly from: string;
      readonly at: Instant;
      readonly edits: string;
      /** When the note that it edits was typed, where the chat knows it. */
      readonly noteAt?: Instant;
      readonly text: string;
    }
  | {
      readonly sort: 'redaction';
      readonly id: string;
      readonly room: string;
      readonly from: string;
      readonly at: Instant;
      readonly redacts: string;
    }
  | {
      readonly sort: 'reaction';
      readonly id: string;
      readonly room: string;
      readonly from: string;
      readonly at: Instant;
      readonly reacts: Target;
      readonly emoji: string;
    };

/** What a reply or a reaction points at: somebody's note, or a post of ours by its key. */
export type Target = { readonly note: string } | { readonly post: string };

export type NoteInput = Extract<Input, { sort: 'note' }>;
