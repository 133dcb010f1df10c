import { ruleValue } from '../../../defaults/rule-value.ts';
import { siteOf } from '../../../practice/look-up.ts';
import { idRanges } from '../../../words/item-words.ts';
import type { Line } from '../../../words/message.ts';
import type { View } from '../../matter.ts';
import { inWords } from '../../tips/tip-words.ts';
import { tipsOf, unknownTips } from './count-due.ts';

/** What a count looks like when it is typed, with this site's own tips. */
export function countExample(view: View, site: string): string {
  const ids = tipsOf(view.state, site);
  const named = inWords(idRanges(ids).replaceAll('–', ' to ').split(', '));
  return ids.length === 1
    ? `“tip ${named} is sterile and on the shelf”`
    : `“tips ${named} are sterile and on the shelf”`;
}

/** "each quarter", "every 6 months": how often this practice counts. */
export function countEvery({ practice }: View, site: string): string {
  const months = ruleValue(practice, 'stocktakeEveryMonths', { site });
  if (months === 3) return 'each quarter';
  return months === 1 ? 'each month' : `every ${months} months`;
}

/** The tips of a site that nobody has told of yet: "Quay Street: tips 1–12". */
export function unknownLine(view: View, site: string): Line {
  const name = siteOf(view.practice, site)?.name ?? site;
  const unknown = unknownTips(view.state, site);
  return [{ strong: name }, `: tips ${idRanges(unknown.length === 0 ? tipsOf(view.state, site) : unknown)}`];
}
