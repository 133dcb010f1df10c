import { type Instant, MINUTE } from '../time/instant.ts';
import type { SupplyDay, TipOnHand } from './supply-day.ts';

/** When a tip on its way to sterile set out. */
function setOut(tip: TipOnHand): Instant {
  return tip.sentAt ?? tip.since;
}

/**
 * When tips already sent come back. Sent ones go in the order sent, a load at a time where a load's capacity is given.
 * One overdue is expected at once; one overdue by a whole turnaround more has gone astray and is not counted.
 */
function returns(day: SupplyDay): Instant[] {
  const turnaround = day.turnaround.medianMinutes * MINUTE;
  const capacity = day.capacityPerLoad ?? Number.POSITIVE_INFINITY;
  const inLoad = day.tips.filter((tip) => tip.state === 'in-load').map((tip) => setOut(tip) + turnaround);
  const waiting = day.tips.filter((tip) => tip.state === 'sent').map(setOut);
  const sent: Instant[] = [];
  for (const instant of waiting.sort((a, b) => a - b)) {
    const loadBefore = sent[sent.length - capacity];
    sent.push(Math.max(instant, loadBefore ?? instant) + turnaround);
  }
  const hasPassed = day.hasPassed ?? ((at: Instant) => at < day.now);
  return [...inLoad, ...sent].filter((back) => !hasPassed(back + turnaround));
}

/**
 * Instants, in order, at which the site has one more sterile tip if nobody sends any:
 * `now` for those on the shelf and for one fitted for a scan to come, later for those on their way.
 */
export function sterileArrivals(day: SupplyDay): Instant[] {
  const here = day.tips.filter((tip) => tip.state === 'sterile' || (tip.state === 'fitted' && !tip.scanning));
  const back = returns(day).map((instant) => Math.max(day.now, instant));
  return [...here.map(() => day.now), ...back].sort((a, b) => a - b);
}

/** When the site's loads under way are all done; `now` when none is. */
export function autoclaveFree(day: SupplyDay): Instant {
  return Math.max(day.now, ...returns(day));
}
