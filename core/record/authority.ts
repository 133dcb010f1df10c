import type { Person, Practice } from '../practice/practice.ts';

/** Leads, deputies and managers who can be known by what they type: those with a chat identity. */
export function seniorsWhoWrite(practice: Practice): readonly Person[] {
  return practice.people.filter(({ part, id }) => part !== 'staff' && id !== null);
}

/**
 * True for the lead, the deputy and the manager, by chat id. Where the practice file gives nobody who writes such a part,
 * anyone: else nothing could ever be released.
 */
export function answersForScanners(practice: Practice, from: string): boolean {
  const seniors = seniorsWhoWrite(practice);
  return seniors.length === 0 || seniors.some(({ id }) => id === from);
}
