import type { Entry, SaidOf } from '../record/entry.ts';
import { zoneOf } from '../record/where.ts';
import type { View } from '../rules/matter.ts';
import { placeWords } from '../rules/tips/place-words.ts';
import { capital, scannerWords, tipsInWords } from '../rules/tips/tip-words.ts';
import { toLocal } from '../time/zone.ts';
import { clockWords } from './clock-words.ts';
import { lines, type Message } from './message.ts';
import { siteOfChatRoom } from './site-of-ask.ts';

/**
 * What is read back of a note that was recorded: ids where a slip would be risky (fitted, released, retired), a time that is
 * not the note's own minute, and what was filled in rather than said. `null` where a thumb is enough. Load results are read
 * back by their own reply.
 */
export function readBack(entries: readonly Entry[], view: View, filledIn: readonly string[]): Message | null {
  const risky = entries.flatMap((entry) => riskyWords(entry, view));
  const times = [...new Set(entries.flatMap((entry) => timeWords(entry, view)))];
  const parts = [...risky, ...filledIn.map((words) => `I took it as ${words}`), ...times];
  return parts.length === 0 ? null : lines(`${capital(parts.join('; '))}.`);
}

function riskyWords({ fact }: Entry, { practice }: View): readonly string[] {
  switch (fact.kind) {
    case 'fitted':
      return [`tip ${fact.tip} on the ${scannerWords(practice, fact.scanner)}`.replace('the the ', 'the ')];
    case 'released':
      return [`released: ${itemsInWords(fact, practice)}`];
    case 'retired':
      return fact.tips === undefined ? [] : [`retired: ${tipsInWords(fact.tips)}`];
    case 'temperature':
      return [
        `${fact.celsius.toFixed(1)} °C${fact.site === undefined ? '' : ` at ${placeWords(practice, fact.site, fact.room ?? null)}`}`,
      ];
    default:
      return [];
  }
}

function itemsInWords({ items }: SaidOf<'released'>, practice: View['practice']): string {
  const words = items.map((item) => {
    const id = item.slice(item.indexOf(':') + 1);
    return item.startsWith('scanner:') ? scannerWords(practice, id) : item.replace(':', ' ');
  });
  return words.join(', ');
}

/** The time that was taken, where it is not the minute of typing. */
function timeWords(entry: Entry, { practice, now }: View): readonly string[] {
  const zone = zoneOf(practice, siteOfChatRoom(practice, entry.room));
  if (toLocal(entry.when, zone).time === toLocal(entry.noted, zone).time && entry.noted - entry.when < 60_000)
    return [];
  return [`time taken: ${clockWords(entry.when, now, zone)}`];
}
