import type { Practice } from '../../../core/practice/practice.ts';
import type { JournalLine } from '../line.ts';
import { type Correction, correctionsIn, entriesOf, type KeptEntry, practiceIn } from './kept-entry.ts';
import type { Names } from './names.ts';
import { itemsOf, localWithOffset, type Row, rowOf, siteOf } from './row.ts';
import { readPractice, ruleChanges } from './rule-changes.ts';
import { warningsOf } from './warnings.ts';

/** What to export: local dates (both included), a site's id, an item as in tip:4. Null takes all. */
export interface Wanted {
  from: string | null;
  to: string | null;
  site: string | null;
  item: string | null;
}

/** An entry that is wanted, with what corrected it. */
export interface Exported {
  entry: KeptEntry;
  correction: Correction | null;
}

/** Kinds that are the program's own housekeeping: not for an inspector's table. */
const housekeeping: ReadonlySet<string> = new Set(['practice', 'word', 'stocktake-asked']);

/**
 * The wanted entries of the record, in the order noted. `lines` is read twice: what corrects an entry stands after it.
 * An entry is of the local date on which it happened, on its site's clock.
 */
export function* wantedEntries(
  lines: () => Iterable<JournalLine>,
  wanted: Wanted,
  names: Names,
): Generator<Exported> {
  const corrections = new Map<number, Correction>();
  for (const line of lines()) {
    for (const { of, correction } of correctionsIn(line)) {
      if (!corrections.has(of)) corrections.set(of, correction);
    }
  }
  let practice: Practice | null = null;
  for (const line of lines()) {
    const file = practiceIn(line);
    const changed = file === null ? [] : ruleChanges(line, practice, file);
    practice = file === null ? practice : readPractice(file);
    for (const entry of [...changed, ...entriesOf(line), ...warningsOf(line, names)]) {
      if (housekeeping.has(entry.kind) || !isWanted(entry, wanted, names)) continue;
      yield { entry, correction: corrections.get(line.n) ?? null };
    }
  }
}

/** The same as rows of a table. */
export function* rowsOf(lines: () => Iterable<JournalLine>, wanted: Wanted, names: Names): Generator<Row> {
  for (const { entry, correction } of wantedEntries(lines, wanted, names))
    yield rowOf(entry, correction, names);
}

function isWanted(entry: KeptEntry, wanted: Wanted, names: Names): boolean {
  const site = siteOf(entry, names);
  if (wanted.site !== null && site !== wanted.site) return false;
  if (wanted.item !== null && !itemsOf(entry).includes(wanted.item)) return false;
  const date = localWithOffset(entry.when, names.zone(site, entry.room)).slice(0, 10);
  if (wanted.from !== null && date < wanted.from) return false;
  return wanted.to === null || date <= wanted.to;
}
