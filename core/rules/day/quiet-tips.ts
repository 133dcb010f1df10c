import { ruleValue } from '../../defaults/rule-value.ts';
import type { Mark, TipShown } from '../../record/state.ts';
import { DAY } from '../../time/instant.ts';
import { tipsAsRanges } from '../../words/item-words.ts';
import { hasCome } from '../clock.ts';
import { eachSite } from '../each.ts';
import type { Matter, View } from '../matter.ts';
import { chatRoomFor } from '../room-of.ts';
import { nextBrief } from './brief/next-brief.ts';

const RULE = 'quiet-tip';

/** A tip that is not sterile and that nobody has spoken of for a fortnight. */
export interface QuietTip {
  readonly tip: string;
  readonly state: TipShown;
  /** The last note that spoke of it. */
  readonly spoken: Mark;
}

/** Those of a site that no brief has asked about yet, in the file's order. */
export function quietTips(view: View, site: string): readonly QuietTip[] {
  const { practice, state, said } = view;
  const longest = ruleValue(practice, 'tipQuietDays', { site }) * DAY;
  return [...state.tips.values()].flatMap(({ id: tip, site: at, state: shown, spoken }) => {
    if (at !== site || spoken === null || shown === 'sterile' || shown === 'retired') return [];
    const asked = said.saidAt(quietTipKey(tip, spoken), 'first') !== null;
    return asked || !hasCome(view, spoken.noted + longest) ? [] : [{ tip, state: shown, spoken }];
  });
}

function quietTipKey(tip: string, spoken: Mark): string {
  return `${RULE}|tip:${tip}|${spoken.entry}`;
}

/** Goes with the next brief, which asks about it: once for each time that it falls silent. */
export const quietTipRule = eachSite((view, { id: site }) => {
  const quiet = quietTips(view, site);
  const brief = quiet.length === 0 ? null : nextBrief(view, site);
  const room = chatRoomFor(view, site);
  if (brief === null || room === null) return [];
  return quiet.map(({ tip, spoken }): Matter => {
    return {
      key: quietTipKey(tip, spoken),
      rule: RULE,
      about: 'tips',
      site,
      room,
      items: [`tip:${tip}`],
      stages: [{ stage: 'first', at: brief.at }],
      since: spoken.at,
      group: 'brief',
      line: [{ line: [{ strong: `Where is ${tipsAsRanges([tip])}?` }] }],
      leads: [],
    };
  });
});
