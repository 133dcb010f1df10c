import type { Clause } from '../clause.ts';
import { hasTag } from '../part.ts';
import { isDenied } from '../roles/outcome.ts';

interface Found<T> {
  readonly value: T | null;
  readonly used: readonly number[];
}

const TURNED =
  /^(turned|brown|gone brown|turned brown|turned black|gone black|changed|passed|pass|good|fine|ok|okay|black|correct|green|done|changed colour|changed color|all good|turned black|changed fully|complete|right)$/;

const UNTURNED =
  /^(unchanged|white|unturned|blank|pink|(still|stayed|stays|remained) (pink|white|blank|unchanged))$/;

/** What the load's indicator showed: "strip turned", "indicator hadn't changed". */
export function stripOf(c: Clause): Found<'passed' | 'failed'> {
  const noun = c.at('strip');
  if (noun < 0) return { value: null, used: [] };
  const denials: number[] = [];
  for (let i = noun + 1; i < Math.min(c.parts.length, noun + 6); i++) {
    const part = c.parts[i];
    if (part?.entity?.is === 'load') continue;
    if (part === undefined || part.entity !== undefined || hasTag(part, 'pouch')) break;
    if (hasTag(part, 'neg')) denials.push(i);
    const value = stripSays(c, i, noun);
    if (value !== null) return { value, used: [noun, ...denials, i] };
  }
  return { value: null, used: [noun, ...denials] };
}

function stripSays(c: Clause, at: number, noun: number): 'passed' | 'failed' | null {
  const part = c.parts[at];
  if (part === undefined) return null;
  if (hasTag(part, 'fail') || UNTURNED.test(part.text)) return 'failed';
  const turned = TURNED.test(part.text) || ['turn', 'swap', 'pass'].some((tag) => hasTag(part, tag));
  if (!turned) return null;
  return isDenied(c, at) || hasTag(c.parts[noun - 1], 'neg') ? 'failed' : 'passed';
}

/** Whether the load came out dry: "packs dry", "came out wet". */
export function dryOf(c: Clause): Found<boolean> {
  const wet = c.word(
    /^(wet|humid|damp|soaked|soaking|soaking wet|soggy|not dry|still wet|moist|wet through)$/,
  );
  const dry = c.word(/^(dry|all dry|bone dry|nice and dry|dried)$/);
  const at = wet >= 0 ? wet : dry;
  if (at < 0) return { value: null, used: [] };
  const pouch = c.at('pouch');
  return { value: wet < 0 && !isDenied(c, at), used: pouch < 0 ? [at] : [at, pouch] };
}
