import { judgeFolder, kindsOf, placeOf, table } from './report.ts';

/**
 * `node tests/corpus/run-report.ts FOLDER [--failures]`: how a folder of the corpus is read, by voice, kind and tag. Failures are
 * listed with what was got, but never for `held`: that part is there to measure with, not to tune on.
 */
const [folder = 'voices', flag] = process.argv.slice(2);
const judged = judgeFolder(folder);
const show = (title: string, lines: readonly string[]) => console.log(`\n${title}\n${lines.join('\n')}`);

show(
  'all',
  table(judged, () => [folder]),
);
show(
  'by voice',
  table(judged, ({ one }) => [one.voice]),
);
show('by kind', table(judged, kindsOf));
show(
  'by tag',
  table(judged, ({ one }) => one.tags),
);
if (flag === '--failures' && folder !== 'held') {
  for (const one of judged.filter(({ verdict }) => verdict !== 'exact')) {
    console.log(`\n${one.verdict} ${placeOf(one)}  ${one.one.note}`);
    console.log(`  want ${JSON.stringify(one.one.expected)}`);
    console.log(`  got  ${JSON.stringify(one.got)}`);
  }
}
