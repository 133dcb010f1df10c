import { leaf, shown } from './leaf.ts';

/** A Matrix user id, `@rosa:example.org`; `null` where the key is left out. */
export const personId = leaf((value, say): string | null => {
  if (value === undefined) return null;
  if (typeof value === 'string' && /^@[^\s:@]+:[^\s:]+(?::\d+)?$/.test(value)) return value;
  say(`${shown(value)} is not a chat identity`, '"@name:server", in quotes');
  return null;
});

/** A Matrix room id: `!quay:example.org`, in newer rooms `!` and a long code alone. Never an alias `#quay:…`. */
export const chatRoomId = leaf((value, say): string => {
  if (typeof value === 'string' && /^!\S+$/.test(value)) return value;
  const wrong = value === undefined ? 'it is missing' : `${shown(value)} is not the id of a chat room`;
  say(wrong, '"!quay:example.org", in quotes: the room id, not its name or #alias');
  return '';
});
