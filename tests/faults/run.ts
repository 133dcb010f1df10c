// All the faults in full: node tests/faults/run.ts [kills]. Says counts; ends with 1 at the first that was not survived.
import { mkdtempSync, rmSync } from 'node:fs';
import { cpus, tmpdir, totalmem } from 'node:os';
import { join } from 'node:path';
import { burst } from '../keeper/burst.ts';
import { cutEverywhere } from './cuts.ts';
import { failEveryCall } from './failing-calls.ts';
import { flipBits } from './flips.ts';
import { failHistory, spoilHistory } from './history.ts';
import { killAgainAndAgain } from './kills.ts';
import { seeded } from './random.ts';

const kills = Number(process.argv[2] ?? 1000);
const seed = Number(process.argv[3] ?? 1);
const work = mkdtempSync(join(tmpdir(), 'scanward-faults-'));

async function fault(name: string, run: (folder: string) => string | Promise<string>): Promise<void> {
  const start = performance.now();
  const said = await run(join(work, name.replaceAll(' ', '-')));
  console.log(`${name.padEnd(20)} ${said} (${((performance.now() - start) / 1000).toFixed(0)} s)`);
}

const gib = (totalmem() / 2 ** 30).toFixed(0);
console.log(
  `${cpus().length} x ${cpus()[0]?.model.trim()}, ${gib} GiB, Node ${process.version}, files in ${tmpdir()}`,
);
try {
  await fault(
    'cuts',
    (folder) => `${cutEverywhere(folder, 1000)} cuts of the journal, each started on and verified`,
  );
  await fault(
    'failing calls',
    (folder) => `${failEveryCall(folder)} runs, each with one file system call failing`,
  );
  await fault('flipped bits', (folder) => {
    const { flips, missed } = flipBits(folder, 9, 1);
    if (missed.length > 0)
      throw new Error(`verify missed ${missed.length} of ${flips}: ${missed.slice(0, 5).join(', ')}`);
    return `${flips} flips, every bit of journal, tables and snapshot; verify found each`;
  });
  await fault('history.db spoilt', async (folder) => {
    const { runs, noticed } = await spoilHistory(folder, 401);
    return `${runs} times: bits flipped, cut, lost, of another day or practice; every answer as before, ${noticed} times it was thrown away and said`;
  });
  await fault('history.db failing', async (folder) => {
    const runs = await failHistory(folder, 5);
    return `${runs} runs, each with one of SQLite's calls failing, once or for good; every answer as before`;
  });
  await fault('burst', async (folder) => {
    await burst(folder, 10_000);
    return '10,000 notes in one burst, 2,500 of them told twice; each in the record once, in order';
  });
  await fault('kill -9', async (folder) => {
    const { answered, entries, setAside } = await killAgainAndAgain(folder, kills, seeded(seed));
    return `${kills} kills; ${answered} answered, all of them among ${entries} entries, none twice; ${setAside} unfinished lines set aside`;
  });
  await fault('kill -9 of the bot', async (folder) => {
    const botKills = Math.ceil(kills / 5);
    const { answered, entries, rebuilt } = await killAgainAndAgain(folder, botKills, seeded(seed), 'bot');
    return `${botKills} kills; ${answered} answered, all of them among ${entries} entries, none twice; history.db worked out again ${rebuilt} times`;
  });
} finally {
  rmSync(work, { recursive: true, force: true });
}
