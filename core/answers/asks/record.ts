import type { AskOf } from '../../reading/ask.ts';
import type { Entry } from '../../record/entry.ts';
import { DAY } from '../../time/instant.ts';
import { startOfDay } from '../../time/zone.ts';
import { lines, type Message } from '../../words/message.ts';
import { nameOf } from '../../words/people-words.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { csvFile } from '../csv.ts';
import { dateOfEntry, isForReaders, RECORD_COLUMNS, recordRow, siteOfEntry } from '../record-rows.ts';
import { recordSummary } from '../record-summary.ts';
import { spanOfAsk } from '../span-of-ask.ts';

/** More than a year of a busy practice (a hundred notes a day): no phone opens a larger file with ease (assumed). */
const MOST_LINES = 50_000;

/** "October's record please": what is in it, in a few counts, and all of it as a file. */
export function answerRecord(ask: AskOf<'record'>, view: AskView): Answer {
  const { practice } = view;
  const entries = entriesAsked(ask, view);
  const span = spanOfAsk(practice, ask);
  if (entries.length === 0)
    return {
      about: 'record',
      message: lines([{ strong: span }, `: nothing noted${byWords(ask)}.`]),
      items: [],
    };
  if (entries.length > MOST_LINES) {
    const tooLong = `: more than ${MOST_LINES} lines, too many for one file here. Ask for a shorter stretch; any stretch can be exported where I run.`;
    return { about: 'record', message: lines([{ strong: span }, tooLong]), items: [] };
  }
  const count = entries.length === 1 ? '1 line' : `${entries.length} lines`;
  const points = recordSummary(entries, view.state);
  const message: Message = [
    { line: [{ strong: span }, `: ${count}${byWords(ask)}, all in the file.`] },
    ...(points.length === 0 ? [] : [{ points }]),
  ];
  const rows = entries.map((entry) => recordRow(practice, entry));
  const site = ask.site === undefined ? '' : `-${ask.site}`;
  const by = ask.person === undefined ? '' : `-${ask.person.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-')}`;
  const name = `record${site}${by}-${ask.from}${ask.to === ask.from ? '' : `-to-${ask.to}`}`;
  return { about: 'record', message, items: [], file: csvFile(name, RECORD_COLUMNS, rows) };
}

/** " by Tom" where one person's was asked for. */
function byWords({ person }: AskOf<'record'>): string {
  return person === undefined ? '' : ` by ${person}`;
}

/** Entries of those local dates, each by its own site's calendar; not many more than are shown. */
function entriesAsked(ask: AskOf<'record'>, { practice, entries }: AskView): readonly Entry[] {
  // No zone is a whole day from another by more than two: what lies outside need not be looked at closely.
  const first = startOfDay(ask.from, practice.timezone) - 2 * DAY;
  const last = startOfDay(ask.to, practice.timezone) + 3 * DAY;
  const isAsked = (entry: Entry) => {
    if (!isForReaders(entry)) return false;
    if (ask.site !== undefined && siteOfEntry(practice, entry) !== ask.site) return false;
    if (ask.person !== undefined && (entry.by === null || nameOf(practice, entry.by) !== ask.person))
      return false;
    const date = dateOfEntry(practice, entry);
    return date >= ask.from && date <= ask.to;
  };
  const asked: Entry[] = [];
  for (const entry of entries.between(first, last)) {
    if (isAsked(entry)) asked.push(entry);
    if (asked.length > MOST_LINES) break;
  }
  return asked;
}
