import type { Vouched } from '../../core/record/vouched.ts';

/**
 * What a chat hands in, with event ids as the chat knows them; plain JSON, so that the inbox can keep it. `vouched`: the
 * writer's power in the room and whether the device is signed by its owner; left out where the chat cannot know.
 */
export type Heard =
  | {
      readonly sort: 'note';
      readonly id: string;
      readonly room: string;
      readonly from: string;
      readonly at: number;
      readonly vouched?: Vouched;
      readonly text: string;
      /** In a direct message, which colleagues cannot see. */
      readonly privately?: true;
      readonly replyTo?: string;
    }
  | {
      readonly sort: 'edit';
      readonly id: string;
      readonly room: string;
      readonly from: string;
      readonly at: number;
      readonly vouched?: Vouched;
      readonly edits: string;
      /** An edit was deleted, and this is what the note says again. */
      readonly byDeletion?: true;
      readonly text: string;
      /** In a direct message, which colleagues cannot see. */
      readonly privately?: true;
    }
  | {
      readonly sort: 'redaction';
      readonly id: string;
      readonly room: string;
      readonly from: string;
      readonly at: number;
      readonly vouched?: Vouched;
      readonly redacts: string;
    }
  | {
      readonly sort: 'reaction';
      readonly id: string;
      readonly room: string;
      readonly from: string;
      readonly at: number;
      readonly vouched?: Vouched;
      readonly reacts: string;
      readonly emoji: string;
    };
