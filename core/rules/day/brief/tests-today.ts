import type { State, TestSort } from '../../../record/state.ts';
import { dateAt } from '../../../record/where.ts';
import type { LocalDate } from '../../../time/zone.ts';
import type { View } from '../../matter.ts';

/** Tests that an autoclave of the site still lacks before its first load of the day. */
export interface TestsToday {
  readonly autoclave: string;
  readonly sorts: readonly TestSort[];
}

/** Daily ones; the leak test is weekly and asked for by itself. */
const DAILY = ['penetration', 'control'] as const satisfies readonly TestSort[];

/** Each sort that the practice has noted once, where nothing of that date is noted yet; of autoclaves that are in use. */
export function testsToday({ practice, state }: View, site: string, date: LocalDate): readonly TestsToday[] {
  const practised = DAILY.filter((sort) => isPractised(state, sort));
  return [...state.autoclaves.values()].flatMap(({ id, site: at, tests, lastLoad }) => {
    const here = at === site || (at === null && practice.sites.length === 1);
    if (!here || (lastLoad === null && Object.keys(tests).length === 0)) return [];
    const sorts = practised.filter((sort) => {
      const last = tests[sort];
      return last === undefined || dateAt(practice, site, last.mark.at) < date;
    });
    return sorts.length === 0 ? [] : [{ autoclave: id, sorts }];
  });
}

function isPractised(state: State, sort: TestSort): boolean {
  return [...state.autoclaves.values()].some(({ tests }) => tests[sort] !== undefined);
}
