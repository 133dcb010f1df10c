import type { DatabaseSync } from 'node:sqlite';
import { setTimeout as wait } from 'node:timers/promises';
import { type Answer, askServer, NoServer, textIn } from './ask-server.ts';
import { keepSession, type Renewal, type Session } from './session.ts';

/** A token is replaced when it has this part of its life left, so that an hour without the homeserver does not end it. */
const PART_LEFT = 0.4;
/** Longest sleep between two looks, ms: a laptop's sleep or a set clock is noticed. */
const LONGEST_MS = 30_000;
/** Shortest time between two renewals, ms. */
const LEAST_MS = 1000;
/** Wait after a try that the homeserver did not answer, ms. */
const AGAIN_MS = 2000;

/** How the token of an answer to a sign-in is renewed; null where it never runs out. */
export function renewalIn(body: Answer['body'], now = Date.now()): Renewal | null {
  const token = textIn(body, 'refresh_token');
  const life = body.expires_in_ms;
  if (token === null) return null;
  return { token, until: typeof life === 'number' ? now + life : null };
}

/**
 * The same device with a new token, kept before it is used: the homeserver forgets the old one at the first use of the new.
 * Null where it has nothing to renew by or the homeserver refuses. Throws NoServer where it is away.
 */
export async function renewed(db: DatabaseSync, session: Session): Promise<Session | null> {
  if (session.renewal === null) return null;
  const { homeserver, renewal } = session;
  const answer = await askServer(homeserver, '/refresh', { body: { refresh_token: renewal.token } });
  if (answer.status >= 500 || answer.status === 429) throw new NoServer(`${homeserver} will not renew now.`);
  const token = textIn(answer.body, 'access_token');
  if (answer.status !== 200 || token === null) return null;
  const next = renewalIn({ refresh_token: renewal.token, ...answer.body });
  const anew = { ...session, token, renewal: next };
  keepSession(db, anew);
  return anew;
}

/**
 * Replaces the token of a running program before it runs out; `use` is given each new one. `refused` is told when the
 * homeserver will not: the next start then signs in by password. Never resolves while all goes well.
 */
export async function keepSignedIn(
  db: DatabaseSync,
  session: Session,
  use: (token: string) => void,
  refused: (error: Error) => void,
): Promise<void> {
  let now = session;
  let since = Date.now();
  while (now.renewal !== null && now.renewal.until !== null) {
    const { until } = now.renewal;
    const rest = until - Date.now();
    if (rest > (until - since) * PART_LEFT) {
      await wait(Math.min(rest - (until - since) * PART_LEFT, LONGEST_MS), undefined, { ref: false });
      continue;
    }
    const anew = await renewed(db, now).catch((error: unknown) => {
      if (error instanceof NoServer) return 'away' as const;
      throw error;
    });
    if (anew === null) {
      refused(new Error('the homeserver will not renew the sign-in'));
      return;
    }
    if (anew === 'away') {
      await wait(AGAIN_MS, undefined, { ref: false });
      continue;
    }
    now = anew;
    since = Date.now();
    use(now.token);
    // A session that has an end of its own is renewed for ever shorter times.
    await wait(LEAST_MS, undefined, { ref: false });
  }
}
