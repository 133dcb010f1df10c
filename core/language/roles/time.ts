import type { Clause } from '../clause.ts';
import { combineTimes } from '../times/combine.ts';
import type { TimeContext, TimeSpan } from '../times/time-span.ts';

export interface TimeSaid {
  readonly span: TimeSpan;
  readonly said: readonly number[];
  /** True where two times of the clause contradict each other. */
  readonly several: boolean;
}

/** The time that a clause says, its phrases taken together; `null` where it says none. */
export function timeOf(c: Clause): TimeSaid | null {
  const times = c.entities('time');
  const [first, ...rest] = times;
  if (first === undefined) return null;
  let span = first.entity.span;
  let several = false;
  for (const { entity } of rest) {
    const both = combineTimes(span, entity.span);
    if (both === null) several = true;
    else span = both;
  }
  return { span, said: times.map(({ at }) => at), several };
}

/** What times of a clause are read against: the site it names decides the zone and the hours. */
export function timeContext(c: Clause, site: string | null): TimeContext {
  if (site === null) return c.scope.time;
  const found = c.names.practice.sites.find((one) => one.id === site);
  return found === undefined ? c.scope.time : { ...c.scope.time, zone: found.timezone, hours: found };
}
