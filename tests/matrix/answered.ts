import type { Person } from './person.ts';

/** Every reply to a note that this person sees, once there is one. */
export async function replied(who: Person, note: string): Promise<string> {
  await who.until(() => who.repliesTo(note).length > 0, 'a reply');
  return who
    .repliesTo(note)
    .map(({ content }) => String(content.body))
    .join('\n');
}

/** Says it there and gives what is replied. */
export async function answerTo(who: Person, room: string, text: string): Promise<string> {
  return replied(who, await who.say(room, text));
}

/** Waits for a note's thumb. */
export async function marked(who: Person, note: string): Promise<void> {
  await who.until(() => who.reactionsTo(note).includes('👍'), 'a thumb');
}
