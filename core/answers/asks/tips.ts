import { siteOf } from '../../practice/look-up.ts';
import type { AskOf } from '../../reading/ask.ts';
import type { TipState } from '../../record/state.ts';
import { isSterileStock } from '../../record/tip-safety.ts';
import { inWords } from '../../rules/tips/tip-words.ts';
import { idRanges } from '../../words/item-words.ts';
import type { Line, Message } from '../../words/message.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { sitesOfAsk } from '../site-of-ask.ts';
import { groupLine, tipGroups } from '../tip-groups.ts';
import { answerSterile } from './sterile.ts';

type Filter = AskOf<'tips'>['filter'];

/** "Which tips are out?": how many, then what each is, since when and by whom; by site where several are asked about. */
export function answerTips(ask: AskOf<'tips'>, view: AskView): Answer {
  const sites = sitesOfAsk(view.practice, ask.site, view.room);
  const tips = [...view.state.tips.values()].filter(
    (tip) => tip.state !== 'retired' && isOf(tip, sites) && isWanted(ask.filter, tip, view),
  );
  if (ask.filter === 'sterile') return answerSterile(tips, sites, view);
  const bySite = sites
    .map((site) => ({ site, tips: tips.filter((tip) => (tip.site ?? tip.departed?.to) === site) }))
    .filter((group) => group.tips.length > 0);
  const message: Message = [
    {
      line: headLine(
        ask.filter,
        tips,
        sites,
        bySite.map(({ site }) => site),
        view,
      ),
    },
    ...bySite.flatMap(({ site, tips: here }) => siteBlocks(view, site, here, bySite.length > 1)),
    ...countHint(tips),
  ];
  return { about: 'answer', message, items: tips.map((tip) => `tip:${tip.id}` as const) };
}

function isOf(tip: TipState, sites: readonly string[]): boolean {
  const site = tip.site ?? tip.departed?.to ?? null;
  return site !== null && sites.includes(site);
}

function isWanted(filter: Filter, tip: TipState, view: AskView): boolean {
  const usable = isSterileStock(view.state, tip, view.now);
  if (filter === 'sterile') return usable;
  if (filter === 'out') return !usable;
  if (filter === 'used') return tip.state === 'used' || (tip.state === 'fitted' && tip.usedSinceFitted);
  return true;
}

/** What is said where there is none, and of how many there are. */
const HEADS: Readonly<
  Record<Exclude<Filter, 'sterile'>, readonly [none: string, rest: string, some: string]>
> = {
  out: ['No tip is out', ': every one is sterile and on the shelf', ' out'],
  used: ['No used tip', ' waits to be sent', ' used'],
  all: ['No tips', ' on record', ''],
};

function headLine(
  filter: Filter,
  tips: readonly TipState[],
  sites: readonly string[],
  withTips: readonly string[],
  view: AskView,
): Line {
  if (filter === 'sterile') return [];
  const [none, rest, some] = HEADS[filter];
  const at = placeOfHead(sites, withTips, tips.length, view);
  if (tips.length === 0) return [{ strong: none }, `${at}${rest}.`];
  const unknown = tips.filter(({ state }) => state === 'unknown').length;
  const known =
    unknown === 0
      ? ''
      : unknown === tips.length
        ? ', none of them known yet'
        : `, ${unknown} of them not known yet`;
  const count = tips.length === 1 ? '1 tip' : `${tips.length} tips`;
  return [{ strong: count + some }, `${at}${known}.`];
}

/** " at Quay Street", ", all at Quay Street", " at 3 sites"; nothing where the practice has one site. */
function placeOfHead(
  sites: readonly string[],
  withTips: readonly string[],
  count: number,
  { practice }: AskView,
): string {
  if (practice.sites.length === 1) return '';
  const nameOf = (id: string) => siteOf(practice, id)?.name ?? id;
  const [asked, ...others] = sites;
  if (asked !== undefined && others.length === 0) return ` at ${nameOf(asked)}`;
  const [only, ...more] = withTips;
  if (only === undefined) return '';
  return more.length > 0
    ? ` at ${withTips.length} sites`
    : `, ${count === 1 ? '' : 'all '}at ${nameOf(only)}`;
}

function siteBlocks(view: AskView, site: string, tips: readonly TipState[], isNamed: boolean): Message {
  const points = tipGroups(view, tips).map((group) => groupLine(view, group));
  const name = siteOf(view.practice, site)?.name ?? site;
  return [...(isNamed ? [{ line: [{ strong: name }, `: ${tips.length}`] }] : []), { points }];
}

/** Nothing is known of any: what to type, so that the next answer tells more. */
function countHint(tips: readonly TipState[]): Message {
  const [first, ...more] = tips;
  if (first === undefined || tips.some(({ state }) => state !== 'unknown')) return [];
  const named = inWords(
    idRanges(tips.map(({ id }) => id))
      .replaceAll('–', ' to ')
      .split(', '),
  );
  const example = more.length === 0 ? `tip ${named} is sterile` : `tips ${named} are sterile`;
  return [{ line: [`Tell me which are which, such as “${example} and on the shelf”.`] }];
}
