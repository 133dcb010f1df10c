import { ruleValue } from '../../defaults/rule-value.ts';
import { autoclavesOfSite, siteOf } from '../../practice/look-up.ts';
import type { Practice, Scanner, ScannerNote, Site } from '../../practice/practice.ts';
import { minutesToSettle } from '../../record/settling.ts';
import type { View } from '../../rules/matter.ts';
import { capital } from '../../rules/tips/tip-words.ts';
import { LOAD_TABLES } from '../../science/load-tables.ts';

/** Where a guide is asked for: its sites, and the scanners that it is about. */
export interface GuidePlace {
  readonly view: View;
  readonly sites: readonly Site[];
  /** Those that stand at these sites, else every one. */
  readonly scanners: readonly Scanner[];
  /** A scanner, a tip and a load number to make examples of. */
  readonly scanner: string;
  readonly tip: string;
  readonly load: string;
  /** Temperature and minutes as they are typed for this practice's own cycle: "134 for 3.5". */
  readonly figures: string;
}

export function guidePlace(view: View, siteIds: readonly string[]): GuidePlace {
  const { practice, state } = view;
  const sites = siteIds.flatMap((id) => siteOf(practice, id) ?? []);
  const here = practice.scanners.filter(({ id }) => siteIds.includes(state.scanners.get(id)?.site ?? ''));
  const scanners = here.length === 0 ? practice.scanners : here;
  const tip = practice.tips.find(({ home }) => siteIds.includes(home)) ?? practice.tips[0];
  const last = state.loads.recent().at(-1)?.number ?? '117';
  return {
    view,
    sites,
    scanners,
    scanner: scanners[0] === undefined ? 'scanner' : shortName(scanners[0]),
    tip: tip?.id ?? '1',
    load: /^\d+$/.test(last) ? String(Number(last) + 1) : last,
    figures: figuresOf(practice, sites),
  };
}

/** A validated cycle of these sites' autoclaves, else the first row of their table, else the commonest cycle. */
function figuresOf(practice: Practice, sites: readonly Site[]): string {
  const [own] = sites.flatMap(({ id }) => autoclavesOfSite(practice, id).flatMap(({ cycles }) => cycles));
  if (own !== undefined) return `${own.celsius} for ${own.minutes}`;
  const table = ruleValue(practice, 'loadTable', { site: sites[0]?.id });
  const [row] = table === 'none' ? [] : LOAD_TABLES[table];
  return row === undefined ? '134 for 3.5' : `${row.fromCelsius} for ${row.minutes}`;
}

/** What people type for a scanner: the first other name that the file gives, else its name. */
function shortName({ name, also }: Scanner): string {
  return also[0] ?? name;
}

/** The practice file's own notes of these scanners, each with its scanner where there are several. */
export function ownNotes({ scanners, view }: GuidePlace, sort: ScannerNote): readonly string[] {
  return scanners.flatMap(({ name, notes }) =>
    notes[sort].map((note) => (view.practice.scanners.length === 1 ? note : `${capital(name)}: ${note}`)),
  );
}

/** One value where it is the same for all, else each with its name: "Mill Lane Mon 10:30, North Clinic Tue 09:30". */
export function sameOrEach(values: readonly (readonly [name: string, words: string])[]): string {
  const distinct = new Set(values.map(([, words]) => words));
  if (distinct.size === 1) return values[0]?.[1] ?? '';
  return values.map(([name, words]) => `${name} ${words}`).join(', ');
}

/** How long a scanner settles after a move of which no more is known: "25 min". */
export function settleWords({ scanners, view }: GuidePlace): string {
  return sameOrEach(
    scanners.map(({ id, name, home }) => {
      const site = view.state.scanners.get(id)?.site ?? home;
      const minutes = minutesToSettle(view.state, id, { site, gap: null, journeyMinutes: null });
      return [name, `${minutes} min`] as const;
    }),
  );
}
