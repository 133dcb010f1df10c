import { ruleValue } from '../defaults/rule-value.ts';
import { peopleOf } from '../practice/look-up.ts';
import type { Practice } from '../practice/practice.ts';
import { answersForScanners, seniorsWhoWrite } from '../record/authority.ts';
import type { Hold } from '../record/state.ts';
import { isProven, type Vouched } from '../record/vouched.ts';
import { type Instant, MINUTE } from '../time/instant.ts';
import { lines, type Message } from '../words/message.ts';

/**
 * True for the lead, the deputy and the manager, by chat id. A practice file that gives nobody who writes such a part:
 * those who look after the chat room, and anyone where the chat knows no such thing, since else nothing could ever be
 * released; `seniorsAreNamed` lets the reply say so.
 */
export function isSenior(practice: Practice, person: string, vouched?: Vouched): boolean {
  return answersForScanners(practice, person, vouched);
}

/** False where the practice file names no lead, deputy or manager who writes: then everybody may do what is theirs. */
export function seniorsAreNamed(practice: Practice): boolean {
  return seniorsWhoWrite(practice).length > 0;
}

/**
 * Who may take a hold off: who placed it and the seniors, or the seniors alone. A hold that ends by a pass or a clear
 * test is released by nobody's word.
 */
export function mayRelease(practice: Practice, person: string, hold: Hold): boolean {
  if (hold.ends === 'pass' || hold.ends === 'clear-test') return false;
  if (isSenior(practice, person)) return true;
  return hold.ends === 'placer' && person !== '' && hold.mark.from === person;
}

/** "Rosa (lead), Dan (deputy) or Ngozi (manager)"; "anyone" where the practice file names none. */
export function seniorsInWords(practice: Practice): string {
  if (!seniorsAreNamed(practice)) return 'anyone';
  const seniors = seniorsWhoWrite(practice);
  const named = PARTS.flatMap((part) =>
    seniors.filter((each) => each.part === part).map(({ name }) => `${name} (${part})`),
  );
  const last = named.pop() ?? '';
  return named.length === 0 ? last : `${named.join(', ')} or ${last}`;
}

/** Why something was not taken that the person may do: how to do it, for whoever holds a phone. */
export function fromSignedDevice(start: string): Message {
  return lines(
    [{ strong: start }, ' It came from a device that you have not verified.'],
    'Verify this one in your app (Settings, then Security), and type it again.',
  );
}

/** Who may, said to somebody who may not: where the file names nobody it is whoever looks after the chat room. */
export function whoMay(practice: Practice): string {
  return seniorsAreNamed(practice)
    ? seniorsInWords(practice)
    : 'whoever looks after this chat room (a moderator)';
}

const PARTS = ['lead', 'deputy', 'manager'] as const;

/** Chat ids of the leads, for mentions; the deputies' where no lead writes here, else the managers'. */
export function leadIds(practice: Practice): readonly string[] {
  for (const part of PARTS) {
    const ids = peopleOf(practice, part).flatMap(({ id }) => (id === null ? [] : [id]));
    if (ids.length > 0) return ids;
  }
  return [];
}

/** An incident is closed by the lead, deputy or manager alone. */
export function mayCloseIncident(practice: Practice, person: string): boolean {
  return isSenior(practice, person);
}

/** A load with no published value is released by the lead, deputy or manager alone; a failed one by nobody. */
export function mayReleaseLoad(practice: Practice, person: string): boolean {
  return isSenior(practice, person);
}

/** A correction that would make a tip sterile, a load passed or a scanner ready. */
export interface Loosening {
  readonly practice: Practice;
  /** Chat id of who wrote the note that is corrected. */
  readonly author: string;
  /** Chat id of who corrects it. */
  readonly asker: string;
  /** When the note was typed. */
  readonly noted: Instant;
  readonly now: Instant;
  /** False for a deletion, which a server could forge: where the chat has servers it loosens nothing. */
  readonly typed: boolean;
  readonly vouched?: Vouched;
}

/** Taken from its author within `correctOwnMinutes` (10), or from the lead, deputy or manager at any time. */
export function mayLoosen({ practice, author, asker, noted, now, typed, vouched }: Loosening): boolean {
  if (!isProven(practice, vouched) || (!typed && vouched !== undefined)) return false;
  if (isSenior(practice, asker, vouched)) return true;
  return author === asker && now - noted <= ruleValue(practice, 'correctOwnMinutes') * MINUTE;
}
