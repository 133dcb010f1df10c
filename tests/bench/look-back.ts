// How long a look-back takes on a long record: node tests/bench/look-back.ts [entries]. Processor time; aim: under a second at a million.
import { cpus, totalmem } from 'node:os';
import { withScratchHistory } from '../../bot/store/history/history-file.ts';
import { Desk } from '../../core/desk/desk.ts';
import type { State } from '../../core/record/state.ts';
import { lookBack, lookBackTip } from '../../core/rules/loads/look-back.ts';
import { PRACTICE } from '../rehearse/play.ts';
import { longRecord } from './long-record.ts';

const entries = Number(process.argv[2] ?? 1_000_000);
const START = Date.parse('2006-01-02T07:00:00Z');

function timed(what: string, work: () => number): void {
  const before = process.cpuUsage();
  const found = work();
  const { user, system } = process.cpuUsage(before);
  const ms = ((user + system) / 1000).toFixed(0);
  console.log(`${what.padEnd(64)} ${ms} ms of processor time, ${found} found`);
}

/** Keys of loads that one after another went in, from that share of the way on. */
function loadsFrom(state: State, share: number, count: number): readonly string[] {
  const keys = [...state.history.tipLoads].flatMap(([, list]) => {
    const from = Math.floor(list.length * share);
    return Array.from({ length: Math.ceil(count / 8) }, (_, n) => list.at(from + n) ?? '');
  });
  return keys.filter((key) => key !== '').slice(0, count);
}

const gib = (totalmem() / 2 ** 30).toFixed(0);
console.log(
  `${cpus().length} x ${cpus()[0]?.model.trim()}, ${gib} GiB, Node ${process.version}, ${entries} entries`,
);
withScratchHistory((archive) => {
  const desk = new Desk(undefined, { archive });
  desk.settings(PRACTICE.replaceAll(', cycles: 100', ''), START);
  let number = 1;
  let now = START;
  timed('folded from the first turn', () => {
    for (const { at, turn } of longRecord(2, entries)) {
      number += 1;
      desk.replay(number, turn);
      now = Date.parse(at);
    }
    return number;
  });
  const { state } = desk.view(now);
  for (const [where, share] of [
    ['half way back', 0.5],
    ['at the beginning', 0],
    ['of the last days', 0.99],
  ] as const) {
    const keys = loadsFrom(state, share, 400);
    timed(`400 loads ${where}: every scan concerned`, () => lookBack(state, keys).length);
    timed(`${where}, once more`, () => lookBack(state, keys).length);
  }
  timed('one load at the beginning', () => lookBack(state, loadsFrom(state, 0, 1)).length);
  timed('each tip since its last good load', () => {
    return ['1', '2', '3', '4', '5', '6', '7', '8'].flatMap((tip) => lookBackTip(state, tip)).length;
  });
});
