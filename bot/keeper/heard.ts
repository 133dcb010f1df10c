/** What a chat hands in, with event ids as the chat knows them; plain JSON, so that the inbox can keep it. */
export type Heard =
  | {
      readonly sort: 'note';
      readonly id: string;
      readonly room: string;
      readonly from: string;
      readonly at: number;
      readonly text: string;
      readonly replyTo?: string;
    }
  | {
      readonly sort: 'edit';
      readonly id: string;
      readonly room: string;
      readonly from: string;
      readonly at: number;
      readonly edits: string;
      readonly text: string;
    }
  | {
      readonly sort: 'redaction';
      readonly id: string;
      readonly room: string;
      readonly from: string;
      readonly at: number;
      readonly redacts: string;
    }
  | {
      readonly sort: 'reaction';
      readonly id: string;
      readonly room: string;
      readonly from: string;
      readonly at: number;
      readonly reacts: string;
      readonly emoji: string;
    };
