import type { Choice, Purpose } from '../../rules/question.ts';

/** Reactions that stand for numbered choices. */
const NUMBERS: readonly string[] = ['1️⃣', '2️⃣', '3️⃣', '4️⃣', '5️⃣', '6️⃣', '7️⃣', '8️⃣', '9️⃣'];
/** Reactions that stand for yes and no, where no number is shown. */
const YES_NO: readonly string[] = ['✅', '❌'];

/** Answers whose yes has to be typed: a button that is refused when tapped is worse than none. */
const TYPED = new Set<Purpose['sort']>(['settled', 'allow-correction', 'release-load']);

/** What is offered for tapping under a question: the numbers that its text shows, or a tick and a cross for yes and no. */
export function buttonsFor(
  choices: readonly Choice[],
  purpose: Purpose | null,
  shown = choices.length,
): readonly string[] {
  const yesOrNo = choices.length > 0 && choices.every(({ value }) => value === 'yes' || value === 'no');
  if (!yesOrNo) return NUMBERS.slice(0, shown);
  return purpose !== null && TYPED.has(purpose.sort) ? [] : YES_NO;
}
