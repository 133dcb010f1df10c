import type { Clause } from '../clause.ts';
import type { Made, Missing, Result } from '../result.ts';
import { type TipsFound, type TipsWanted, tipSlots, tipsOf } from '../roles/tips.ts';

/** One way of saying one kind of thing: looked at where a clause has one of its words. */
export interface Frame {
  readonly name: string;
  /** Senses or kinds of mention of which a clause needs one for this frame to be tried. */
  readonly on: readonly string[];
  readonly read: (c: Clause) => Result | null;
}

export type Said = readonly number[] | string;

export function made(kind: string, slots: Record<string, unknown>, said: Record<string, Said> = {}): Made {
  return { entry: { kind, ...slots }, said };
}

export function result(made: readonly Made[], verb: number, missing?: Missing, bonus = 0): Result {
  return { made, verb, ...(missing === undefined ? {} : { missing }), ...(bonus === 0 ? {} : { bonus }) };
}

/** A fact about tips and nothing else. */
export function tipFact(
  c: Clause,
  kind: string,
  verb: number,
  wanted: TipsWanted,
  more: Record<string, unknown> = {},
): Result | null {
  const tips: TipsFound | null = tipsOf(c, wanted);
  if (tips === null) return null;
  return result([made(kind, { ...tipSlots(tips), ...more }, { tips: tips.said })], verb, tips.missing);
}
