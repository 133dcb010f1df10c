import { zoneNamed } from '../../time/offsets.ts';
import { leaf, type Say, shown } from './leaf.ts';
import { nearest } from './nearest.ts';

/** An IANA zone, or `undefined` where the key is left out. */
export const zone = leaf((value, say): string | undefined => {
  if (value === undefined) return undefined;
  if (typeof value === 'string') return readZone(value, say);
  say(`${shown(value)} is not a time zone`, 'Europe/London');
  return undefined;
});

function readZone(value: string, say: Say): string | undefined {
  // "GMT" and "EST" are zones too, but such that know no summer time: nobody who writes them means that.
  const known = value === 'UTC' || value.includes('/') ? zoneNamed(value) : null;
  if (known !== null) return known;
  const wrong = `${shown(value)} is not a time zone of the IANA list (Area/City)`;
  say(wrong, suggestion(value) ?? 'Europe/London, America/New_York, Asia/Kolkata or the like');
  return undefined;
}

const SHORT: Readonly<Record<string, string>> = {
  gmt: 'Europe/London',
  bst: 'Europe/London',
  est: 'America/New_York',
  edt: 'America/New_York',
  cst: 'America/Chicago',
  mst: 'America/Denver',
  pst: 'America/Los_Angeles',
  cet: 'Europe/Paris',
  ist: 'Asia/Kolkata',
  aest: 'Australia/Sydney',
};

function suggestion(value: string): string | null {
  const lower = value.toLowerCase().replaceAll(' ', '_');
  if (Object.hasOwn(SHORT, lower)) return SHORT[lower] ?? null;
  const known = Intl.supportedValuesOf('timeZone');
  const city = known.find((name) => name.toLowerCase().endsWith(`/${lower}`));
  return city ?? nearest(lower, known);
}
