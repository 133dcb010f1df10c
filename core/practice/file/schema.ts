import { z } from 'zod';
import { chatRoomId, personId } from './chat-leaves.ts';
import { closed } from './closed-leaf.ts';
import { hours } from './hours-leaf.ts';
import { block } from './leaf.ts';
import { choice, id, listOf, maybeText, neededNumber, number, text, texts, tipIds } from './text-leaves.ts';
import { zone } from './zone-leaf.ts';

const also = texts('commas');
const said = texts('whole');

const room = block({ id: id('s1'), name: maybeText, also });

const site = block({
  id: id('quay'),
  name: maybeText,
  also,
  timezone: zone,
  rooms: listOf(room),
  hours,
  closed,
});

const notes = block({ 'set-up': said, pack: said, clean: said, calibrate: said });

const scanner = block({ id: id('A'), name: maybeText, also, home: maybeText, notes: z.optional(notes) });

/** Steam for instruments lies between 100 and 150 °C; a hold of more than four hours is a slip. */
const cycle = block({
  celsius: neededNumber({ min: 100, max: 150, whole: false }),
  minutes: neededNumber({ min: 0.1, max: 240, whole: false }),
});

const autoclave = block({ id: id('big'), name: maybeText, also, site: maybeText, cycles: listOf(cycle) });

const tips = block({
  ids: tipIds,
  home: maybeText,
  cycles: number(null, { min: 1, max: 100_000, whole: true }),
  cyclesSoFar: number(0, { min: 0, max: 100_000, whole: true }),
});

const person = block({
  name: text('Rosa'),
  also,
  id: personId,
  part: choice(['staff', 'lead', 'deputy', 'manager']),
});

const chatRoom = block({ room: chatRoomId, sites: texts('commas') });

/** The whole file. References and shared names are looked at beside it, so that one run names every mistake. */
export const practiceFile = block({
  practice: text('the name of the practice'),
  timezone: zone,
  sites: listOf(site),
  scanners: listOf(scanner),
  autoclaves: listOf(autoclave),
  tips: listOf(tips),
  people: listOf(person),
  chat: listOf(chatRoom),
  servers: texts('commas'),
  dates: choice(['day-first', 'month-first']),
  rules: z.unknown(),
});

export type PracticeFile = z.output<typeof practiceFile>;
