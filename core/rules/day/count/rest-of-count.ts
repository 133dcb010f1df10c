import { ruleValue } from '../../../defaults/rule-value.ts';
import type { State } from '../../../record/state.ts';
import { MINUTE } from '../../../time/instant.ts';
import { tipsAsRanges } from '../../../words/item-words.ts';
import { eachSite } from '../../each.ts';
import { whenOpen } from '../../quiet.ts';
import { chatRoomFor } from '../../room-of.ts';
import { unknownTips } from './count-due.ts';

const RULE = 'rest-of-count';

/** A count that told half of a site's tips or more: the rest is listed once. */
export const restOfCountRule = eachSite((view, { id: site, name }) => {
  const counted = view.state.sites.get(site)?.stocktake ?? null;
  const room = counted === null ? null : chatRoomFor(view, site, () => counted);
  const rest = counted === null ? [] : unknownTips(view.state, site).filter((id) => isUntold(view.state, id));
  if (counted === null || room === null || rest.length === 0) return [];
  const key = `${RULE}|site:${site}|${counted.entry}`;
  const due = whenOpen(
    view.practice,
    view.state,
    site,
    counted.noted + ruleValue(view.practice, 'stocktakeRestMinutes', { site }) * MINUTE,
  );
  return [
    {
      key,
      rule: RULE,
      about: 'tips',
      site,
      room,
      items: rest.map((tip): `tip:${string}` => `tip:${tip}`),
      stages: [{ stage: 'first', at: view.said.saidAt(key, 'first') ?? due }],
      since: due,
      group: `${RULE}@${site}`,
      line: [
        {
          line: [
            { strong: `Still not known at ${name}` },
            `: ${tipsAsRanges(rest)}. Not counted as sterile. Say what they are, or which are missing.`,
          ],
        },
      ],
      leads: [],
    },
  ];
});

/** What is in doubt, or arrived since, has been spoken of: the count missed nothing there. */
function isUntold({ tips }: State, id: string): boolean {
  const tip = tips.get(id);
  return tip !== undefined && tip.doubt === null && tip.added === null;
}
