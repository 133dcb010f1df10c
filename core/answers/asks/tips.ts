import { siteOf } from '../../practice/look-up.ts';
import type { AskOf } from '../../reading/ask.ts';
import type { TipShown, TipState } from '../../record/state.ts';
import { isSterileStock } from '../../record/tip-safety.ts';
import { zoneOf } from '../../record/where.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { clockWords } from '../clock-words.ts';
import { idRanges } from '../item-words.ts';
import type { Line, Message } from '../message.ts';
import { nameOf } from '../people-words.ts';
import { sitesOfAsk } from '../site-of-ask.ts';

/** States in the order in which they matter to whoever looks for a tip. */
const ORDER: readonly TipShown[] = [
  'sterile',
  'fitted',
  'used',
  'washed',
  'bagged',
  'sent',
  'in-load',
  'held',
  'missing',
  'unknown',
];

const WORDS: Readonly<Record<TipShown, string>> = {
  sterile: 'sterile',
  fitted: 'on a scanner',
  used: 'used',
  washed: 'washed',
  bagged: 'bagged',
  sent: 'sent to autoclave',
  'in-load': 'in a load',
  held: 'held',
  missing: 'missing',
  unknown: 'not known yet',
  retired: 'retired',
};

/** Up to this many of a group are told one by one, with since when and by whom. */
const TOLD_ONE_BY_ONE = 3;

/** "Which tips are out?": counts first, then groups, where several sites are asked about by site. */
export function answerTips(ask: AskOf<'tips'>, view: AskView): Answer {
  const sites = sitesOfAsk(view.practice, ask.site, view.room);
  const tips = [...view.state.tips.values()].filter(
    (tip) =>
      tip.state !== 'retired' &&
      wanted(ask.filter, tip, view) &&
      (tip.site === null || sites.includes(tip.site)),
  );
  const bySite = sites
    .map((site) => ({ site, tips: tips.filter((tip) => tip.site === site) }))
    .filter((group) => group.tips.length > 0);
  const head = headLine(ask.filter, tips.length, view, sites);
  const message: Message = [
    { line: head },
    ...bySite.flatMap((group) => siteBlocks(view, group.site, group.tips, bySite.length > 1)),
  ];
  return { about: 'answer', message, items: tips.map((tip) => `tip:${tip.id}` as const) };
}

function wanted(filter: AskOf<'tips'>['filter'], tip: TipState, view: AskView): boolean {
  const usable = isSterileStock(view.state, tip, view.now);
  if (filter === 'sterile') return usable;
  if (filter === 'out') return !usable;
  if (filter === 'used') return tip.state === 'used' || (tip.state === 'fitted' && tip.usedSinceFitted);
  return true;
}

function headLine(
  filter: AskOf<'tips'>['filter'],
  count: number,
  view: AskView,
  sites: readonly string[],
): Line {
  const where =
    sites.length === 1 && view.practice.sites.length > 1
      ? ` at ${siteOf(view.practice, sites[0] ?? '')?.name ?? ''}`
      : '';
  const tips = count === 1 ? '1 tip' : `${count} tips`;
  if (filter === 'out')
    return count === 0
      ? [{ strong: 'None out' }, `${where}: every tip is sterile and on the shelf.`]
      : [{ strong: `${tips} out` }, `${where}.`];
  if (filter === 'sterile')
    return count === 0
      ? [{ strong: 'No sterile tip' }, `${where} on record.`]
      : [{ strong: `${tips} sterile` }, `${where}, oldest first.`];
  if (filter === 'used')
    return count === 0
      ? [{ strong: 'None used' }, `${where} waits to be sent.`]
      : [{ strong: `${tips} used` }, `${where}.`];
  return [{ strong: tips }, `${where}.`];
}

function siteBlocks(view: AskView, site: string, tips: readonly TipState[], named: boolean): Message {
  const points = ORDER.flatMap((state) =>
    groupLines(
      view,
      site,
      state,
      tips.filter((tip) => tip.state === state),
    ),
  );
  const name = siteOf(view.practice, site)?.name ?? site;
  return [...(named ? [{ line: [{ strong: name }, ` ${tips.length}`] }] : []), { points }];
}

function groupLines(
  view: AskView,
  site: string,
  state: TipShown,
  tips: readonly TipState[],
): readonly Line[] {
  const [first] = tips;
  if (first === undefined) return [];
  const words = WORDS[state];
  if (state === 'sterile' || state === 'unknown' || tips.length > TOLD_ONE_BY_ONE) {
    return [[{ strong: words }, ` ${tips.length}: ${idRanges(inOrder(state, tips).map((tip) => tip.id))}`]];
  }
  return tips.map((tip) => [
    { strong: `tip ${tip.id}` },
    ` ${stateOf(view, tip, words)}${since(view, site, tip)}`,
  ]);
}

/** Sterile ones oldest first, so that the shelf turns over; the rest as the practice file lists them. */
function inOrder(state: TipShown, tips: readonly TipState[]): readonly TipState[] {
  if (state !== 'sterile') return tips;
  return [...tips].sort((one, other) => (one.sterile?.mark.at ?? 0) - (other.sterile?.mark.at ?? 0));
}

function stateOf(view: AskView, tip: TipState, words: string): string {
  if (tip.state === 'fitted') {
    const scanner = view.practice.scanners.find(({ id }) => id === tip.scanner);
    return `on ${scanner?.name ?? 'a scanner'}${tip.usedSinceFitted ? ', used' : ''}`;
  }
  const load = tip.load === null ? undefined : view.state.loads.get(tip.load);
  return tip.state === 'in-load' && load !== undefined ? `in load ${load.number}` : words;
}

function since(view: AskView, site: string, tip: TipState): string {
  if (tip.since === null) return '';
  const by = tip.since.by === null ? '' : ` (${nameOf(view.practice, tip.since.by)})`;
  return `, ${clockWords(tip.since.at, view.now, zoneOf(view.practice, site))}${by}`;
}
