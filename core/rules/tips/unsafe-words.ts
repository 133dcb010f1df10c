import { ruleValue } from '../../defaults/rule-value.ts';
import type { Practice } from '../../practice/practice.ts';
import type { Mark, State, TipState, TipUse, UnsafeReason, UnsafeWhy } from '../../record/state.ts';
import { zoneOf } from '../../record/where.ts';
import type { Instant } from '../../time/instant.ts';
import { clockWords, dayWords } from '../../words/clock-words.ts';
import { loadWords } from '../../words/load-words.ts';
import { nameOf } from '../../words/people-words.ts';
import { scannerWords } from './tip-words.ts';

interface WordsView {
  readonly practice: Practice;
  readonly state: State;
  readonly now: Instant;
}

/** What each cause is called; what stands behind it says when and by whom, or what is lacking. */
const WORDS: Readonly<Record<UnsafeWhy, readonly [said: string, lacking: string]>> = {
  used: ['used', 'no passed load since'],
  removed: ['came off a scanner', 'no passed load since'],
  'fitted-elsewhere': ['was on another scanner', 'no passed load since'],
  dropped: ['dropped', 'no passed load since'],
  pack: ['its pack was wet, torn or opened', 'no passed load since'],
  indicator: ['its indicator had not changed', 'no passed load since'],
  'failed-inspection': ['failed inspection', 'no passed load since'],
  'was-missing': ['had been missing', 'no passed load since'],
  'load-failed': ['failed', ''],
  'load-wet': ['came out wet', ''],
  recalled: ['recalled after a positive spore test', ''],
  reprocessing: ['on its way round', 'no passed load yet'],
  'not-sterile': ['on its way round', 'no passed load yet'],
  'no-sterile-record': ['nothing on record says that it is sterile', ''],
  fitted: ['on a scanner', ''],
  'load-open': ['has no result yet', ''],
  'load-doubted': ['is in doubt', ''],
  'load-needs-release': ['ran at a temperature with no published value', 'not released'],
  doubted: ['in doubt', ''],
  held: ['held', ''],
  missing: ['reported missing', ''],
  retired: ['retired', ''],
  'past-cycles': ['past its maker’s limit of cycles', ''],
  'too-old': ['stored for longer than the limit', ''],
};

/** Causes that are a load's: its name comes first. */
const OF_LOAD = new Set<UnsafeWhy>([
  'load-failed',
  'load-wet',
  'recalled',
  'load-open',
  'load-doubted',
  'load-needs-release',
]);

/**
 * One reason against a tip, without a capital or full stop: "used on blue scanner, yesterday 16:40 (Tom); no passed
 * load since", "load 118 failed, 10:40 (Rosa)". Times are local to the tip's site.
 */
export function unsafeWords(view: WordsView, tipId: string, reason: UnsafeReason): string {
  const [said, lacking] = WORDS[reason.why];
  const start = `${ofLoad(view, reason)}${said}${detail(view, tipId, reason)}`;
  const when = reason.mark === null ? '' : `, ${whenBy(view, tipId, reason.why, reason.mark)}`;
  return `${start}${when}${lacking === '' ? '' : `; ${lacking}`}`;
}

function ofLoad({ practice, state }: WordsView, { why, load }: UnsafeReason): string {
  const known = load === null || !OF_LOAD.has(why) ? undefined : state.loads.get(load);
  return known === undefined ? '' : `${loadWords(practice, known)} `;
}

function detail(view: WordsView, tipId: string, { why, mark }: UnsafeReason): string {
  const tip = view.state.tips.get(tipId);
  if (tip === undefined) return '';
  if (why === 'past-cycles') return `: ${tip.cycles} of ${tip.limit}`;
  if (why === 'too-old' && isUnwrapped(view, tip)) return ': not noted as bagged, so good for its day only';
  if (why === 'held') return because(tip.holds[0]?.reason ?? null);
  if (why === 'retired') return because(tip.retired?.reason ?? null);
  if (why === 'used' && mark !== null) {
    const use = useOn(view.state, tipId, mark);
    return use?.scanner == null ? '' : ` on ${scannerWords(view.practice, use.scanner)}`;
  }
  return '';
}

/** The use that an entry noted. */
function useOn({ history }: State, tip: string, mark: Mark): TipUse | undefined {
  for (const use of history.uses.get(tip)?.newestFirst() ?? []) {
    if (use.mark.entry === mark.entry) return use;
    if (use.mark.at < mark.at) return undefined;
  }
  return undefined;
}

/** `rules.wrapped: noted`, and no note says that it was bagged. */
function isUnwrapped({ practice }: WordsView, { sterile, site }: TipState): boolean {
  const wrapped = ruleValue(practice, 'wrapped', { site: site ?? undefined });
  return wrapped === 'noted' && sterile !== null && !sterile.bagged;
}

function because(reason: string | null): string {
  return reason === null ? '' : ` (${reason})`;
}

function whenBy({ practice, state, now }: WordsView, tipId: string, why: UnsafeWhy, mark: Mark): string {
  const zone = zoneOf(practice, state.tips.get(tipId)?.site ?? null);
  if (why === 'too-old') return `sterile since ${dayWords(mark.at, now, zone)}`;
  const since = mark.earliest < mark.at ? `${clockWords(mark.earliest, now, zone)}–` : '';
  const by = mark.by === null ? '' : ` (${nameOf(practice, mark.by)})`;
  return `${since}${clockWords(mark.at, now, zone)}${by}`;
}
