import fc from 'fast-check';
import { SCENES, type Scene } from './scenes.ts';

/** What happens in the chat, so many minutes after what came before. */
export type Happening = {
  readonly after: number;
  /** Minutes for which it lay on a phone that had no signal. */
  readonly late: number;
  readonly from: string;
  readonly north: boolean;
} & (
  | { readonly does: 'note'; readonly text: string }
  /** In reply to the bot's latest post there. */
  | { readonly does: 'reply'; readonly text: string }
  /** Of one of the last notes. */
  | { readonly does: 'edit'; readonly back: number; readonly text: string }
  | { readonly does: 'delete'; readonly back: number }
  /** On one of the bot's last posts there. */
  | { readonly does: 'react'; readonly back: number; readonly emoji: string }
);

const tip = fc.constantFrom('1', '2', '3', '4', '5');
const tips = fc
  .uniqueArray(tip, { minLength: 1, maxLength: 3 })
  .map((ids) => (ids.length === 1 ? `tip ${ids[0]}` : `tips ${ids.join(', ')}`));
const scanner = fc.constantFrom('blue', 'green');
const load = fc.constantFrom('118', '119');
const site = fc.constantFrom('quay', 'north clinic');

function say(...parts: readonly (string | fc.Arbitrary<string>)[]): fc.Arbitrary<string> {
  return fc
    .tuple(...parts.map((part) => (typeof part === 'string' ? fc.constant(part) : part)))
    .map((words) => words.join(''));
}

/** Notes of a day in plain words: what they say is the reader's tests' business, not these. */
const note: fc.Arbitrary<string> = fc.oneof(
  { weight: 6, arbitrary: say('tip ', tip, ' on ', scanner) },
  { weight: 4, arbitrary: say('starting a scan with ', scanner) },
  { weight: 4, arbitrary: say('scan done on ', scanner) },
  { weight: 2, arbitrary: say('scan done on ', scanner, ' with tip ', tip) },
  { weight: 4, arbitrary: say('wiped down ', scanner) },
  { weight: 2, arbitrary: say('cover back on ', scanner) },
  { weight: 2, arbitrary: say('took tip ', tip, ' off') },
  { weight: 3, arbitrary: say('used ', tips) },
  { weight: 2, arbitrary: say(tips, ' washed') },
  { weight: 2, arbitrary: say('bagged ', tips) },
  { weight: 3, arbitrary: say(tips, ' sent to autoclave') },
  { weight: 5, arbitrary: say('load ', load, ' on with ', tips) },
  { weight: 5, arbitrary: say('load ', load, ' passed, 134 for 3.5 min') },
  { weight: 2, arbitrary: say('load ', load, ' passed') },
  { weight: 1, arbitrary: say('load ', load, ' failed') },
  { weight: 1, arbitrary: say('load ', load, ' passed, 131 for 9 min') },
  { weight: 1, arbitrary: say('not sure load ', load, ' passed') },
  { weight: 1, arbitrary: say('not sure tip ', tip, ' is sterile') },
  { weight: 2, arbitrary: say(tips, ' sterile and on the shelf') },
  { weight: 1, arbitrary: fc.constant('tips 1 to 5 are sterile and on the shelf') },
  { weight: 4, arbitrary: say('calibrated ', scanner, ', all good') },
  { weight: 1, arbitrary: say('calibration failed on ', scanner) },
  { weight: 2, arbitrary: say('moved ', scanner, ' to ', site) },
  { weight: 1, arbitrary: say(scanner, ' has just left for ', site) },
  { weight: 1, arbitrary: say('someone dropped ', scanner) },
  { weight: 1, arbitrary: say('tip ', tip, ' keeps fogging') },
  { weight: 1, arbitrary: say('tip ', tip, "'s pouch has split") },
  { weight: 1, arbitrary: say("don't use tip ", tip) },
  { weight: 1, arbitrary: say('tip ', tip, ' is fine to use again') },
  { weight: 1, arbitrary: say(scanner, ' is out of service') },
  { weight: 1, arbitrary: say(scanner, ' is back in service') },
  { weight: 1, arbitrary: say('binned tip ', tip, ', cracked mirror') },
  { weight: 1, arbitrary: say("can't find tip ", tip) },
  { weight: 1, arbitrary: say('found tip ', tip) },
  { weight: 1, arbitrary: fc.constantFrom('17.5 in surgery 1', "it's 24 at north", '22 in surgery 2') },
  { weight: 1, arbitrary: fc.constantFrom('spore test passed', 'spore test failed', 'helix passed') },
  { weight: 1, arbitrary: fc.constantFrom('scans at 10, 11:30 and 3 today', '4 scans tomorrow at quay') },
  { weight: 2, arbitrary: fc.constantFrom('which tips are out?', 'is blue ready?', "what's due today?") },
  { weight: 1, arbitrary: say('load ', load, ' failed: where did those tips go?') },
  { weight: 1, arbitrary: fc.constantFrom('undo', 'sorry, tip 5 not 4', 'calibrated the scanner', 'done') },
  { weight: 1, arbitrary: say('lent ', scanner, ' to the college') },
  { weight: 1, arbitrary: say(scanner, fc.constantFrom(' is back from repair', ' has new software on it')) },
  { weight: 1, arbitrary: say("can't find ", scanner) },
  { weight: 1, arbitrary: say('found ', scanner) },
  { weight: 1, arbitrary: say('dropped tip ', tip) },
  { weight: 1, arbitrary: say('load ', load, ' passed but came out wet') },
  { weight: 1, arbitrary: say('load ', load, ' passed, indicator failed') },
  { weight: 1, arbitrary: say(tips, ' back from the autoclave') },
  { weight: 1, arbitrary: fc.constantFrom('tip 77 on blue', 'load 500 failed', 'wiped down scanner X') },
  { weight: 1, arbitrary: fc.constantFrom('quay is closed tomorrow', 'north clinic shuts at 3 today') },
  { weight: 1, arbitrary: fc.constantFrom('closed: patient told, tip binned', 'incident closed: seen') },
  { weight: 1, arbitrary: fc.constantFrom('the autoclave is out of service', 'autoclave is fine again') },
  { weight: 1, arbitrary: say('scanned with ', scanner, ' and tip ', tip, ' from 9 to 9:20') },
  { weight: 1, arbitrary: say('at 8:05 wiped down ', scanner) },
  { weight: 1, arbitrary: fc.constantFrom('morning all', 'anyone want tea?', 'remind me in 20 minutes') },
);

