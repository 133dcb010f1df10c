import type { Clause } from '../clause.ts';
import type { Missing } from '../result.ts';
import { placeOf } from '../roles/place.ts';
import { scannersOf } from '../roles/scanner.ts';
import { type TipsFound, tipsOf } from '../roles/tips.ts';
import { type Frame, made, result } from './frame.ts';

/** What is said of a tip or scanner besides fitting it: then "on" tells where, not that it was put there. */
const NOT_FITTING = [
  ...[
    'use',
    'start',
    'scan',
    'crack',
    'fog',
    'load',
    'wipe',
    'wash',
    'bag',
    'scratch',
    'drop',
    'cover',
    'lens',
    'base',
  ],
  ...['calibrate', 'mirror', 'pouch', 'strip', 'debris', 'cable', 'lose', 'find'],
];

/** "Loaded tip 7 on blue": a scanner is loaded with a tip, an autoclave with a load. */
function loadedOn(c: Clause): number {
  const scanner = c.first('scanner');
  return scanner !== null && /^(on|to)$/.test(c.prep(scanner.at)) ? c.exactly('load', 'd') : -1;
}

/** Something else is done there; "same patient, back on Ruby" goes on with a scan. */
function saysElse(c: Clause): boolean {
  if (c.has('samept') && c.word(/^back on$/) >= 0) return true;
  return c.has(...NOT_FITTING.filter((tag) => tag !== 'load' || loadedOn(c) < 0));
}

export const fitted: Frame = {
  name: 'fitted',
  on: [
    'fit',
    'put',
    'word:on',
    'word:onto',
    'word:on to',
    'word:back on',
    'word:back onto',
    'word:->',
    'word:on it',
    'load',
  ],
  read(c) {
    const on = c.word(/^(on|onto|on to|back on|back onto|->|on it|on her|on him)$/);
    const fit = c.form('fit', 'dn') >= 0 ? c.form('fit', 'dn') : loadedOn(c);
    const put = c.form('put', 'd');
    if ((fit < 0 && on < 0) || saysElse(c)) return null;
    const tips = tipsOf(c, { bare: true, before: false }) ?? (fit >= 0 || put >= 0 ? tipsOf(c, {}) : null);
    if (tips === null) return null;
    const scanner = scannersOf(c);
    if (
      /^on (it|her|him)$/.test(c.parts[on]?.text ?? '') &&
      c.first('scanner') === null &&
      c.scope.memory.scanners.length === 0
    )
      return null;
    if (!scanner.spoken && fit < 0 && !(put >= 0 && on >= 0) && !endsOn(c, on)) return null;
    c.use(fit, put, on);
    c.useTags('click');
    placeOf(c);
    const [tip, more] = tips.ids;
    const [id, second] = scanner.ids;
    if (more !== undefined || second !== undefined || tips.which !== undefined) return null;
    const slots = { ...(tip === undefined ? {} : { tip }), ...(id === undefined ? {} : { scanner: id }) };
    const verb = [fit, put, on].find((i) => i >= 0) ?? 0;
    return result(
      [made('fitted', slots, { tip: tips.said, scanner: scanner.said })],
      verb,
      tipMissing(tips) ?? scanner.missing,
    );
  },
};

/** "Tip 3 on": only which scanner is left out. */
function endsOn(c: Clause, on: number): boolean {
  return (
    on === c.parts.length - 1 &&
    c
      .entities('tips')
      .some(({ entity }) => entity.named || (c.scope.memory.frame === 'removed' && entity.ids.length > 0))
  );
}

/** What is missing of the one tip that is fitted. */
function tipMissing(tips: TipsFound): Missing | undefined {
  if (tips.missing === undefined || tips.ids.length > 0) return tips.missing;
  return { ...tips.missing, slot: 'tip', form: 'id' };
}
