import type { Heard } from '../../bot/keeper/heard.ts';
import type { MakeDesk } from '../../bot/keeper/open-desk.ts';
import { Desk } from '../../core/desk/desk.ts';
import { Readers } from '../../core/desk/readers.ts';
import { makeReader } from '../../core/language/reader.ts';
import { at, House, note, QUAY } from '../keeper/house.ts';
import { MORNING } from '../keeper/morning.ts';

/** One for all desks of a run: making a reader costs more than everything else here. */
const readers = new Readers(makeReader);

/** Next to nothing stays in memory: all else is in history.db. */
export const tightDesk: MakeDesk = (archive) => new Desk(readers, { archive, keep: 2, most: 4, days: 0 });

/** That morning, with more to find. */
const LONG_MORNING = [
  ...MORNING,
  // Enough of one tip for rows to leave the state, and of loads for all but the first and the last.
  ...[8, 9, 10, 11, 12].flatMap((load) => [
    'used tip 6',
    `load ${load} on with tip 6`,
    `load ${load} passed, 134 for 3.5 min`,
  ]),
];

/** Keeps so many notes of that morning in a folder; what is in it already comes a second time, and changes nothing. */
export async function keepMorning(folder: string, count = LONG_MORNING.length): Promise<void> {
  const house = new House(folder, { makeDesk: tightDesk });
  for (const [minute, text] of LONG_MORNING.slice(0, count).entries()) {
    const time = `09:${String(minute + 10).padStart(2, '0')}`;
    await house.hear(time, note(`$${minute}`, time, text));
    // Where the disk would not the first time.
    await house.work(time);
  }
  house.close();
}

/** The state as a new start has it. */
export async function stateOf(folder: string): Promise<unknown> {
  const house = new House(folder, { makeDesk: tightDesk });
  const state = house.keeper.desk.exported(at('10:30'));
  house.close();
  return state;
}

const EDIT: Heard = {
  ...{ sort: 'edit', id: '$edit', room: QUAY, from: '@tom:example.org', at: at('10:20') },
  ...{ edits: '$2', text: 'tip 3 on blue' },
};

/** What comes of asking for old things, and of a correction of one, on a folder of that morning. */
export interface Asked {
  readonly posts: readonly string[];
  readonly state: unknown;
  /** What the owner of the machine was told, at the start and later. */
  readonly notices: readonly string[];
}

/** Asks for everything that is in history.db and corrects the third note of the morning. */
export async function askOldThings(folder: string): Promise<Asked> {
  const later: string[] = [];
  const house = new House(folder, { makeDesk: tightDesk, say: (notice) => later.push(notice) });
  const asks = [
    'what has happened with tip 4?',
    'what was in load 7?',
    "today's record please",
    'load 7 failed: where did those tips go?',
  ];
  for (const [minute, text] of asks.entries()) {
    const time = `10:1${minute}`;
    await house.hear(time, note(`$ask${minute}`, time, text));
    await house.work(time);
  }
  for (const [time, heard] of [
    ['10:20', EDIT],
    ['10:21', note('$last', '10:21', 'what has happened with tip 3?')],
  ] as const) {
    await house.hear(time, heard);
    await house.work(time);
  }
  const { store, keeper } = house;
  const asked = {
    posts: house.posts,
    state: keeper.desk.exported(at('10:30')),
    notices: [...store.notices, ...keeper.notices, ...later],
  };
  house.close();
  return asked;
}
