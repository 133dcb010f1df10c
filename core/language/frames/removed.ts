import type { Clause } from '../clause.ts';
import { hasTag } from '../part.ts';
import { tipSlots, tipsOf } from '../roles/tips.ts';
import { type Frame, made, result } from './frame.ts';
import { namedScanner } from './used.ts';

/** "Took tip 5 of", "tip 5 of": one letter short of "off". */
function ofForOff(c: Clause): number {
  const at = c.word(/^of$/);
  const tipBefore = c.parts[at - 1]?.entity?.is === 'tips';
  const after = c.parts[at + 1];
  return at > 0 &&
    tipBefore &&
    (after === undefined || after.mark || (after.entity?.is === 'scanner' && c.form('take', 'd') >= 0))
    ? at
    : -1;
}

/** "Tip 16 taken out from Wanda". */
function outFrom(c: Clause): number {
  const scanner = c.first('scanner');
  const from = scanner !== null && /^(from|of)$/.test(c.parts[scanner.at - 1]?.text ?? '');
  return from && c.form('take', 'd') >= 0 ? c.word(/^out$/) : -1;
}

export const removed: Frame = {
  name: 'removed',
  on: ['remove', 'word:off', 'word:of', 'word:out'],
  read(c) {
    const off = c.word(/^off$/) >= 0 ? c.word(/^off$/) : Math.max(ofForOff(c), outFrom(c));
    const direct = c.form('remove', 'dg');
    const took = c.form('take', 'd');
    const verb = direct >= 0 ? direct : off >= 0 && took >= 0 ? took : off;
    if (verb < 0) return null;
    if (
      direct < 0 &&
      off >= 0 &&
      c.has('hold', 'travel', 'wipe', 'cancel', 'leave', 'cover', 'scan', 'mirror')
    )
      return null;
    // "The mirror of tip 12 has come off": that is a fault of it.
    if (c.has('mirror') && took < 0) return null;
    if (direct >= 0 && !hasTag(c.parts[direct], 'remove')) return null;
    c.use(direct, took, off);
    const tips = tipsOf(c, { bare: direct >= 0 || took >= 0 || c.parts.length <= 5 });
    const both = c.word(/^(both|both of them)$/) >= 0;
    if (tips === null || (typeof tips.said === 'string' && direct < 0 && took < 0 && !both)) return null;
    namedScanner(c);
    c.useTags('get');
    return result([made('removed', tipSlots(tips), { tips: tips.said })], verb, tips.missing, 0.5);
  },
};
