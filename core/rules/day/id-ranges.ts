/** "1–4, 7", "T1–T3": runs of three and more in a row are drawn together; by number, ids without one as they come. */
export function idRanges(ids: readonly string[]): string {
  const parts: string[] = [];
  for (const run of runsOf(ids)) {
    const first = run[0] ?? '';
    if (run.length < 3) parts.push(...run);
    else parts.push(`${first}–${run.at(-1) ?? first}`);
  }
  return parts.join(', ');
}

/** "tip 4", "tips 1–4, 7". */
export function tipRanges(ids: readonly string[]): string {
  return `${ids.length === 1 ? 'tip' : 'tips'} ${idRanges(ids)}`;
}

function runsOf(ids: readonly string[]): string[][] {
  const sorted = [...ids].sort((one, other) => one.localeCompare(other, 'en', { numeric: true }));
  const runs: string[][] = [];
  for (const id of sorted) {
    const run = runs.at(-1);
    const last = run?.at(-1);
    if (run !== undefined && last !== undefined && follows(last, id)) run.push(id);
    else runs.push([id]);
  }
  return runs;
}

function follows(last: string, id: string): boolean {
  const [, before = '', number = ''] = /^(.*?)(\d+)$/.exec(last) ?? [];
  return number !== '' && id === `${before}${String(Number(number) + 1).padStart(number.length, '0')}`;
}
