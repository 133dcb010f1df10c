import { isLocalTime } from '../../time/local-time.ts';
import type { OpenSpan } from '../practice.ts';

/** A span such as `08:30-17:30`, also `8.30 to 17.30` or `9am – 5pm`; `null` when it cannot be read as two times. */
export function readSpan(text: string): OpenSpan | null {
  const ends = text.toLowerCase().split(/\s*(?:-|–|—|\bto\b|\buntil\b)\s*/);
  const [from, until] = ends;
  if (from === undefined || until === undefined || ends.length !== 2) return null;
  const open = readTime(from.trim());
  const shut = readTime(until.trim());
  return open === null || shut === null ? null : { open, shut };
}

/** `08:30`, `8:30`, `8.30`, `8:30am`, `9 am`; a bare `9` could be morning or evening and is none. */
export function readTime(text: string): string | null {
  const match = /^(\d{1,2})(?:[:.](\d\d))?\s*(am|pm)?$/.exec(text.toLowerCase());
  if (match === null) return null;
  const [, hour = '', minute, half] = match;
  if (minute === undefined && half === undefined) return null;
  let hours = Number(hour);
  if (half !== undefined) {
    if (hours < 1 || hours > 12) return null;
    hours = (hours % 12) + (half === 'pm' ? 12 : 0);
  }
  const time = `${String(hours).padStart(2, '0')}:${minute ?? '00'}`;
  return isLocalTime(time) ? time : null;
}
