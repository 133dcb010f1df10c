import type { Clause } from '../clause.ts';
import { isDenied } from '../roles/outcome.ts';

/** What sort of fault it is, as the record keeps it. */
export type Sort =
  | 'fogging'
  | 'dropped'
  | 'lens'
  | 'mirror'
  | 'cable'
  | 'connection'
  | 'heating'
  | 'pack'
  | 'indicator'
  | 'other';

interface Sign {
  readonly sort: Sort;
  readonly at: number;
  readonly also?: readonly number[];
  /** A denial is part of the sign itself: "strip hadn't turned". */
  readonly denies?: true;
}

const WHOLE = ['crack', 'scratch', 'sick', 'fray', 'tear', 'dead', 'fail'];

/** What in a clause tells that something is wrong, the surest sign first; `null` where nothing does. */
export function signs(c: Clause): Sign | null {
  return dropped(c) ?? indicator(c) ?? pack(c) ?? named(c) ?? general(c);
}

function dropped(c: Clause): Sign | null {
  // "Dropped 5 and 6 in the ultrasonic" is no fall.
  if (c.has('wash')) return null;
  const drop = c.form('drop', 'd');
  const fell = c.form('fall', 'd') >= 0 ? c.form('fall', 'd') : c.word(/^let$/) >= 0 ? c.at('fall') : -1;
  const floor = c.word(/^(floor|ground|lino|tiles|concrete|deck|sink)$/);
  if (drop >= 0 && c.entities('site').length === 0 && !/^(in|at)$/.test(c.word(/^off$/) >= 0 ? 'in' : ''))
    return { sort: 'dropped', at: drop, also: [floor] };
  const knocked = drop >= 0 && /^(knock|bang|bash)/.test(c.parts[drop]?.text ?? '');
  if (knocked) return { sort: 'dropped', at: drop, also: [floor, c.at('shelf'), c.word(/^off$/)] };
  if (fell >= 0 && c.word(/^let$/) >= 0) return { sort: 'dropped', at: fell, also: [floor], denies: true };
  if (fell >= 0) return { sort: 'dropped', at: fell, also: [floor, c.at('shelf')] };
  return null;
}

function indicator(c: Clause): Sign | null {
  const strip = c.at('strip');
  if (strip < 0) return null;
  const turn = [c.at('turn'), c.at('swap'), c.at('pass')].find((i) => i >= 0) ?? -1;
  if (turn >= 0 && isDenied(c, turn)) return { sort: 'indicator', at: strip, also: [turn], denies: true };
  const bad =
    c.at('fail') >= 0
      ? c.at('fail')
      : c.word(/^(unchanged|blank|white|unturned|pink|still pink|still white)$/);
  if (bad >= 0) return { sort: 'indicator', at: strip, also: [bad, turn], denies: true };
  return null;
}

function pack(c: Clause): Sign | null {
  const pouch = c.at('pouch');
  const torn = c.at('tear') >= 0 ? c.at('tear') : c.at('crack');
  if (pouch >= 0 && torn >= 0) return { sort: 'pack', at: torn, also: [pouch], denies: true };
  const seal = c.at('seal');
  if (
    seal >= 0 &&
    c.entities('tips').length > 0 &&
    (torn >= 0 || c.has('fail', 'go') || (pouch >= 0 && c.has('put', 'neg')))
  )
    return {
      sort: 'pack',
      at: seal,
      also: [pouch, torn, c.at('fail'), c.at('go'), c.at('put')],
      denies: true,
    };
  const wet = c.word(
    /^(wet|damp|soaked|soaking|soaking wet|sopping|soggy|torn|moist|still wet|ripped|burst|wet through|came open|come open)$/,
  );
  const ofTip = c.entities('tips').some(({ at, entity }) => entity.named || c.parts[at + 1]?.text === "'s");
  if (wet >= 0 && ofTip && (pouch >= 0 || c.entities('tips').some(({ entity }) => entity.named)))
    return { sort: 'pack', at: pouch >= 0 ? pouch : wet, also: [wet] };
  return null;
}

/** A part of the thing and what is wrong with it: "mirror's cracked", "lens scratched", "cable frayed". */
function named(c: Clause): Sign | null {
  const fog = c.form('fog', 'sdgn');
  const glass = c.at('mirror');
  // A mirror that is cloudy is spoilt; one that mists is cold.
  if (fog >= 0 && glass >= 0 && /^(cloudy|hazy)$/.test(c.parts[fog]?.text ?? ''))
    return { sort: 'mirror', at: fog, also: [glass] };
  if (fog >= 0) return { sort: 'fogging', at: fog, also: [c.at('mirror'), c.at('keep'), c.at('lens')] };
  if (c.at('cold') >= 0) return { sort: 'heating', at: c.at('cold'), also: [c.at('heater')], denies: true };
  if (c.at('disconnect') >= 0 && c.form('disconnect', 'dsg') >= 0)
    return { sort: 'connection', at: c.form('disconnect', 'dsg'), denies: true };
  const wrong =
    [
      ...WHOLE.map((tag) => c.form(tag, 'dsn')),
      c.word(/^(loose|gone|dead|playing up|dodgy|wobbly)$/),
      cameOff(c),
    ].find((i) => i >= 0) ?? -1;
  if (wrong < 0) return null;
  for (const [noun, sort] of [
    ['mirror', 'mirror'],
    ['lens', 'lens'],
    ['cable', 'cable'],
    ['heater', 'heating'],
  ] as const) {
    const at = c.at(noun);
    // "The loft has the window open" is of the room.
    if (at >= 0 && c.parts[at]?.text === 'window' && c.at('open') >= 0) return null;
    if (at >= 0) return { sort, at: wrong, also: [at], denies: true };
  }
  return null;
}

/** "The mirror of tip 12 has come off": nobody took it. */
function cameOff(c: Clause): number {
  return c.has('take', 'put') ? -1 : c.word(/(^|\b(come|came|coming|fallen) )off$/);
}

function general(c: Clause): Sign | null {
  const sick = c.form('sick', 'dsg');
  if (sick >= 0) return { sort: 'other', at: sick, denies: true };
  const dead = c.form('dead', 'd');
  if (dead >= 0) return { sort: 'other', at: dead, denies: true };
  const crack = c.form('crack', 'dn');
  if (crack >= 0) return { sort: 'other', at: crack };
  const seal = c.at('seal');
  const gone = c.has('go', 'fail', 'tear', 'sick') || c.word(/^(gone|leaking|leaks|stuck|perished)$/) >= 0;
  if (seal >= 0 && gone)
    return { sort: 'other', at: seal, also: [c.at('go'), c.word(/^(gone|leaking|leaks|stuck|perished)$/)] };
  return null;
}
