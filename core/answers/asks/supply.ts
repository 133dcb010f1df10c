import { ruleValue } from '../../defaults/rule-value.ts';
import { siteOf } from '../../practice/look-up.ts';
import type { AskOf } from '../../reading/ask.ts';
import { zoneOf } from '../../record/where.ts';
import { type SiteSupply, supplyFor } from '../../rules/day/supply/supply-for.ts';
import { bookedWords, shortWords, tightWords } from '../../rules/day/supply/supply-words.ts';
import { localDateOf, toInstant } from '../../time/zone.ts';
import { dayWords } from '../../words/clock-words.ts';
import { tipsAsRanges } from '../../words/item-words.ts';
import type { Line, Message } from '../../words/message.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { sitesOfAsk } from '../site-of-ask.ts';

/** "Have we enough tips for tomorrow?": per site, yes or no first, then what would prevent the shortage. */
export function answerSupply(ask: AskOf<'supply'>, view: AskView): Answer {
  const found = sitesOfAsk(view.practice, ask.site, view.room).flatMap((site) => {
    const date = ask.day ?? localDateOf(view.now, zoneOf(view.practice, site));
    return supplyFor(view, site, date) ?? [];
  });
  const lines = found.map((supply) => supplyLine(supply, view));
  const message: Message = lines.length === 1 ? lines.map((line) => ({ line })) : [{ points: lines }];
  const short = found.flatMap(({ outlook }) => outlook.send.flatMap(({ tips }) => tips));
  return { about: 'supply', message, items: [...new Set(short)].map((id) => `tip:${id}` as const) };
}

function supplyLine(supply: SiteSupply, view: AskView): Line {
  const name = siteOf(view.practice, supply.site)?.name ?? supply.site;
  const short = shortWords(view, supply);
  if (short !== null) return [...(view.practice.sites.length > 1 ? [`${name}: `] : []), ...short];
  const tight = tightWords(view, supply);
  const zone = zoneOf(view.practice, supply.site);
  const day = dayWords(toInstant(supply.date, '12:00', zone), view.now, zone);
  const sterile = supply.sterile.length === 1 ? '1 sterile tip' : `${supply.sterile.length} sterile tips`;
  const stock = sterile + atAutoclave(supply.site, view);
  const unknown = supply.unknown.length === 0 ? '' : ` Not known: ${tipsAsRanges(supply.unknown)}.`;
  const at = view.practice.sites.length > 1 ? ` at ${name}` : '';
  const rest = `${at} ${day}: ${stock}; ${bookedWords(view, supply)}.${tight === null ? '' : ` ${tight}.`}${unknown}`;
  return supply.booked.length === 0
    ? [{ strong: 'Nothing booked' }, rest.replace('; no scans booked', '')]
    : [{ strong: isInHand(supply, view) ? 'Enough' : 'Enough once the autoclave’s tips are back' }, rest];
}

/** Every scan has a tip that is sterile now. */
function isInHand({ site, sterile, booked }: SiteSupply, { practice }: AskView): boolean {
  return sterile.length >= booked.length * ruleValue(practice, 'tipsPerScan', { site });
}

/** Those that may be back in time: they are counted on. */
function atAutoclave(site: string, { state }: AskView): string {
  const count = [...state.tips.values()].filter(
    (tip) => tip.site === site && (tip.state === 'sent' || tip.state === 'in-load'),
  ).length;
  return count === 0 ? '' : `, ${count} at the autoclave`;
}
