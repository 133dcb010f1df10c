import { z } from 'zod';

/** An instant, ISO 8601, UTC, with `Z`. */
export const isoInstant = z
  .string()
  .regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d{1,3})?Z$/, 'an instant such as 2026-11-23T10:15:00Z');
/** A date on the site's own calendar. */
export const localDate = z.string().regex(/^\d{4}-\d\d-\d\d$/, 'a date such as 2026-11-23');
/** A time on the site's own clock. */
export const localTime = z.string().regex(/^\d\d:\d\d$/, 'a time such as 09:30');

/** `scanner:A`, `tip:4`, `calibration-tip:A`, `autoclave:big`, `load:118`, `load:big/118`, or `autoclave` where none is listed. */
export const item = z
  .string()
  .regex(/^((scanner|tip|calibration-tip|autoclave|load):.+|autoclave)$/, 'an item such as tip:4');

export const ids = z.array(z.string().min(1));
export const outcome = z.enum(['passed', 'failed']);
export const tipSet = z.enum(['used', 'washed', 'bagged', 'sent', 'sterile', 'all']);

export type Item = z.infer<typeof item>;
export type TipSet = z.infer<typeof tipSet>;
