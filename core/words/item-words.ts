import { autoclaveOf, scannerOf } from '../practice/look-up.ts';
import type { Practice } from '../practice/practice.ts';
import type { Item } from '../reading/slots.ts';
import { loadName } from '../record/load-key.ts';
import { autoclaveWords } from './load-words.ts';

/** The bare id of an item: `4` of `tip:4`; empty for the one unnamed autoclave. */
export function idOf(item: Item): string {
  const colon = item.indexOf(':');
  return colon < 0 ? '' : item.slice(colon + 1);
}

/** Ids as people read them: runs of three or more numbers as "1–4", the rest one by one: "1–4, 7, 9". Order is kept. */
export function idRanges(ids: readonly string[]): string {
  const runs: string[][] = [];
  for (const id of ids) {
    const run = runs.at(-1);
    if (run !== undefined && follows(run.at(-1) ?? '', id)) run.push(id);
    else runs.push([id]);
  }
  return runs.flatMap((run) => (run.length >= 3 ? [`${run[0]}–${run.at(-1)}`] : run)).join(', ');
}

/** "4" then "5", "N4" then "N5", "K-09" then "K-10"; not "9" then "010". */
function follows(before: string, id: string): boolean {
  const [, head = '', number = ''] = /^(.*?)(\d+)$/.exec(before) ?? [];
  return number !== '' && id === head + String(Number(number) + 1).padStart(number.length, '0');
}

/** "tip 4", "tips 1–4, 7", in the order given. */
export function tipsAsRanges(ids: readonly string[]): string {
  return `${ids.length === 1 ? 'tip' : 'tips'} ${idRanges(ids)}`;
}

/** An item as the practice names it: "green scanner", "tip 4", "load 118", "green scanner’s calibration tip". */
export function itemWords(practice: Practice, item: Item): string {
  const id = idOf(item);
  if (item.startsWith('scanner:')) return scannerOf(practice, id)?.name ?? `scanner ${id}`;
  if (item.startsWith('calibration-tip:'))
    return `${scannerOf(practice, id)?.name ?? `scanner ${id}`}’s calibration tip`;
  if (item.startsWith('load:')) return loadNameWords(practice, id);
  if (item.startsWith('tip:')) return `tip ${id}`;
  return autoclaveWords(practice, id === '' ? null : id);
}

/** `118`, `big/118` or a load's key: "load 118", "load 118 (the big autoclave)". */
function loadNameWords(practice: Practice, said: string): string {
  const { number, autoclave } = loadName(said);
  const known = autoclave !== null && autoclaveOf(practice, autoclave) !== undefined;
  return known && practice.autoclaves.length > 1
    ? `load ${number} (${autoclaveWords(practice, autoclave)})`
    : `load ${number}`;
}
