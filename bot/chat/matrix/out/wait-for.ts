import { HTTPError } from 'matrix-js-sdk/lib/matrix.js';

/** First wait after a lost connection; it doubles up to the longest. */
const FIRST_MS = 500;
const LONGEST_MS = 20_000;

/**
 * How long to wait before trying again, in ms; null where trying again changes nothing. A limit of the homeserver says
 * itself how long (Retry-After, else retry_after_ms); a lost connection and a server's own fault are waited out.
 */
export function waitFor(error: unknown, tries: number): number | null {
  const backOff = Math.min(FIRST_MS * 2 ** Math.min(tries, 10), LONGEST_MS);
  if (!(error instanceof HTTPError) || error.httpStatus === undefined) return backOff;
  if (error.httpStatus === 429) return Math.max(askedFor(error) ?? backOff, 50);
  return error.httpStatus >= 500 || error.httpStatus === 408 ? backOff : null;
}

function askedFor(error: HTTPError): number | null {
  try {
    return error.getRetryAfterMs();
  } catch {
    return null;
  }
}
