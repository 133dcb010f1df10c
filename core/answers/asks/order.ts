import { orderWords } from '../../rules/day/order/order-rule.ts';
import { tipStock } from '../../rules/day/order/tip-stock.ts';
import { lines, type Message } from '../../words/message.ts';
import type { Answer, AskView } from '../answer-view.ts';

/** "Do we need to order tips?": yes with how many, or no with when; what the figures are made of. */
export function answerOrder(view: AskView): Answer {
  return { about: 'order', message: messageOf(view), items: [] };
}

function messageOf(view: AskView): Message {
  const stock = tipStock(view);
  if (stock === null) return lines([{ strong: 'Cannot say yet' }, `: ${whyNot(view)}`]);
  if (stock.cyclesLeft <= stock.reorderPoint) return orderWords(view, stock);
  const days = Math.floor(stock.orderInDays);
  return lines(
    [
      { strong: 'Not yet' },
      `: order in about ${days} open ${days === 1 ? 'day' : 'days'}, then ${stock.tips} tips.`,
    ],
    `${round(stock.cyclesLeft)} cycles are left, use is ${round(stock.meanPerDay)} a day, and an order takes ${stock.leadDays} open days.`,
  );
}

function whyNot({ state }: AskView): string {
  const limited = [...state.tips.values()].some(({ limit }) => limit !== null);
  if (!limited) return 'the practice file gives no limit of cycles to count against.';
  return 'there are under 5 open days of use on record.';
}

function round(value: number): string {
  return String(Math.round(value * 10) / 10);
}
