/** What an event holds, as it came. */
export type Content = Readonly<Record<string, unknown>>;

/** A message of the bot's as a phone shows it. */
export interface Seen {
  readonly id: string;
  readonly type: string;
  readonly content: Content;
  readonly encrypted: boolean;
  readonly room: string;
}

/** Whose phones a message rings. */
export function mentionsOf(content: Content): readonly unknown[] {
  const mentions = content['m.mentions'];
  if (typeof mentions !== 'object' || mentions === null || !('user_ids' in mentions)) return [];
  return Array.isArray(mentions.user_ids) ? mentions.user_ids : [];
}

/** The note that a message answers, or null. */
export function answerTo(content: Content): string | null {
  const inReply = relationOf(content)['m.in_reply_to'];
  if (typeof inReply !== 'object' || inReply === null || !('event_id' in inReply)) return null;
  return String(inReply.event_id);
}

/** What a message relates to; empty where to nothing. */
export function relationOf(content: Content): Content {
  const relation = content['m.relates_to'];
  return typeof relation === 'object' && relation !== null ? { ...relation } : {};
}

/** The button (a keycap) of one of the numbered choices that a message offers. Throws where it offers none of that name. */
export function buttonOf(content: Content, choice: string): string {
  const number = new RegExp(`^(\\d)\\. ${choice}$`, 'm').exec(String(content.body))?.[1];
  if (number === undefined) throw new Error(`no choice ${choice}: ${String(content.body)}`);
  return `${number}\ufe0f\u20e3`;
}
