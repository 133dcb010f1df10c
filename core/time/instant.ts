/** A point in time: whole milliseconds since 1970-01-01T00:00:00Z. */
export type Instant = number;

export const SECOND = 1_000;
export const MINUTE = 60 * SECOND;
export const HOUR = 60 * MINUTE;
export const DAY = 24 * HOUR;

/**
 * An instant as people outside the core read it: ISO 8601, UTC, `Z`, no fraction where it would be zero.
 * Throws RangeError on an instant outside the calendar (±8.64e15 ms).
 */
export function toIso(instant: Instant): string {
  return new Date(instant).toISOString().replace('.000Z', 'Z');
}

/** The instant of an ISO 8601 text that carries its offset; `null` when it is not one. */
export function fromIso(text: string): Instant | null {
  if (!/^\d{4}-\d\d-\d\dT.*(?:Z|[+-]\d\d:?\d\d)$/.test(text)) return null;
  const instant = Date.parse(text);
  return Number.isNaN(instant) ? null : instant;
}
