import type { Practice } from '../practice/practice.ts';

/**
 * True for the lead, the deputy and the manager, by chat id. Where the practice file gives nobody such a part,
 * anyone: else nothing could ever be released.
 */
export function answersForScanners(practice: Practice, from: string): boolean {
  const parts = practice.people.filter((person) => person.part !== 'staff');
  return parts.length === 0 || parts.some((person) => person.id === from);
}
