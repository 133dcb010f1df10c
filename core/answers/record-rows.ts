import { autoclaveOf, scannerOf, tipOf } from '../practice/look-up.ts';
import type { Practice } from '../practice/practice.ts';
import type { Item } from '../reading/slots.ts';
import type { Entry, SaidKind } from '../record/entry.ts';
import { itemsOf } from '../record/items-of.ts';
import { zoneOf } from '../record/where.ts';
import { toIso } from '../time/instant.ts';
import { type LocalDate, toLocal } from '../time/zone.ts';
import { idOf } from '../words/item-words.ts';
import { nameOf } from '../words/people-words.ts';
import { placeWords } from '../words/place-words.ts';
import { factWords } from './fact-words.ts';
import { siteOfChatRoom } from './site-of-ask.ts';

/** Columns of the record as it is handed out, in order. */
export const RECORD_COLUMNS = [
  'when (local)',
  'when (UTC)',
  'what',
  'items',
  'where',
  'by',
  'noted (UTC)',
] as const;

/** The program's own housekeeping: nobody asks the record for it. */
const HOUSEKEEPING: ReadonlySet<SaidKind> = new Set<SaidKind>(['practice', 'word', 'stocktake-asked']);

/** Whether an entry belongs in what is handed out. */
export function isForReaders({ fact }: Entry): boolean {
  return !HOUSEKEEPING.has(fact.kind);
}

/** A fact or decision as a row, in the order of the columns; local times are of its site. */
export function recordRow(practice: Practice, entry: Entry): readonly string[] {
  const { fact, when, noted, by } = entry;
  const site = siteOfEntry(practice, entry);
  const { date, time } = toLocal(when, zoneOf(practice, site));
  const room = 'room' in fact && fact.room !== undefined ? fact.room : null;
  return [
    `${date} ${time}`,
    toIso(when),
    factWords(practice, fact),
    itemsOf(fact).join(' '),
    site === null ? '' : placeWords(practice, site, room),
    nameOf(practice, by),
    toIso(noted),
  ];
}

/** Site of an entry: the one said, else its chat room's, else where what it speaks of is at home. `null`: not known. */
export function siteOfEntry(practice: Practice, { fact, room }: Entry): string | null {
  if ('site' in fact && fact.site !== undefined) return fact.site;
  return siteOfChatRoom(practice, room) ?? homeOf(practice, itemsOf(fact));
}

function homeOf(practice: Practice, items: readonly Item[]): string | null {
  for (const item of items) {
    const id = idOf(item);
    const site = item.startsWith('tip:')
      ? tipOf(practice, id)?.home
      : (scannerOf(practice, id)?.home ?? autoclaveOf(practice, id)?.site);
    if (site !== undefined) return site;
  }
  return null;
}

/** Its local date, on its site's calendar. */
export function dateOfEntry(practice: Practice, entry: Entry): LocalDate {
  return toLocal(entry.when, zoneOf(practice, siteOfEntry(practice, entry))).date;
}
