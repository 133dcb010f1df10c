// The bot itself without its chat, to be killed: takes notes in, keeps a turn for each with history.db beside, and answers.
// Writes "said ID" to standard output when an answer goes out: that is the room. Stops at note number LAST.
import { writeSync } from 'node:fs';
import { Keeper } from '../../bot/keeper/keeper.ts';
import { openStore } from '../../bot/store/store.ts';
import { MINUTE } from '../../core/time/instant.ts';
import { PRACTICE } from '../rehearse/play.ts';
import { tightDesk } from './old-things.ts';

const [folder = '', last = '0'] = process.argv.slice(2);
const START = Date.parse('2026-11-23T08:31:00Z');
const store = openStore(folder);
const say = (notice: string) => void writeSync(1, `notice ${notice}\n`);
const keeper = new Keeper(store, { makeDesk: tightDesk, snapshotEvery: 5, say });
for (const notice of [...store.notices, ...keeper.notices]) say(notice);
keeper.settle(PRACTICE, START);
const chat = {
  deliver: async (effect: { does: string; to?: string; key: string }) => {
    if (effect.does === 'react') writeSync(1, `said ${effect.to}\n`);
    return `$out-${effect.key}`;
  },
};
let next = Number(store.transport.position() ?? 0);
await answerAll();
while (next < Number(last)) {
  const burst = Array.from({ length: 1 + (next % 4) }, (_, i) => next + i);
  const notes = burst.map((i) => ({
    ...({ sort: 'note', room: '!quay:example.org', from: '@tom:example.org' } as const),
    ...{
      id: `$event${i}`,
      at: START + i * MINUTE,
      text: i % 2 === 0 ? 'wiped down blue' : 'scan done on green',
    },
  }));
  next += burst.length;
  // Each note comes twice, as after a lost connection.
  keeper.receive([...notes, ...notes], String(next));
  await answerAll();
}
keeper.close();
store.close();

async function answerAll(): Promise<void> {
  keeper.work(START + next * MINUTE);
  await keeper.send(chat);
}
