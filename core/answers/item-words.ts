import { scannerOf } from '../practice/look-up.ts';
import type { Practice } from '../practice/practice.ts';
import type { Item } from '../reading/slots.ts';

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

/** "4" then "5", "N4" then "N5". */
function follows(before: string, id: string): boolean {
  const one = /^(\D*)(\d+)$/.exec(before);
  const other = /^(\D*)(\d+)$/.exec(id);
  return one !== null && other !== null && one[1] === other[1] && Number(other[2]) === Number(one[2]) + 1;
}

/** An item as the practice names it: "green scanner", "tip 4", "load 118", "green scanner’s calibration tip". */
export function itemWords(practice: Practice, item: Item): string {
  const [sort = '', ...rest] = item.split(':');
  const id = rest.join(':');
  if (sort === 'scanner') return scannerOf(practice, id)?.name ?? `scanner ${id}`;
  if (sort === 'calibration-tip') return `${scannerOf(practice, id)?.name ?? id}’s calibration tip`;
  if (sort === 'autoclave') return practice.autoclaves.find((one) => one.id === id)?.name ?? 'the autoclave';
  return `${sort} ${id}`;
}
