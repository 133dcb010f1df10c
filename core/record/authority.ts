import type { Person, Practice } from '../practice/practice.ts';
import { isModerator, isProven, type Vouched } from './vouched.ts';

/** Leads, deputies and managers who can be known by what they type: those with a chat identity. */
export function seniorsWhoWrite(practice: Practice): readonly Person[] {
  return practice.people.filter(({ part, id }) => part !== 'staff' && id !== null);
}

/**
 * True for the lead, the deputy and the manager, by chat id. Where the practice file gives nobody who writes such a part,
 * those who look after the chat room; where the chat knows no such thing, anyone: else nothing could ever be released.
 */
export function answersForScanners(practice: Practice, from: string, vouched?: Vouched): boolean {
  const seniors = seniorsWhoWrite(practice);
  return seniors.length === 0 ? isModerator(vouched) : seniors.some(({ id }) => id === from);
}

/** What whoever wrote an entry lacks to loosen something that the lead, the deputy and the manager may; null for nothing. */
export function whyNotLoosen(
  practice: Practice,
  { from, vouched }: { readonly from: string; readonly vouched?: Vouched },
  /** Others who may: the placer of a hold. */
  also = false,
): 'not-allowed' | 'not-signed' | null {
  if (!also && !answersForScanners(practice, from, vouched)) return 'not-allowed';
  return isProven(practice, vouched) ? null : 'not-signed';
}
