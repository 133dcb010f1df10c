import type { Gap } from '../language/read.ts';
import type { Item } from '../reading/slots.ts';
import type { View } from '../rules/matter.ts';
import type { Choice } from '../rules/question.ts';
import { idRanges } from '../words/item-words.ts';
import type { Line, Message } from '../words/message.ts';
import { candidatesFor } from './questions/candidates.ts';
import { headOf } from './questions/heads.ts';

/** A question back: what is shown and what may be answered. */
export interface Wording {
  readonly message: Message;
  readonly choices: readonly Choice[];
  /** How many of the choices are shown with their number, from the first: reactions stand for these alone. */
  readonly shown: number;
}

/** More choices than this are not read on a phone: the person is asked to type the name. */
const OFFERED = 9;

/**
 * What the bot asks where a note is unclear, with numbered choices; `null` where nothing sensible can be asked.
 * `sites`: those of the chat room; what is there comes first. `lately`: what this person told of, the latest first.
 */
export function questionFor(
  gap: Gap,
  view: View,
  sites: readonly string[] = [],
  lately: readonly Item[] = [],
): Wording | null {
  const choices = candidatesFor(gap, view, sites, lately);
  const head = headOf(gap, view);
  if (choices.length === 0 || gap.draft === undefined)
    return { message: [{ line: head }, { line: [again(gap, view)] }], choices: [], shown: 0 };
  if (choices.length > OFFERED) {
    const typed =
      gap.unclear.about === 'tip'
        ? ` Type its number: ${idRanges(choices.map(({ value }) => value))}.`
        : ' Type its name.';
    return { message: [{ line: [...head, typed] }], choices, shown: 0 };
  }
  const isYesNo = choices.every(({ value }) => value === 'yes' || value === 'no');
  if (isYesNo) return { message: [{ line: [...head, ...yesOrNo(gap)] }], choices, shown: choices.length };
  if (gap.unclear.about === 'tip' || gap.unclear.about === 'load') return byOwnNumber(head, choices);
  return {
    message: [{ line: head }, { steps: choices.map(({ label }) => [label]) }],
    choices,
    shown: choices.length,
  };
}

/** Tips and loads have numbers of their own: a typed one means the tip, so the places are shown as keys to tap. */
export function byOwnNumber(head: Line, choices: readonly Choice[]): Wording {
  const keys: Message = choices.map(({ label }, n) => ({ line: [`${keycap(n + 1)} ${label}`] }));
  const how = 'Tap, or type its own number.';
  return { message: [{ line: head }, ...keys, { line: [how] }], choices, shown: choices.length };
}

/** The emoji of a digit: U+FE0F U+20E3 behind it. */
function keycap(digit: number): string {
  return `${digit}\uFE0F\u20E3`;
}

function yesOrNo(gap: Gap): Line {
  const no = gap.unclear.about === 'time' ? '; if not, type it again with its time.' : '.';
  return [' Answer ', { strong: 'yes' }, ' or ', { strong: 'no' }, no];
}

/** How to say it so that it is understood, with this practice's own names. */
function again(gap: Gap, { practice }: View): string {
  const tip = practice.tips[0]?.id ?? '1';
  const scanner = practice.scanners[0]?.name ?? 'scanner';
  if (gap.unclear.about === 'what')
    return `Say what was done and to what, such as “tip ${tip} sent to the autoclave” or “${scanner} wiped down”. Or ask for “help”.`;
  return 'Please type the note again with that in it.';
}
