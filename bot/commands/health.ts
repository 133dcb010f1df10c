import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { parseArgs } from 'node:util';
import { ledgerReach } from '../chat/matrix/ledger/posted.ts';
import { factOf } from '../chat/matrix/matrix-db.ts';
import { openStore, type Store } from '../store/store.ts';
import { recordFolder } from '../store/which-folder.ts';
import type { CommandIo } from './verify.ts';

/** A homeserver answers a waiting program every 30 s; silence of this length means that it is dead or deaf. */
const DEAF_MS = 2 * 60_000;
/** A clock this far from the homeserver's puts times of notes in doubt, ms. */
const CLOCK_MS = 60_000;

/** A ledger that is so many lines behind has stopped. */
const BEHIND_LINES = 200;

/** The keys are backed up and yet there is no copy: the program has said why. */
const NO_LEDGER: Finding = { good: false, line: 'No copy of the record in a ledger room' };

interface Finding {
  readonly line: string;
  readonly good: boolean;
}

/**
 * `health [--store FOLDER]`: how the program on that folder does, also while it runs. Exit code 0 when all is well, 1 when
 * something wants a person.
 */
export async function run(args: string[], io: CommandIo): Promise<number> {
  const { values } = parseArgs({ args, options: { store: { type: 'string' } } });
  const folder = recordFolder(values.store);
  const store = openStore(folder, { readOnly: true });
  try {
    const now = Date.now();
    const findings = [...ofChat(folder, now, store.head.n), ...ofStore(store), ...(await ofClock(folder))];
    for (const { line, good } of findings) io.out(`${good ? 'well ' : 'LOOK '} ${line}`);
    io.out(`      Scanward ${version()}, folder ${folder}`);
    return findings.every(({ good }) => good) ? 0 : 1;
  } finally {
    store.close();
  }
}

function ofStore(store: Store): readonly Finding[] {
  const unsent = store.transport.unsent();
  const aside = store.transport.asideList();
  const [oldest] = unsent;
  const turn = Number(oldest?.key.split('/')[0]);
  const since = Number.isInteger(turn) ? (store.line(turn)?.at ?? null) : null;
  return [
    { good: true, line: `The record has ${store.head.n} lines; head ${store.head.hash}` },
    {
      good: unsent.length < 20,
      line:
        unsent.length === 0
          ? 'Everything was sent'
          : `${unsent.length} not sent yet${since === null ? '' : `, the oldest since ${since}`}`,
    },
    {
      good: aside.length === 0,
      line: aside.length === 0 ? 'No note was set aside' : `${aside.length} notes were set aside`,
    },
  ];
}

/** What `matrix.db` says; nothing where the folder never was on a homeserver. */
function ofChat(folder: string, now: number, head: number): readonly Finding[] {
  const db = lookAt(folder);
  if (db === null) return [];
  const synced = factOf(db, 'synced');
  const locked = Number(db.prepare('SELECT count(*) AS n FROM unread').get()?.n ?? 0);
  const backup = factOf(db, 'backup');
  const copied = factOf(db, 'ledger') !== null;
  const ledger = copied ? [ofLedger(ledgerReach(db), head)] : backup === null ? [] : [NO_LEDGER];
  db.close();
  const heard = synced !== null && now - Date.parse(synced) < DEAF_MS;
  return [
    {
      good: heard,
      line: synced === null ? 'Never heard the homeserver' : `Last heard the homeserver ${synced}`,
    },
    {
      good: locked === 0,
      line: locked === 0 ? 'Every note could be read' : `${locked} notes wait for their key`,
    },
    {
      good: backup !== null,
      line: backup === null ? 'The keys are not backed up on the homeserver' : `Keys backed up (${backup})`,
    },
    ...ledger,
  ];
}

/** How far the copy in the ledger room is, from which another machine could go on. Some lines behind is no harm. */
function ofLedger({ arrived, backed }: ReturnType<typeof ledgerReach>, head: number): Finding {
  const line = `Ledger room: ${arrived} of ${head} lines, ${backed} that a new machine could read`;
  return { good: head - backed < BEHIND_LINES, line };
}

/** The clock against the homeserver's, by the date of its answer. */
async function ofClock(folder: string): Promise<readonly Finding[]> {
  const db = lookAt(folder);
  const session = db === null ? null : factOf(db, 'session');
  db?.close();
  if (session === null) return [];
  const { homeserver }: { homeserver?: string } = JSON.parse(session);
  const before = Date.now();
  const answer = await fetch(`${homeserver}/_matrix/client/versions`, {
    signal: AbortSignal.timeout(5000),
  }).catch(() => null);
  if (answer === null) return [{ good: false, line: `${homeserver} does not answer` }];
  const there = Date.parse(answer.headers.get('date') ?? '');
  if (Number.isNaN(there)) return [];
  // The date has whole seconds and was written somewhere between asking and now.
  const off = Math.round((there - (before + Date.now()) / 2) / 1000);
  return [{ good: Math.abs(off) * 1000 < CLOCK_MS, line: `The homeserver's clock is ${off} s from ours` }];
}

function lookAt(folder: string): DatabaseSync | null {
  const path = join(folder, 'matrix.db');
  return existsSync(path) ? new DatabaseSync(path, { readOnly: true, timeout: 1000 }) : null;
}

function version(): string {
  const about: { version?: string } = JSON.parse(
    readFileSync(new URL('../../package.json', import.meta.url), 'utf8'),
  );
  return about.version ?? '';
}
