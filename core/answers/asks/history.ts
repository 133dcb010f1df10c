import type { AskOf } from '../../reading/ask.ts';
import type { Entry } from '../../record/entry.ts';
import { zoneOf } from '../../record/where.ts';
import { capital } from '../../rules/tips/tip-words.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { clockWords } from '../clock-words.ts';
import { toCsv } from '../csv.ts';
import { factWords } from '../fact-words.ts';
import { itemWords } from '../item-words.ts';
import { lines } from '../message.ts';
import { nameOf } from '../people-words.ts';
import { itemsOfFact, RECORD_COLUMNS, recordRow } from '../record-rows.ts';
import { siteOfChatRoom } from '../site-of-ask.ts';

/** What is shown on the phone; the rest is in the file. */
const SHOWN = 6;

/** "What's happened with tip 4?": the latest first, all of it as a file where it is long. */
export function answerHistory({ item }: AskOf<'history'>, view: AskView): Answer {
  const about = entriesAbout(view, item).reverse();
  const name = capital(itemWords(view.practice, item));
  if (about.length === 0)
    return { about: 'answer', message: lines([{ strong: name }, ': nothing noted yet.']), items: [item] };
  const message = [
    { line: [{ strong: name }, `: ${about.length} ${about.length === 1 ? 'note' : 'notes'}, latest first.`] },
    { points: about.slice(0, SHOWN).map((entry) => [entryWords(entry, view)]) },
  ];
  if (about.length <= SHOWN) return { about: 'answer', message, items: [item] };
  const rows = about
    .map((entry) => recordRow(view.practice, entry))
    .map((row) => RECORD_COLUMNS.map((column) => row[column]));
  const content = toCsv([RECORD_COLUMNS, ...rows]);
  const file = { name: `${item.replace(/[:/]/g, '-')}.csv`, type: 'text/csv', content };
  return { about: 'answer', message, items: [item], file };
}

/** Every entry that speaks of an item, in the record's order: a tip's loads with it. */
function entriesAbout(view: AskView, item: string): Entry[] {
  const loads = new Set<string>();
  if (item.startsWith('tip:')) {
    for (const key of view.state.history.tipLoads.get(item.slice(4)) ?? []) {
      const number = view.state.loads.get(key)?.number;
      if (number !== undefined) loads.add(`load:${number}`);
    }
  }
  return view.entries.filter(({ fact }) => {
    const items = itemsOfFact(fact);
    return items.includes(item) || (fact.kind === 'load-finished' && items.some((one) => loads.has(one)));
  });
}

function entryWords(entry: Entry, view: AskView): string {
  const zone = zoneOf(view.practice, siteOfChatRoom(view.practice, entry.room));
  return `${clockWords(entry.when, view.now, zone)} ${factWords(view.practice, entry.fact)} (${nameOf(view.practice, entry.by)})`;
}
