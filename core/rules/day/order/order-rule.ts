import type { Message } from '../../../words/message.ts';
import type { Rule, View } from '../../matter.ts';
import { whenOpenNow } from '../../quiet.ts';
import { chatRoomFor } from '../../room-of.ts';
import { type OrderNow, orderNow } from './tip-stock.ts';

const RULE = 'reorder';

/** The cycles that the tips have left fell to the reorder point: said once, until new tips are added and it falls there again. */
export const orderRule: Rule = (view) => {
  const needed = orderNow(view);
  const [site] = view.practice.sites.filter(({ id }) => chatRoomFor(view, id) !== null);
  const room = site === undefined ? null : chatRoomFor(view, site.id);
  if (needed === null || site === undefined || room === null) return [];
  const key = `${RULE}|${view.state.tips.size} tips`;
  const at = view.said.saidAt(key, 'first') ?? whenOpenNow(view, site.id);
  return [
    {
      key,
      rule: RULE,
      about: 'order',
      site: site.id,
      room,
      items: [],
      stages: [{ stage: 'first', at }],
      since: at,
      group: RULE,
      line: orderWords(view, needed),
      leads: [],
    },
  ];
};

/** "Order 12 tips: 40 cycles are left in all …", with the figures that say so. */
export function orderWords(
  { state }: View,
  { tips, cyclesLeft, meanPerDay, reorderPoint, leadDays }: OrderNow,
): Message {
  const uncounted = [...state.tips.values()].filter(
    ({ limit, retired }) => limit === null && retired === null,
  );
  const left =
    uncounted.length === 0
      ? ''
      : ` Tips with no limit in the practice file (${uncounted.length}) are left out.`;
  const order: Message = [
    {
      line: [
        { strong: `Order ${tips} ${tips === 1 ? 'tip' : 'tips'}` },
        `: ${round(cyclesLeft)} cycles are left in all.`,
      ],
    },
    {
      line: [
        `Use is ${round(meanPerDay)} a day and an order takes ${leadDays} open days, so order at ${Math.ceil(reorderPoint)} or under.${left}`,
      ],
    },
  ];
  return order;
}

function round(value: number): string {
  return String(Math.round(value * 10) / 10);
}
