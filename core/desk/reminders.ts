import type { About } from '../rules/about.ts';

/** Posts that ask for something and are struck through when it is done. The day's posts stand as they were. */
const REMINDERS = new Set<About>([
  'calibration',
  'settle',
  'clean',
  'cover',
  'tips',
  'load',
  'supply',
  'order',
  'spore-test',
  'escalation',
]);

export function isReminder(about: About): boolean {
  return REMINDERS.has(about);
}
