import { WEEKDAYS } from '../../time/local-date.ts';
import type { Weekday } from '../practice.ts';

const WORDS: readonly (readonly [Weekday, RegExp])[] = [
  ['mon', /^mon(day)?s?$/],
  ['tue', /^tue(s|sday)?s?$/],
  ['wed', /^wed(s|nesday)?s?$/],
  ['thu', /^thu(r|rs|rsday)?s?$/],
  ['fri', /^fri(day)?s?$/],
  ['sat', /^sat(urday)?s?$/],
  ['sun', /^sun(day)?s?$/],
];

/** The weekdays that a key of `hours` names: `mon`, `Monday`, `mon-fri`, `tue, thu`; `null` when it names none. */
export function readWeekdays(key: string): readonly Weekday[] | null {
  const days: Weekday[] = [];
  for (const part of key.toLowerCase().split(/\s*,\s*/)) {
    const ends = part
      .split(/\s*(?:-|–|\bto\b)\s*/)
      .map((word) => WORDS.find(([, form]) => form.test(word))?.[0]);
    const [first, last = first] = ends;
    if (first === undefined || last === undefined || ends.length > 2 || ends.includes(undefined)) return null;
    const from = WEEKDAYS.indexOf(first);
    const length = ((WEEKDAYS.indexOf(last) - from + 7) % 7) + 1;
    for (let step = 0; step < length; step++) days.push(WEEKDAYS[(from + step) % 7] ?? first);
  }
  return days;
}
