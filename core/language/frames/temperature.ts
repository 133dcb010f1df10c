import { Clause } from '../clause.ts';
import { wordsNumber } from '../lexicon/count.ts';
import { toCelsius } from '../mentions/temperature.ts';
import { placeOf, placeSlots } from '../roles/place.ts';
import { type Frame, made, result } from './frame.ts';

/** A bare whole number is a room's temperature only within these, °C. */
const PLAUSIBLE: readonly [number, number] = [5, 40];

export const temperature: Frame = {
  name: 'temperature',
  on: ['celsius', 'temp', 'degree', 'site', 'room', 'word:here', 'word:in here'],
  read(c) {
    if (c.entities('cycle').length > 0 || c.entities('load').length > 0 || c.entities('scanner').length > 0)
      return null;
    if (
      headOf(c).has(
        'calibrate',
        'scan',
        'use',
        'start',
        'finish',
        'autoclave',
        'open',
        'shut',
        'bag',
        'wash',
        'tip',
        'booking',
        'patient',
      )
    )
      return null;
    const said = temperatureIn(c);
    if (said === null) return null;
    const place = placeOf(c);
    const noun = c.at('temp');
    const here = place === null ? inHere(c, said.value) : -1;
    const about =
      noun >= 0 ||
      said.unit ||
      here >= 0 ||
      (place !== null &&
        (said.decimal ||
          (said.at === 0 &&
            c.parts.length <= 4 &&
            c.prep(place.at) === 'in' &&
            place.room !== undefined &&
            said.value >= 10) ||
          c.word(/^(it's|its|reading|reads|showing|is|'s|only|now|at|it is|sitting)$/) >= 0));
    if (!about) return null;
    c.use(said.at, here);
    useBystanders(c, said.at);
    c.useTags(
      'temp',
      'degree',
      'be',
      'say',
      'show',
      'start',
      'come',
      'go',
      'read',
      'see',
      'check',
      'fahrenheit',
    );
    // A patient's own: no surgery is that warm, and rooms are named where they are.
    if (said.value >= 35 && place === null) return null;
    const slots = { celsius: said.value, ...placeSlots(place) };
    return result(
      [made('temperature', slots, { celsius: [said.at], ...(place === null ? {} : { site: place.said }) })],
      said.at,
      place?.missing,
      // "Surgery 1 is at 19".
      here >= 0 ? 1 : place?.room !== undefined && c.word(/^at$/) === said.at - 1 ? 0.4 : 0,
    );
  },
};

/** "It's 17 in here", "19 degrees here": where it is typed, which the record knows by the chat room. */
function inHere(c: Clause, value: number): number {
  const at = c.word(/^(?:in )?here$/);
  if (at <= 0 || at < c.parts.length - 1) return -1;
  // "There's 12 in here": people, where no degrees are said.
  return c.has('degree') || (c.parts[at]?.text === 'in here' && value >= 14) ? at : -1;
}

/** "20.0 in surgery 4 with the radiator on": what stands by in the room. */
function useBystanders(c: Clause, from: number): void {
  const at = c.word(/^with$/, from);
  if (at < 0) return;
  for (let i = at; i < c.parts.length; i++) if (c.parts[i]?.entity === undefined) c.use(i);
}

/** The clause up to "with the door shut". */
function headOf(c: Clause): Clause {
  const at = c.word(/^with$/);
  return at > 0 ? new Clause(c.parts.slice(0, at), c.scope) : c;
}

function temperatureIn(c: Clause): { value: number; at: number; unit: boolean; decimal: boolean } | null {
  const exact = c.entities('celsius');
  const one = exact[exact.length - 1];
  if (one !== undefined) return { value: one.entity.value, at: one.at, unit: one.entity.unit, decimal: true };
  for (const [at, part] of c.parts.entries()) {
    const number = wordsNumber(part);
    if (number === null || /^(one|two)$/.test(part.text)) continue;
    const value = toCelsius(number, '');
    if (value >= PLAUSIBLE[0] && value <= PLAUSIBLE[1]) return { value, at, unit: false, decimal: false };
  }
  return null;
}
