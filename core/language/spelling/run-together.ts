import type { Table } from '../table.ts';

/** The short words that run together with others. */
const SHORT = new Set(
  'a in on it is at to the and not of tip tips has was for its i we my off no an be up lens used'.split(' '),
);

/** "inthe", "usedtip": two words run together; none where it is not plain where one ends. */
export function runTogether(text: string, table: Table): readonly string[] {
  if (text.length < 5) return [];
  for (let i = text.length - 2; i >= 2; i--) {
    const [head, tail] = [text.slice(0, i), text.slice(i)];
    if (SHORT.has(head) && SHORT.has(tail)) return [head, tail];
    const strong = [head, tail].some(
      (part) => (part.length > 3 || part === 'tip') && (table.targets.get(part) ?? 0) >= 2,
    );
    if (Math.min(head.length, tail.length) < 4 && !SHORT.has(head.length < tail.length ? head : tail))
      continue;
    if (strong && table.words.has(head) && table.words.has(tail)) return [head, tail];
  }
  return [];
}

/** "greens at north": a scanner's name with its 's run on, where what was typed is no word. */
export function owned(text: string, table: Table): readonly string[] | null {
  if (!text.endsWith('s') || text.length < 4) return null;
  const stem = text.slice(0, -1);
  return table.owners.has(stem) ? [stem, "'s"] : null;
}

const AFTER_NAME = new Set(
  'at in on back been gone now not still ready clean calibrated wiped moved just over off failed passed cable lens base mirror cover calibration here down away fixed out dead broken misting fogging all being had'.split(
    ' ',
  ),
);

/** "greens at north": a plural that is English, but where the name with its 's must be meant. */
export function ownedBefore(text: string, next: string | undefined, table: Table): readonly string[] | null {
  if (next === undefined || !AFTER_NAME.has(next) || table.words.has(text)) return null;
  return text.endsWith('s') && table.owners.has(text.slice(0, -1)) ? [text.slice(0, -1), "'s"] : null;
}
