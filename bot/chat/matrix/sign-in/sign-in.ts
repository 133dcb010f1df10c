import type { DatabaseSync } from 'node:sqlite';
import { PlainError } from '../../../plain-error.ts';
import { askServer, textIn } from './ask-server.ts';
import type { Credentials } from './credentials.ts';
import { renewalIn, renewed } from './renew.ts';
import { forgetDevice, keepSession, keptSession, newStorageKey, type Session } from './session.ts';

/** Name of the bot's device, as people see it in their lists. */
const DEVICE_NAME = 'Scanward';

/**
 * The device to work with: the one kept in the folder, held against what the homeserver says of its token, or a new one at
 * the first start or where `newDevice` asks for it. Throws PlainError for each way it can fail, with the way out, and
 * NoServer where the homeserver is away. Never writes a secret anywhere but into `matrix.db`.
 */
export async function signIn(db: DatabaseSync, given: Credentials, newDevice: boolean): Promise<Session> {
  if (newDevice) forgetDevice(db);
  const kept = keptSession(db);
  if (kept === null) return firstSignIn(db, given);
  if (given.user !== null && fullName(given.user, kept.user) !== kept.user) {
    throw new PlainError(
      `The folder belongs to ${kept.user}, but SCANWARD_USER says ${given.user}. One folder is one account: name another folder with --store, or the old account.`,
    );
  }
  const session =
    given.homeserver === null || given.homeserver === kept.homeserver
      ? kept
      : { ...kept, homeserver: given.homeserver };
  return heldAgainst(db, session, given);
}

async function firstSignIn(db: DatabaseSync, given: Credentials): Promise<Session> {
  const { homeserver } = given;
  if (homeserver === null) throw new PlainError('Say where the account is: SCANWARD_HOMESERVER=https://…');
  if (given.token !== null) {
    const answer = await askServer(homeserver, '/account/whoami', { token: given.token });
    if (answer.status !== 200) throw refused(answer.errcode, homeserver);
    const user = textIn(answer.body, 'user_id');
    const device = textIn(answer.body, 'device_id');
    if (user === null || device === null)
      throw new PlainError('That token belongs to no device. Sign in with a password.');
    const made = { homeserver, user, device, token: given.token, renewal: null };
    return kept(db, { ...made, storageKey: newStorageKey() });
  }
  return passwordSignIn(db, homeserver, given, null);
}

async function heldAgainst(db: DatabaseSync, session: Session, given: Credentials): Promise<Session> {
  const answer = await askServer(session.homeserver, '/account/whoami', { token: session.token });
  if (answer.status === 200) {
    const user = textIn(answer.body, 'user_id');
    const device = textIn(answer.body, 'device_id');
    if (user !== session.user || device !== session.device) {
      throw new PlainError(
        `The folder holds the keys of ${session.user}, device ${session.device}, but the homeserver says the token is ${user}'s, device ${device}. Use the folder that belongs to it, or start once with --new-device.`,
      );
    }
    return kept(db, session);
  }
  const expired = answer.errcode === 'M_UNKNOWN_TOKEN' && answer.body.soft_logout === true;
  // The device is still there and so are its keys: only the token is new.
  const anew = expired ? await renewed(db, session) : null;
  if (anew !== null) return anew;
  if (expired && given.password !== null)
    return passwordSignIn(db, session.homeserver, { ...given, user: session.user }, session);
  throw refused(answer.errcode, session.homeserver, session);
}

async function passwordSignIn(
  db: DatabaseSync,
  homeserver: string,
  given: Credentials,
  same: Session | null,
): Promise<Session> {
  const { user, password } = given;
  if (user === null || password === null) {
    throw new PlainError(
      'Say which account: SCANWARD_USER and SCANWARD_PASSWORD (or SCANWARD_TOKEN), in the environment or in a file named by SCANWARD_SECRETS.',
    );
  }
  const body = {
    type: 'm.login.password',
    identifier: { type: 'm.id.user', user },
    password,
    initial_device_display_name: DEVICE_NAME,
    refresh_token: true,
    ...(same === null ? {} : { device_id: same.device }),
  };
  const answer = await askServer(homeserver, '/login', { body });
  if (answer.status !== 200) throw refused(answer.errcode, homeserver);
  const name = textIn(answer.body, 'user_id');
  const device = textIn(answer.body, 'device_id');
  const token = textIn(answer.body, 'access_token');
  if (name === null || device === null || token === null)
    throw new PlainError(`${homeserver} signed in but named no device. Is it a Matrix homeserver?`);
  const storageKey = same?.storageKey ?? newStorageKey();
  return kept(db, { homeserver, user: name, device, token, renewal: renewalIn(answer.body), storageKey });
}

function kept(db: DatabaseSync, session: Session): Session {
  keepSession(db, session);
  return session;
}

/** What a refusal means, and what to do. */
function refused(errcode: string | null, homeserver: string, session?: Session): PlainError {
  switch (errcode) {
    case 'M_UNKNOWN_TOKEN':
    case 'M_MISSING_TOKEN':
      return new PlainError(
        session === undefined
          ? 'The homeserver does not know that token. Take a new one, or sign in with SCANWARD_PASSWORD.'
          : `Device ${session.device} of ${session.user} was signed out on the homeserver, so its keys are of no more use. Start once with --new-device and SCANWARD_PASSWORD; the record is not touched.`,
      );
    case 'M_FORBIDDEN':
      return new PlainError(
        'The homeserver refuses that account and password. Check SCANWARD_USER and SCANWARD_PASSWORD.',
      );
    case 'M_USER_DEACTIVATED':
      return new PlainError('That account was closed on the homeserver. Ask whoever runs it.');
    case 'M_LIMIT_EXCEEDED':
      return new PlainError('The homeserver wants no more attempts for now. Try again in some minutes.');
    default:
      return new PlainError(`${homeserver} will not sign in (${errcode ?? 'no reason given'}).`);
  }
}

function fullName(user: string, like: string): string {
  return user.startsWith('@') ? user : `@${user}:${like.slice(like.indexOf(':') + 1)}`;
}
