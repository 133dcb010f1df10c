import { siteOf } from '../../practice/look-up.ts';
import type { TipState } from '../../record/state.ts';
import { goodUntil } from '../../record/tip-safety.ts';
import { zoneOf } from '../../record/where.ts';
import { sterileHere } from '../../rules/tips/tip-words.ts';
import { DAY } from '../../time/instant.ts';
import { toInstant } from '../../time/zone.ts';
import { dayWords } from '../../words/clock-words.ts';
import { idRanges, tipsAsRanges } from '../../words/item-words.ts';
import type { Line, Message } from '../../words/message.ts';
import type { Answer, AskView } from '../answer-view.ts';

/** A tip whose last good day is nearer than this is named with that day. */
const SOON = 31 * DAY;

/** "How many clean tips have we got?": how many and which, the oldest first; what must be used soon; what is not known. */
export function answerSterile(tips: readonly TipState[], sites: readonly string[], view: AskView): Answer {
  const stock = [...tips].sort((one, other) => sinceOf(one) - sinceOf(other));
  const points = [...soonLines(stock, view), ...saidLines(stock), ...unknownLines(sites, view)];
  const message: Message = [...stockLines(stock, sites, view), ...(points.length === 0 ? [] : [{ points }])];
  return { about: 'answer', message, items: stock.map(({ id }) => `tip:${id}` as const) };
}

function sinceOf({ sterile }: TipState): number {
  return sterile?.mark.at ?? 0;
}

function stockLines(stock: readonly TipState[], sites: readonly string[], view: AskView): Message {
  const [only] = sites;
  const one = sites.length === 1 && only !== undefined ? only : null;
  if (stock.length === 0)
    return one === null ? [{ line: [{ strong: 'No sterile tip' }, ' is on record.'] }] : noneHere(one, view);
  const head = { strong: stock.length === 1 ? '1 sterile tip' : `${stock.length} sterile tips` };
  const order = stock.length === 1 ? '' : ', oldest first';
  if (one !== null) {
    const at = view.practice.sites.length > 1 ? ` at ${siteOf(view.practice, one)?.name ?? one}` : '';
    return [{ line: [head, `${at}${order}: ${idRanges(stock.map(({ id }) => id))}.`] }];
  }
  const points = sites.map((site): Line => {
    const here = stock.filter((tip) => tip.site === site).map(({ id }) => id);
    const name = siteOf(view.practice, site)?.name ?? site;
    return [{ strong: `${name} ${here.length}` }, here.length === 0 ? '' : `: ${idRanges(here)}`];
  });
  return [{ line: [head, `${order}:`] }, { points }];
}

function noneHere(site: string, view: AskView): Message {
  return sterileHere(view, site).map((block) =>
    'line' in block
      ? { line: block.line.map((span, n) => (n === 0 && typeof span === 'string' ? { strong: span } : span)) }
      : block,
  );
}

/** "Use by tomorrow: tip 4". */
function soonLines(stock: readonly TipState[], view: AskView): readonly Line[] {
  const byDay = new Map<string, string[]>();
  for (const tip of stock) {
    if (tip.sterile === null) continue;
    const zone = zoneOf(view.practice, tip.site);
    const noon = toInstant(goodUntil(view.state, tip, tip.sterile), '12:00', zone);
    if (noon - view.now > SOON) continue;
    const day = dayWords(noon, view.now, zone);
    byDay.set(day, [...(byDay.get(day) ?? []), tip.id]);
  }
  return [...byDay].map(([day, ids]) => [{ strong: `Use by ${day}` }, `: ${tipsAsRanges(ids)}`]);
}

/** Taken as said: no load stands behind it. */
function saidLines(stock: readonly TipState[]): readonly Line[] {
  const ids = stock.filter(({ sterile }) => sterile?.how === 'said').map(({ id }) => id);
  return ids.length === 0 ? [] : [[`Sterile by word alone, no load noted: ${tipsAsRanges(ids)}`]];
}

function unknownLines(sites: readonly string[], { state }: AskView): readonly Line[] {
  const ids = [...state.tips.values()]
    .filter((tip) => tip.state === 'unknown' && tip.site !== null && sites.includes(tip.site))
    .map(({ id }) => id);
  return ids.length === 0 ? [] : [[{ strong: 'Not known yet' }, `: ${tipsAsRanges(ids)}`]];
}
