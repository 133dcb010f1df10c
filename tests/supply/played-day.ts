import type { SupplyOutlook } from '../../core/supply/shortage.ts';
import { SCAN_MINUTES, type SupplyDay } from '../../core/supply/supply-day.ts';
import { type Instant, MINUTE } from '../../core/time/instant.ts';

/**
 * Plays a day minute by minute with the loads of a plan sent when it says, and counts the bookings that go without.
 * Fails (returns undefined) when the plan sends a tip that is not there to be sent. Knows `used` and `sterile` tips only.
 */
export function playDay(
  day: SupplyDay,
  send: SupplyOutlook['send'],
  broughtFirst: number,
): number | undefined {
  let sterile = day.tips.filter((tip) => tip.state === 'sterile').length + broughtFirst;
  let dirty = day.tips.filter((tip) => tip.state === 'used').length;
  const turnaround = day.turnaround.medianMinutes * MINUTE;
  const scan = (day.scanMinutes ?? SCAN_MINUTES) * MINUTE;
  const back: Instant[] = [];
  const used: Instant[] = [];
  let without = 0;
  for (let at = day.now; at <= day.end; at += MINUTE) {
    dirty += used.filter((instant) => instant === at).length;
    sterile += back.filter((instant) => instant === at).length;
    for (const load of send.filter(({ by }) => by === at)) {
      if (load.count > dirty) return undefined;
      dirty -= load.count;
      for (let i = 0; i < load.count; i++) back.push(at + turnaround);
    }
    for (const _booking of day.bookings.filter((instant) => instant === at)) {
      if (sterile > 0) {
        sterile--;
        used.push(at + scan);
      } else without++;
    }
  }
  return without;
}
