import type { Clause } from '../clause.ts';
import { hasTag } from '../part.ts';
import type { Missing, Result } from '../result.ts';
import { isDenied } from '../roles/outcome.ts';
import { type TipsFound, tipSlots, tipsOf } from '../roles/tips.ts';
import { type Frame, made, result } from './frame.ts';

interface Look {
  readonly mag: number;
  readonly check: number;
  readonly noun: number;
  readonly debris: number;
}

/** True where it is tips that were looked at, and not the oxygen or the post. */
function looksAtTips(c: Clause, look: Look, tips: TipsFound): boolean {
  if (look.mag >= 0 || look.noun >= 0 || c.word(/^inspected$/) >= 0 || c.at('tip') >= 0) return true;
  if (c.word(/^still$/) >= 0 && c.scope.strange <= 1.5) return true;
  if (typeof tips.said === 'string' || c.entities('tips').some(({ entity }) => entity.named)) return true;
  if (look.check >= 0 && c.scope.strange <= 0.5) return true;
  if (/^(debris|residue|blood|gunk|soiling)/.test(c.parts[look.debris]?.text ?? '')) return true;
  return (
    look.debris >= 0 && c.scope.strange <= 1 && !/^(dirt|stain|muck)/.test(c.parts[look.debris]?.text ?? '')
  );
}

export const inspected: Frame = {
  name: 'inspected',
  on: ['check', 'inspection', 'magnifier', 'debris', 'see', 'word:still'],
  read(c): Result | null {
    const look: Look = {
      mag: c.at('magnifier'),
      check: c.form('check', 'dgn'),
      noun: c.at('inspection'),
      debris: c.at('debris'),
    };
    const verb = [look.check, look.noun, look.mag, look.debris].find((i) => i >= 0) ?? stillAt(c);
    if (verb === undefined || (c.has('pouch', 'strip') && look.mag < 0)) return null;
    c.use(look.mag, look.check, look.noun, look.debris);
    c.useTags('do', 'inspection', 'debris', 'magnifier', 'see', 'check');
    const tips = tipsOf(c, { bare: true });
    if (tips === null || !looksAtTips(c, look, tips)) return null;
    const outcome = inspectionOutcome(c, look.debris);
    c.useTags('wash', 'clean');
    if (outcome === null) return inspectedOnly(c, look, tips, verb);
    const base = result(
      [made('inspected', { ...tipSlots(tips), outcome }, { tips: tips.said })],
      verb,
      tips.missing,
      c.used.has(c.word(/^still$/)) ? 0.8 : 0,
    );
    return outcome === 'failed' ? { ...base, anyMood: true } : base;
  },
};

/** Looked at, with what was seen left out. */
function inspectedOnly(c: Clause, look: Look, tips: TipsFound, verb: number): Result | null {
  const plainly = c.word(/^inspected$/) >= 0 && c.scope.strange === 0;
  if (!plainly && look.mag < 0 && look.noun < 0) return null;
  const of = tips.ids.length === 1 ? { of: `tip:${tips.ids[0]}` } : {};
  const missing: Missing = tips.missing ?? { about: 'outcome', slot: 'outcome', form: 'outcome', ...of };
  return result([made('inspected', tipSlots(tips), { tips: tips.said })], verb, missing);
}

function stillAt(c: Clause): number | undefined {
  const at = c.word(/^still$/);
  return at >= 0 && leftOn(c) ? at : undefined;
}

/** "Still composite on 16", "has a rest of silicone": whatever it is, it should not be there. */
function leftOn(c: Clause): boolean {
  const rest = c.word(/^(rest|rests|remains|traces|trace|bits|leftovers|remnants)$/);
  if (
    rest >= 0 &&
    /^(of)$/.test(c.parts[rest + 1]?.text ?? '') &&
    c.has('magnifier', 'inspection', 'check')
  ) {
    for (let i = rest; i <= rest + 2; i++) c.use(i);
    return true;
  }
  const still = c.word(/^still$/);
  const thing = c.parts[still + 1];
  const stuck =
    thing?.entity === undefined &&
    (thing?.unknown === true || thing?.senses.some((s) => s.sort === 'other') === true);
  if (still < 0 || !stuck || c.parts[still + 2]?.text !== 'on' || c.parts[still + 3]?.entity?.is !== 'tips')
    return false;
  c.use(still, still + 1, still + 2);
  return true;
}

function inspectionOutcome(c: Clause, debris: number): 'passed' | 'failed' | null {
  if (leftOn(c)) return 'failed';
  if (debris >= 0) {
    return isDenied(c, debris) ||
      hasTag(c.parts[debris - 1], 'neg') ||
      /^(no|any|free|free of|zero)$/.test(c.parts[debris - 1]?.text ?? '')
      ? 'passed'
      : 'failed';
  }
  let found: 'passed' | 'failed' | null = null;
  for (const [i, part] of c.parts.entries()) {
    if (part.entity !== undefined) continue;
    if (
      hasTag(part, 'fail') ||
      /^(redo|dirty|again please|rewash|redoing|doing it again|needs redoing)$/.test(part.text)
    ) {
      c.use(i);
      return 'failed';
    }
    if (
      hasTag(part, 'pass') ||
      /^(clean|cleared|spotless|pristine|clear|good|fine|ok|okay|immaculate|spotlessly|sparkling)$/.test(
        part.text,
      )
    ) {
      c.use(i);
      found = isDenied(c, i) ? 'failed' : (found ?? 'passed');
    }
  }
  return found;
}
