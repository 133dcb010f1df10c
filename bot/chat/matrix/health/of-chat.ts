import type { DatabaseSync } from 'node:sqlite';
import { ledgerReach } from '../ledger/posted.ts';
import { factOf } from '../matrix-db.ts';
import type { Finding, ShowTime } from './finding.ts';

/** A homeserver answers a waiting program every 30 s; silence of this length means that it is dead or deaf. */
const DEAF_MS = 2 * 60_000;
/** A ledger that is so many lines behind has stopped. */
const BEHIND_LINES = 200;

/** The keys are backed up and yet there is no copy: the program has said why. */
const NO_LEDGER: Finding = { of: 'ledger', good: false, line: 'No copy of the record in a ledger room' };

/** What `matrix.db` says: when the homeserver was last heard, what cannot be read, what is backed up. `head`: lines of the record. */
export function ofChat(db: DatabaseSync, now: number, head: number, show: ShowTime): readonly Finding[] {
  const synced = factOf(db, 'synced');
  const locked = Number(db.prepare('SELECT count(*) AS n FROM unread').get()?.n ?? 0);
  const backup = factOf(db, 'backup');
  return [
    {
      of: 'heard',
      good: synced !== null && now - Date.parse(synced) < DEAF_MS,
      line: synced === null ? 'Never heard the homeserver' : `Last heard the homeserver ${show(synced)}`,
    },
    {
      of: 'locked',
      good: locked === 0,
      line:
        locked === 0
          ? 'Every note could be read'
          : `${locked === 1 ? '1 note waits for its' : `${locked} notes wait for their`} key`,
      todo: 'Type again what could not be read.',
    },
    {
      of: 'backup',
      good: backup !== null,
      line: backup === null ? 'The keys are not backed up on the homeserver' : `Keys backed up (${backup})`,
      todo: 'Whoever runs the program: start it once with --new-recovery-key.',
    },
    ...copyOf(db, backup, head),
  ];
}

function copyOf(db: DatabaseSync, backup: string | null, head: number): readonly Finding[] {
  if (factOf(db, 'ledger') === null) return backup === null ? [] : [NO_LEDGER];
  // Some lines behind is no harm.
  const { arrived, backed } = ledgerReach(db);
  const line = `Ledger room: ${arrived} of ${head} lines, ${backed} that a new machine could read`;
  return [{ of: 'ledger', good: head - backed < BEHIND_LINES, line }];
}
