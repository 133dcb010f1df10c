import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { parseArgs } from 'node:util';
import type { Finding } from '../chat/matrix/health/finding.ts';
import { ofChat } from '../chat/matrix/health/of-chat.ts';
import { ofClock } from '../chat/matrix/health/of-clock.ts';
import { ofRecord } from '../chat/matrix/health/of-record.ts';
import { version } from '../chat/matrix/health/version.ts';
import { factOf } from '../chat/matrix/matrix-db.ts';
import { openStore } from '../store/store.ts';
import { recordFolder } from '../store/which-folder.ts';
import type { CommandIo } from './verify.ts';

/** Hexadecimal digits of a whole hash. */
const DIGITS = 64;

/**
 * `health [--store FOLDER]`: how the program on that folder does, also while it runs. Exit code 0 when all is well, 1 when
 * something wants a person.
 */
export async function run(args: string[], io: CommandIo): Promise<number> {
  const { values } = parseArgs({ args, options: { store: { type: 'string' } } });
  const folder = recordFolder(values.store);
  const store = openStore(folder, { readOnly: true });
  try {
    const asItIs = (iso: string) => iso;
    const { chat, homeserver } = chatIn(folder, store.head.n, asItIs);
    const clock = homeserver === null ? null : await ofClock(homeserver);
    const findings = [...chat, ...ofRecord(store, asItIs, DIGITS), ...(clock === null ? [] : [clock])];
    for (const { line, good } of findings) io.out(`${good ? 'well ' : 'LOOK '} ${line}`);
    io.out(`      Scanward ${version()}, folder ${folder}`);
    return findings.every(({ good }) => good) ? 0 : 1;
  } finally {
    store.close();
  }
}

/** What is known of the homeserver; nothing where the folder never was on one. */
function chatIn(
  folder: string,
  head: number,
  show: (iso: string) => string,
): { readonly chat: readonly Finding[]; readonly homeserver: string | null } {
  const path = join(folder, 'matrix.db');
  if (!existsSync(path)) return { chat: [], homeserver: null };
  const db = new DatabaseSync(path, { readOnly: true, timeout: 1000 });
  try {
    const chat = ofChat(db, Date.now(), head, show);
    const { homeserver }: { homeserver?: string } = JSON.parse(factOf(db, 'session') ?? '{}');
    return { chat, homeserver: homeserver ?? null };
  } finally {
    db.close();
  }
}
