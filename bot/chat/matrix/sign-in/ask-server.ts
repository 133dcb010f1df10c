import { PlainError } from '../../../plain-error.ts';

/** What a homeserver answered to a sign-in: the JSON, and how it went. */
export interface Answer {
  readonly status: number;
  readonly errcode: string | null;
  readonly body: Readonly<Record<string, unknown>>;
}

/** A homeserver that takes longer than this is down. */
const PATIENCE_MS = 20_000;

/**
 * One request of signing in. Throws PlainError where no Matrix server answers at all; a refusal is an answer.
 */
export async function askServer(
  homeserver: string,
  path: string,
  options: { readonly token?: string; readonly body?: unknown } = {},
): Promise<Answer> {
  const url = `${homeserver}/_matrix/client/v3${path}`;
  const headers = options.token === undefined ? {} : { Authorization: `Bearer ${options.token}` };
  const signal = AbortSignal.timeout(PATIENCE_MS);
  let response: Response;
  try {
    response =
      options.body === undefined
        ? await fetch(url, { headers, signal })
        : await fetch(url, { headers, signal, method: 'POST', body: JSON.stringify(options.body) });
  } catch {
    throw new NoServer(
      `${homeserver} does not answer. Check SCANWARD_HOMESERVER (the server's own address, not the practice's website) and the network.`,
    );
  }
  const read: unknown = await response.json().catch(() => null);
  if (typeof read !== 'object' || read === null) {
    if (response.status >= 500)
      throw new NoServer(`${homeserver} answers with an error (${response.status}). Try again later.`);
    throw new PlainError(
      `${homeserver} answers, but not as a Matrix homeserver does. Check SCANWARD_HOMESERVER: it is often matrix.DOMAIN.`,
    );
  }
  const body: Readonly<Record<string, unknown>> = { ...read };
  const errcode = typeof body.errcode === 'string' ? body.errcode : null;
  return { status: response.status, errcode, body };
}

/** The homeserver is away: worth trying again, unlike a wrong password. */
export class NoServer extends Error {
  override readonly name = 'NoServer';
}

/** A text of an answer by its name; null where it is missing or empty. */
export function textIn(body: Answer['body'], name: string): string | null {
  const value = body[name];
  return typeof value === 'string' && value !== '' ? value : null;
}
