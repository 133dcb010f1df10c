import type { AskOf } from '../../reading/ask.ts';
import { zoneOf } from '../../record/where.ts';
import { supplyFor } from '../../rules/day/supply/supply-for.ts';
import { bookedWords, shortWords, tightWords } from '../../rules/day/supply/supply-words.ts';
import { placeWords } from '../../rules/tips/place-words.ts';
import { toLocal } from '../../time/zone.ts';
import type { Answer, AskView } from '../answer-view.ts';
import type { Line } from '../message.ts';
import { sitesOfAsk } from '../site-of-ask.ts';

/** "Have we enough tips for tomorrow?": per site, yes or no first, then what would prevent the shortage. */
export function answerSupply(ask: AskOf<'supply'>, view: AskView): Answer {
  const message = sitesOfAsk(view.practice, ask.site, view.room).flatMap((site) => {
    const day = ask.day ?? toLocal(view.now, zoneOf(view.practice, site)).date;
    const supply = supplyFor(view, site, day);
    if (supply === null) return [];
    const short = shortWords(view, supply);
    const name = placeWords(view.practice, site, null);
    if (short !== null) return [{ line: [`${name}: `, ...short] satisfies Line }];
    const tight = tightWords(view, supply);
    const booked = `: ${supply.sterile.length} sterile, ${bookedWords(view, supply)}.${tight === null ? '' : ` ${tight}.`}`;
    return [{ line: [{ strong: 'Enough' }, ` ${name}${booked}`] satisfies Line }];
  });
  return { about: 'supply', message, items: [] };
}
