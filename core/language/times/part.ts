import { meanings, phraseAt } from './phrases.ts';
import { type Parsed, type Scan, textAt } from './scan.ts';
import type { Day, DayPart } from './time-span.ts';

/** A part of the day, with the day where the words name it ("this morning", "last night"). */
export interface PartSaid {
  readonly part: DayPart;
  readonly day?: Day;
}

const TODAY: Day = { sort: 'offset', days: 0 };
const YESTERDAY: Day = { sort: 'offset', days: -1 };
const TOMORROW: Day = { sort: 'offset', days: 1 };

/** Said so that no cue and no day is needed. The longest that fits wins. */
const PHRASES = meanings<PartSaid>([
  [
    { part: 'morning', day: TODAY },
    'this morning | this morn | this am | this mornin | this a . m | all morning | mid morning | mid - morning | late morning | early this morning | late this morning',
  ],
  [
    { part: 'afternoon', day: TODAY },
    'this afternoon | this arvo | this aft | this pm | the arvo | this avo | all afternoon | arvo | sarvo | early this afternoon | late this afternoon',
  ],
  [{ part: 'evening', day: TODAY }, 'this evening | this eve | tonight | tonite | 2 nite'],
  [{ part: 'night', day: YESTERDAY }, 'last night | last evening | overnight'],
  [{ part: 'afternoon', day: YESTERDAY }, 'yesterday arvo'],
  [{ part: 'night', day: TOMORROW }, 'tomorrow night'],
  [
    { part: 'early' },
    'first thing | first off | 1 st thing | first thing in the morning | first thing in morning | bright and early',
  ],
  [{ part: 'earlier' }, 'earlier | earlier on | earlier today | earlier in the day | so far today'],
  [{ part: 'later' }, 'later | later on | later today | later in the day'],
  [{ part: 'lunch' }, 'lunchtime | lunch time | lunch - time | dinnertime'],
  [{ part: 'day' }, 'all day | all day long | the whole day'],
]);

/** Only after a day or a fitting cue: "morning all" is a greeting, "lunch" a meal. */
const BARE = meanings<PartSaid>([
  [{ part: 'morning' }, 'morning | mornings | am | in the morning | in the am | a . m'],
  [
    { part: 'afternoon' },
    'afternoon | afternoons | arvo | aft | pm | in the afternoon | in the arvo | in the pm',
  ],
  [{ part: 'evening' }, 'evening | eve | in the evening | at night | night'],
  [
    { part: 'lunch' },
    'lunch | lunchtime | lunch time | at lunch | at lunchtime | dinner | the lunch break | lunch break',
  ],
]);

/** After these, "lunch" is a time; also what "the morning" may follow. */
const LUNCH_CUES: ReadonlySet<string> = new Set(
  'at before after over since during by until till til around about near this'.split(' '),
);

export function partAt(scan: Scan, i: number, cueWord: string): Parsed<PartSaid> | null {
  const text = textAt(scan, i);
  const whole = phraseAt(scan, i, PHRASES);
  if (whole !== null && !comparing(scan, whole)) return whole;
  const the = text === 'the' ? i + 1 : i;
  if (cueWord === 'in' && /^(morning|afternoon|arvo|evening)$/.test(textAt(scan, the)) && the > i)
    return phraseAt(scan, the, BARE);
  if (LUNCH_CUES.has(cueWord) && /^(lunch|dinner)$/.test(textAt(scan, the))) return phraseAt(scan, the, BARE);
  return null;
}

/** The part of a day that was just said: "tomorrow morning", "Thursday pm", "9 in the morning". */
export function partAfterDay(scan: Scan, i: number): Parsed<PartSaid> | null {
  return phraseAt(scan, i, BARE);
}

/** "Earlier than usual", "see you later": no time of ours. */
function comparing(scan: Scan, found: Parsed<PartSaid>): boolean {
  if (textAt(scan, found.next) === 'than') return true;
  const before = textAt(scan, found.next - 2);
  return (
    found.value.part === 'later' &&
    /^(you|u|ya|sooner|minutes|mins|min|hour|hours|day|days|week|weeks|or)$/.test(before)
  );
}
