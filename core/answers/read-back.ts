import type { Entry } from '../record/entry.ts';
import { zoneOf } from '../record/where.ts';
import type { View } from '../rules/matter.ts';
import { capital } from '../rules/tips/tip-words.ts';
import { MINUTE, SECOND } from '../time/instant.ts';
import { clockWords } from '../words/clock-words.ts';
import { lines, type Message } from '../words/message.ts';
import { factWords } from './fact-words.ts';
import { riskyWords } from './read-back/risky-words.ts';
import { siteOfEntry } from './record-rows.ts';

/**
 * What is read back of a note that was recorded: ids where a slip would be risky (fitted, released, retired), a time that is
 * not the note's own minute, dates of what is to come, and what was filled in rather than said. `null` where a thumb is
 * enough. Load results are read back by their own reply. `leant`: what the note says was told by an earlier one only.
 */
export function readBack(
  entries: readonly Entry[],
  view: View,
  filledIn: readonly string[],
  leant: 'same' | 'meant' | null = null,
): Message | null {
  const parts = [
    ...(leant === null
      ? entries.flatMap((entry) => riskyWords(entry, view))
      : leantWords(entries, view, leant)),
    ...filledIn.map((words) => `taken as ${words}`),
    ...new Set(entries.flatMap((entry) => timeWords(entry, view))),
  ];
  return parts.length === 0 ? null : lines(`${capital(parts.join('; '))}.`);
}

/** All that a note was taken to say which named no item ("taken as: tip 7 retired"), or nothing but items. */
function leantWords(
  entries: readonly Entry[],
  { practice }: View,
  leant: 'same' | 'meant',
): readonly string[] {
  const told = entries.map(({ fact }) => factWords(practice, fact)).join('; ');
  if (told === '') return [];
  return [leant === 'same' ? told : `taken as: ${told}`];
}

/** The time that was taken, where it is a stretch or not the minute of typing. */
function timeWords(entry: Entry, { practice, now }: View): readonly string[] {
  const zone = zoneOf(practice, siteOfEntry(practice, entry));
  const { when, noted, earliest = when } = entry;
  const at = clockWords(when, now, zone);
  if (earliest < when) return [`time taken: ${clockWords(earliest, now, zone)} to ${at}`];
  // A load's tips, told in answer to its result, stand a moment before that result.
  const isOwn = Math.floor(when / MINUTE) === Math.floor(noted / MINUTE) || noted - when < SECOND;
  return isOwn ? [] : [`time taken: ${at}`];
}
