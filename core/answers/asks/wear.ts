import { ruleValue } from '../../defaults/rule-value.ts';
import { siteOf } from '../../practice/look-up.ts';
import type { AskOf } from '../../reading/ask.ts';
import type { TipState } from '../../record/state.ts';
import { zoneOf } from '../../record/where.ts';
import { clockWords } from '../../words/clock-words.ts';
import { idOf } from '../../words/item-words.ts';
import { type Line, lines, type Message } from '../../words/message.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { sitesOfAsk } from '../site-of-ask.ts';

/** More is not read on a phone: those with the fewest cycles left. */
const SHOWN = 5;
const NO_LIMIT = 'The maker’s limit can be put in the practice file (cycles).';

/** "Which tips are nearly worn out?": those with the fewest cycles left first; of one tip, how many it has done and has left. */
export function answerWear({ item, site }: AskOf<'wear'>, view: AskView): Answer {
  if (item !== undefined) return ofOne(idOf(item), view);
  const sites = sitesOfAsk(view.practice, site, view.room);
  const tips = [...view.state.tips.values()].filter((tip) => {
    return tip.retired === null && (tip.site === null || sites.includes(tip.site));
  });
  const limited = tips
    .filter(({ limit }) => limit !== null)
    .toSorted((one, other) => left(one) - left(other));
  if (limited.length > 0) return ofLimited(limited, view);
  const most = tips.toSorted((one, other) => other.cycles - one.cycles).slice(0, SHOWN);
  const message: Message = [
    ...lines([{ strong: 'No limit is set' }, `, so only cycles are counted. ${NO_LIMIT}`]),
    { points: most.map((tip): Line => [{ strong: `Tip ${tip.id}` }, `: ${cycles(tip.cycles)} done`]) },
  ];
  return { about: 'answer', message, items: most.map(({ id }) => `tip:${id}` as const) };
}

function ofLimited(limited: readonly TipState[], view: AskView): Answer {
  const shown = limited.slice(0, SHOWN);
  const within = ruleValue(view.practice, 'cyclesOrderWithin');
  const near = limited.filter((tip) => left(tip) <= within);
  const head: Line =
    near.length === 0
      ? [{ strong: 'None is near its limit.' }, ' Fewest cycles left:']
      : [
          { strong: near.length === 1 ? '1 tip near its limit' : `${near.length} tips near their limit` },
          ':',
        ];
  const points = shown.map((tip): Line => {
    const at = tip.site === null ? '' : `, ${siteOf(view.practice, tip.site)?.name ?? tip.site}`;
    return [{ strong: `Tip ${tip.id}` }, `: ${leftWords(tip)}${view.practice.sites.length > 1 ? at : ''}`];
  });
  const more = near.length - SHOWN;
  const message: Message = [{ line: head }, { points }, ...lines(...(more > 0 ? [`And ${more} more.`] : []))];
  return { about: 'answer', message, items: shown.map(({ id }) => `tip:${id}` as const) };
}

function ofOne(id: string, view: AskView): Answer {
  const tip = view.state.tips.get(id);
  if (tip === undefined)
    return {
      about: 'answer',
      message: lines([{ strong: `Tip ${id}` }, ' is not in the practice file.']),
      items: [],
    };
  const zone = zoneOf(view.practice, tip.site);
  const uses = tip.uses === 1 ? '1 use' : `${tip.uses} uses`;
  const since = tip.added === null ? '' : `, new ${clockWords(tip.added.at, view.now, zone)}`;
  const retired = tip.retired === null ? '' : ` Retired ${clockWords(tip.retired.mark.at, view.now, zone)}.`;
  const limit = tip.limit === null ? ` No limit is set. ${NO_LIMIT}` : '';
  const line: Line = [{ strong: `Tip ${id}` }, `: ${leftWords(tip)}; ${uses}${since}.${retired}${limit}`];
  return { about: 'answer', message: [{ line }], items: [`tip:${id}`] };
}

function left({ limit, cycles: done }: TipState): number {
  return limit === null ? Number.POSITIVE_INFINITY : Math.max(0, limit - done);
}

function leftWords(tip: TipState): string {
  if (tip.limit === null) return `${cycles(tip.cycles)} done`;
  const rest = left(tip);
  const words = rest === 0 ? 'none left: retire it after its next use' : `${rest} left`;
  return `${tip.cycles} of ${tip.limit} cycles, ${words}`;
}

function cycles(count: number): string {
  return count === 1 ? '1 cycle' : `${count} cycles`;
}
