import { toIso } from '../time/instant.ts';
import type { Input } from './input.ts';
import type { Cause } from './turn.ts';

/** What brought a turn about, as the journal keeps it: never the words that were typed. */
export function causeOf(input: Input): Cause {
  const { id, room, from } = input;
  const noted = toIso(input.at);
  if (input.sort === 'note') return { sort: 'note', id, room, from, noted };
  return { sort: input.sort, id, room, from, noted, of: eventMeant(input) };
}

function eventMeant(input: Exclude<Input, { sort: 'note' }>): string {
  switch (input.sort) {
    case 'edit':
      return input.edits;
    case 'redaction':
      return input.redacts;
    case 'reaction':
      return 'note' in input.reacts ? input.reacts.note : input.reacts.post;
  }
}
