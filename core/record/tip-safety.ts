import { ruleValue } from '../defaults/rule-value.ts';
import type { Practice } from '../practice/practice.ts';
import { DAY, type Instant } from '../time/instant.ts';
import { addDays, addMonths, type LocalDate } from '../time/local-date.ts';
import type { LoadState, State, SterileSince, TipState, UnsafeReason, UnsafeWhy } from './state.ts';
import { dateAt } from './where.ts';

/** The gravest first: what is named first when a tip is warned of. */
const GRAVITY: readonly UnsafeWhy[] = [
  'retired',
  'missing',
  'held',
  'load-failed',
  'recalled',
  'load-wet',
  'used',
  'removed',
  'fitted-elsewhere',
  'dropped',
  'pack',
  'indicator',
  'failed-inspection',
  'was-missing',
  'load-open',
  'load-doubted',
  'load-needs-release',
  'doubted',
  'reprocessing',
  'not-sterile',
  'no-sterile-record',
  'fitted',
  'past-cycles',
  'too-old',
];

/**
 * Everything that speaks against using the tip on a patient at that instant, the gravest first; empty: sterile and good.
 * A tip that is on a scanner is judged by what it was when it went on, and by what was noted since.
 */
export function reasonsAgainst(state: State, tip: TipState, at: Instant): readonly UnsafeReason[] {
  const reasons: UnsafeReason[] = [];
  const add = (why: UnsafeWhy, mark: UnsafeReason['mark'], load: string | null = null) => {
    reasons.push({ why, mark, load });
  };
  if (tip.retired !== null) add('retired', tip.retired.mark);
  if (tip.missing !== null) add('missing', tip.missing);
  const placed = tip.holds[0];
  if (placed !== undefined) add('held', placed.mark);
  for (const need of tip.needs) add(need.why, need.mark, need.load);
  const load = tip.load === null ? undefined : state.loads.get(tip.load);
  if (load !== undefined) addLoad(tip, load, add);
  if (tip.doubt !== null) add('doubted', tip.doubt);
  if (reasons.length === 0 && tip.sterile === null) addUnknown(tip, add);
  if (tip.limit !== null && tip.cycles > tip.limit) add('past-cycles', null);
  if (tip.sterile !== null && tooOld(state, tip, tip.sterile, at)) add('too-old', tip.sterile.mark);
  return reasons.sort((a, b) => GRAVITY.indexOf(a.why) - GRAVITY.indexOf(b.why));
}

function addLoad(
  tip: TipState,
  load: LoadState,
  add: (why: UnsafeWhy, mark: UnsafeReason['mark'], load: string) => void,
): void {
  if (tip.openLoads.includes(load.key)) add('load-open', load.started, load.key);
  else if (isLetGo(tip, load)) return;
  else if (load.status === 'doubted') add('load-doubted', load.doubt, load.key);
  else if (load.status === 'needs-release' && tip.sterile === null)
    add('load-needs-release', load.finished, load.key);
}

/** One of those tips of a doubted load that the lead has released since the doubt. */
function isLetGo({ id, sterile }: TipState, { released, doubt }: LoadState): boolean {
  if (sterile === null || released === null || !released.tips.includes(id)) return false;
  return doubt === null || released.mark.at >= doubt.at;
}

function addUnknown(tip: TipState, add: (why: UnsafeWhy, mark: UnsafeReason['mark']) => void): void {
  if (tip.stage === 'unknown' || tip.stage === 'fitted') add('no-sterile-record', null);
  else add('not-sterile', tip.since);
}

/** Last local date on which a sterile tip is good. `rules.wrapped: noted`: one not noted as bagged is good for the day only. */
export function goodUntil(state: State, tip: TipState, sterile: SterileSince): LocalDate {
  const { practice } = state;
  const site = tip.site ?? undefined;
  const date = dateAt(practice, tip.site, sterile.mark.at);
  const wrapped = ruleValue(practice, 'wrapped', { site }) === 'always' || sterile.bagged;
  if (!wrapped) return addDays(date, ruleValue(practice, 'unwrappedGoodDays', { site }) - 1);
  return addMonths(date, ruleValue(practice, 'wrappedGoodMonths', { site }));
}

/** "From then it is warned of and not counted as sterile stock, though its state stays `sterile`." */
function tooOld(state: State, tip: TipState, sterile: SterileSince, at: Instant): boolean {
  // Asked at every fitting: what is younger than its limit whatever the calendar says is settled without dates.
  const { always, months } = shelfLife(state.practice, tip.site ?? '');
  if ((always || sterile.bagged) && at - sterile.mark.at < months * 27 * DAY) return false;
  return dateAt(state.practice, tip.site, at) > goodUntil(state, tip, sterile);
}

interface ShelfLife {
  readonly always: boolean;
  readonly months: number;
}

/** Looking a rule up costs more than folding an entry; a practice never changes, another one takes its place. */
function shelfLife(practice: Practice, site: string): ShelfLife {
  const bySite = shelfLives.get(practice) ?? new Map<string, ShelfLife>();
  shelfLives.set(practice, bySite);
  let life = bySite.get(site);
  if (life === undefined) {
    const months = ruleValue(practice, 'wrappedGoodMonths', { site });
    life = { always: ruleValue(practice, 'wrapped', { site }) === 'always', months };
    bySite.set(site, life);
  }
  return life;
}

const shelfLives = new WeakMap<Practice, Map<string, ShelfLife>>();

/** Sterile, on the shelf and good at that instant: may be offered as the tip to take. */
export function isSterileStock(state: State, tip: TipState, at: Instant): boolean {
  return tip.state === 'sterile' && tip.departed === null && reasonsAgainst(state, tip, at).length === 0;
}
