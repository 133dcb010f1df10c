import { Temporal } from 'temporal-polyfill';
import type { Instant } from './instant.ts';

/**
 * One question to the zone library costs some 6 µs and rules ask at every instant, so its answers are kept:
 * each zone's time line is cut into stretches of 2^33 ms (99 days), and a stretch holds the clock changes in it.
 */
const STRETCH = 2 ** 33;

interface Stretch {
  /** Milliseconds ahead of UTC at the stretch's first instant. */
  readonly offset: number;
  /** In order: from `at` on, the offset is this one. */
  readonly changes: readonly { readonly at: Instant; readonly offset: number }[];
}

const kept = new Map<string, Map<number, Stretch>>();

/** Milliseconds that the zone's clocks are ahead of UTC at that instant. Throws RangeError on an unknown zone. */
export function offsetAt(instant: Instant, zone: string): number {
  let stretches = kept.get(zone);
  if (stretches === undefined) {
    stretches = new Map();
    kept.set(zone, stretches);
  }
  const index = Math.floor(instant / STRETCH);
  let stretch = stretches.get(index);
  if (stretch === undefined) {
    stretch = workOut(index, zone);
    stretches.set(index, stretch);
  }
  let offset = stretch.offset;
  for (const change of stretch.changes) {
    if (change.at > instant) break;
    offset = change.offset;
  }
  return offset;
}

function workOut(index: number, zone: string): Stretch {
  const start = Temporal.Instant.fromEpochMilliseconds(index * STRETCH).toZonedDateTimeISO(zone);
  const changes: { at: Instant; offset: number }[] = [];
  let next = start.getTimeZoneTransition('next');
  while (next !== null && next.epochMilliseconds < (index + 1) * STRETCH) {
    changes.push({ at: next.epochMilliseconds, offset: next.offsetNanoseconds / 1e6 });
    next = next.getTimeZoneTransition('next');
  }
  return { offset: start.offsetNanoseconds / 1e6, changes };
}

/** Zones by their first names. */
let listed: ReadonlySet<string> | undefined;

/**
 * The name of an IANA zone in the database's own spelling (`europe/london` is `Europe/London`), or `null` where there is
 * no such zone. Bare offsets such as `+01:00` are none: they know no summer time.
 */
export function zoneNamed(name: string): string | null {
  if (!/^[A-Za-z]/.test(name)) return null;
  // The list takes 2 ms; the first zone that is looked up takes some 20, which a note without a time never needs.
  listed ??= new Set(Intl.supportedValuesOf('timeZone'));
  if (listed.has(name)) return name;
  try {
    // Naming it is enough to have it looked up; asking for its clock changes around 1970 costs 12 ms in some zones.
    return Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(name).timeZoneId;
  } catch {
    return null;
  }
}

/** True for a name of the IANA zone database. */
export function isZone(name: string): boolean {
  return zoneNamed(name) !== null;
}
