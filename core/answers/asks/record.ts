import type { AskOf } from '../../reading/ask.ts';
import { type Answer, type AskView, entriesBetween } from '../answer-view.ts';
import { toCsv } from '../csv.ts';
import { lines } from '../message.ts';
import { RECORD_COLUMNS, recordRow } from '../record-rows.ts';

/** "October's record please": how much there is, and all of it as a file. */
export function answerRecord(ask: AskOf<'record'>, view: AskView): Answer {
  const rows = entriesBetween(view, ask.from, ask.to)
    .map((entry) => recordRow(view.practice, entry))
    .filter((row) => ask.site === undefined || row.site === ask.site);
  const span = ask.from === ask.to ? ask.from : `${ask.from} to ${ask.to}`;
  if (rows.length === 0)
    return { about: 'record', message: lines([{ strong: 'Nothing noted' }, `, ${span}.`]), items: [] };
  const message = lines([{ strong: `${rows.length} lines` }, `, ${span}. The file has all of them.`]);
  const content = toCsv([RECORD_COLUMNS, ...rows.map((row) => RECORD_COLUMNS.map((column) => row[column]))]);
  const name = `record-${ask.from}-to-${ask.to}.csv`;
  return { about: 'record', message, items: [], file: { name, type: 'text/csv', content } };
}
