import { readFileSync } from 'node:fs';
import { parsePractice } from '../../core/practice/parse.ts';
import { toIso } from '../../core/time/instant.ts';
import { isOpen, nextOpening, openSpans } from '../../core/time/opening.ts';
import { addDays, startOfDay, toLocal } from '../../core/time/zone.ts';

// Run by host-zone.test.ts under several TZ settings: prints one line that must not depend on them.
const file = new URL('../../config/practices/large.yaml', import.meta.url);
const parsed = parsePractice(readFileSync(file, 'utf8'));
if (!('practice' in parsed)) throw new Error('the larger practice has mistakes');
const lines = parsed.practice.sites.flatMap((site) => {
  return Array.from({ length: 400 }, (_, day) => {
    const date = addDays('2026-10-01', day);
    const start = startOfDay(date, site.timezone);
    const spans = openSpans(site, date).map(({ open, shut }) => `${toIso(open)}/${toIso(shut)}`);
    const next = nextOpening(site, start);
    const at = start + 9 * 3_600_000;
    return [
      date,
      toIso(start),
      ...spans,
      next,
      isOpen(site, at),
      JSON.stringify(toLocal(at, site.timezone)),
    ].join(' ');
  });
});
let sum = 0;
for (const character of lines.join('\n')) sum = (sum * 31 + (character.codePointAt(0) ?? 0)) % 1_000_000_007;
console.log(JSON.stringify({ lines: lines.length, sum, host: new Date(1_795_600_000_000).getHours() }));
