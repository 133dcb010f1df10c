import type { Practice } from '../practice/practice.ts';
import type { Entry, Said } from '../record/entry.ts';
import { zoneOf } from '../record/where.ts';
import { toIso } from '../time/instant.ts';
import { toLocal } from '../time/zone.ts';
import { factWords } from './fact-words.ts';
import { nameOf } from './people-words.ts';
import { siteOfChatRoom } from './site-of-ask.ts';

/** One line of the record as an inspector reads it. */
export interface RecordRow {
  /** Local date and time of the site. */
  readonly when: string;
  readonly utc: string;
  readonly what: string;
  readonly items: string;
  readonly site: string;
  readonly by: string;
  /** When it was typed, UTC. */
  readonly noted: string;
}

/** Columns in order, as the file's first line names them. */
export const RECORD_COLUMNS = ['when', 'utc', 'what', 'items', 'site', 'by', 'noted'] as const;

/** A fact or decision as a row of the record. */
export function recordRow(practice: Practice, entry: Entry): RecordRow {
  const site = siteOfFact(entry.fact) ?? siteOfChatRoom(practice, entry.room);
  const { date, time } = toLocal(entry.when, zoneOf(practice, site));
  return {
    when: `${date} ${time}`,
    utc: toIso(entry.when),
    what: factWords(practice, entry.fact),
    items: itemsOfFact(entry.fact).join(' '),
    site: site ?? '',
    by: nameOf(practice, entry.by),
    noted: toIso(entry.noted),
  };
}

function siteOfFact(fact: Said): string | null {
  return 'site' in fact && fact.site !== undefined ? fact.site : null;
}

/** What a fact or a decision speaks of, written as items. */
export function itemsOfFact(fact: Said): readonly string[] {
  const items: string[] = [];
  if ('items' in fact) items.push(...fact.items);
  if ('item' in fact) items.push(fact.item);
  if ('scanner' in fact && fact.scanner !== undefined && fact.scanner !== null)
    items.push(`scanner:${fact.scanner}`);
  if ('tip' in fact && fact.tip !== undefined) items.push(`tip:${fact.tip}`);
  if ('tips' in fact && fact.tips !== undefined) items.push(...fact.tips.map((tip) => `tip:${tip}`));
  if ('load' in fact && fact.load !== undefined) items.push(`load:${fact.load}`);
  if ('autoclave' in fact && fact.autoclave !== undefined) items.push(`autoclave:${fact.autoclave}`);
  return items;
}