const DAY_MINUTES = 24 * 60;

const where = {
  after: fc.oneof(
    { weight: 24, arbitrary: fc.integer({ min: 0, max: 12 }) },
    { weight: 24, arbitrary: fc.integer({ min: 0, max: 60 }) },
    // Over night, over a weekend, over a week.
    { weight: 1, arbitrary: fc.integer({ min: DAY_MINUTES / 2, max: 8 * DAY_MINUTES }) },
  ),
  late: fc.oneof(
    { weight: 15, arbitrary: fc.constant(0) },
    { weight: 1, arbitrary: fc.integer({ min: 1, max: 240 }) },
  ),
  from: fc.constantFrom('@rosa:example.org', '@tom:example.org', '@ann:example.org'),
  north: fc.integer({ min: 0, max: 5 }).map((one) => one === 0),
};
const back = fc.nat({ max: 4 });

const happening: fc.Arbitrary<Happening> = fc.oneof(
  { weight: 16, arbitrary: fc.record({ ...where, does: fc.constant('note' as const), text: note }) },
  {
    weight: 2,
    arbitrary: fc.record({
      ...where,
      does: fc.constant('reply' as const),
      text: fc.constantFrom('done', 'yes', 'no', '1', '2', 'later', 'why?', 'undo'),
    }),
  },
  { weight: 1, arbitrary: fc.record({ ...where, does: fc.constant('edit' as const), back, text: note }) },
  { weight: 1, arbitrary: fc.record({ ...where, does: fc.constant('delete' as const), back }) },
  {
    weight: 2,
    arbitrary: fc.record({
      ...where,
      does: fc.constant('react' as const),
      back,
      emoji: fc.constantFrom('✅', '⏰', '1️⃣', '👍'),
    }),
  },
);

/** Where a day is played, the plainest most often. */
export const anyScene: fc.Arbitrary<Scene> = fc.oneof(
  { weight: 2, arbitrary: fc.constantFrom(...SCENES.slice(0, 1)) },
  { weight: 3, arbitrary: fc.constantFrom(...SCENES) },
);

/** A working day: up to so many happenings from before opening on. */
export function anyDay(most: number): fc.Arbitrary<readonly Happening[]> {
  return fc.array(happening, { minLength: 3, maxLength: most, size: 'max' });
}
