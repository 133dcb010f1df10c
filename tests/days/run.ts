// Generated days on the core alone: node tests/days/run.ts [days] [seed]. Says counts and the time a day takes; ends with 1 at the first day that went wrong.

import { cpus, totalmem } from 'node:os';
import fc from 'fast-check';
import { anyDay, anyScene } from './any-day.ts';
import { type Seen, wrongWith } from './checks.ts';
import { playDay } from './play-day.ts';
import { processorTime, reading } from './timed-reader.ts';

const days = Number(process.argv[2] ?? 100_000);
const seed = Number(process.argv[3] ?? 1);
const seen: Seen = { sterile: 0, ready: 0, posted: 0, warned: 0, ticked: 0, matters: 0 };
let played = 0;
let happened = 0;
let turns = 0;
let spent = 0;
let readIn = 0;

const gib = (totalmem() / 2 ** 30).toFixed(0);
console.log(
  `${cpus().length} x ${cpus()[0]?.model.trim()}, ${gib} GiB, Node ${process.version}, ${days} days, seed ${seed}`,
);
const property = fc.property(anyDay(40), anyScene, (happenings, scene) => {
  const read = reading.milliseconds;
  const start = processorTime();
  const day = playDay(happenings, scene);
  spent += processorTime() - start;
  readIn += reading.milliseconds - read;
  played += 1;
  happened += happenings.length;
  turns += day.turns.length;
  const wrong = wrongWith(day, seen);
  if (wrong.length > 0) throw new Error(wrong.join('; '));
  if (played % 10_000 === 0) console.log(`${played} days, ${(spent / played).toFixed(2)} ms each`);
});
const result = fc.check(property, { numRuns: days, seed, endOnFailure: true });
console.log(
  `${played} days, ${(happened / played).toFixed(1)} happenings and ${(turns / played).toFixed(1)} turns each`,
);
console.log(
  `${((spent - readIn) / played).toFixed(2)} ms a day on the core alone, ${((spent - readIn) / turns).toFixed(3)} ms a turn; reading its notes ${(readIn / played).toFixed(2)} ms`,
);
console.log(
  `met: ${seen.sterile} sterile tips, ${seen.ready} ready scanners, ${seen.posted} matters posted, ${seen.warned} warnings, ${seen.ticked} posts that fell due`,
);
if (result.failed) {
  console.log(
    `Went wrong: ${result.errorInstance instanceof Error ? result.errorInstance.message : 'no reason given'}`,
  );
  const [happenings, scene] = result.counterexample ?? [];
  console.log(`${scene?.name}: ${JSON.stringify(happenings, null, 1)}`);
  process.exitCode = 1;
}
