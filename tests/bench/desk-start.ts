// One start of the whole program on a long record, one note, one look at what is due, and the end: node tests/bench/desk-start.ts FOLDER NAME
import { Keeper } from '../../bot/keeper/keeper.ts';
import { openStore } from '../../bot/store/store.ts';
import { fromIso } from '../../core/time/instant.ts';

const [folder = '', name = ''] = process.argv.slice(2);

/** Says the time by the wall clock and what of it was this process's own: other work may run beside. */
function timed<T>(what: string, work: () => T): T {
  const start = performance.now();
  const before = process.cpuUsage();
  const result = work();
  const { user, system } = process.cpuUsage(before);
  const wall = (performance.now() - start).toFixed(0);
  console.log(
    `${`${name}: ${what}, ms (processor)`.padEnd(72)} ${wall} (${((user + system) / 1000).toFixed(0)})`,
  );
  return result;
}

const { store, keeper } = timed('start', () => {
  const opened = openStore(folder);
  return { store: opened, keeper: new Keeper(opened) };
});
for (const notice of keeper.notices) console.log(notice);
const last = fromIso(store.line(store.head.n)?.at ?? '') ?? 0;
const heard = (id: string, text: string, minutes: number) => ({
  ...({ sort: 'note', room: '!quay:example.org', from: '@tom:example.org' } as const),
  ...{ id, text, at: last + minutes * 60_000 },
});
/** As a person types a date. */
function daysBefore(days: number): string {
  const options = { day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' } as const;
  return new Date(last - days * 86_400_000).toLocaleDateString('en-GB', options);
}

for (const [text, minutes] of [
  ['wiped down blue', 1],
  ['wiped down green', 2],
  ['load 7 failed', 3],
  ["what's happened with tip 4?", 4],
  ['what was in load 7?', 5],
  ['March 2007 record please', 6],
  [`tip 3 was used at 10:15 on ${daysBefore(90)}`, 7],
  [`tip 3 was used at 10:15 on ${daysBefore(400)}`, 8],
] as const) {
  keeper.receive([heard(`$${store.head.n}-${minutes}`, text, minutes)]);
  timed(`the note "${text}"`, () => keeper.work(last + minutes * 60_000));
}
timed('what is due', () => keeper.wake(last + 9 * 60_000));
timed('the next instant', () => keeper.next(last + 9 * 60_000));
console.log(
  `${`${name}: memory before the end, MiB`.padEnd(72)} ${(process.memoryUsage().rss / 2 ** 20).toFixed(0)}`,
);
timed('snapshot and end', () => {
  keeper.close();
  store.close();
});
console.log(
  `${`${name}: most memory, MiB`.padEnd(72)} ${(process.resourceUsage().maxRSS / 1024).toFixed(0)}`,
);
