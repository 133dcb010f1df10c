import { ConnectionError, HTTPError } from 'matrix-js-sdk/lib/matrix.js';
import { PlainError } from '../../plain-error.ts';
import { TakenOver } from './ledger/trouble.ts';

/** The device is gone; a token that has only run out is replaced at the next start, where the password is known. */
function isSignedOut(error: unknown): boolean {
  if (!(error instanceof HTTPError) || error.httpStatus !== 401) return false;
  const data: unknown = 'data' in error ? error.data : null;
  const soft =
    typeof data === 'object' && data !== null && 'soft_logout' in data && data.soft_logout === true;
  return !soft;
}

/** Starting again by itself would change nothing: signed out, or another machine keeps the record now. */
export function wantsPerson(error: unknown): boolean {
  return isSignedOut(error) || error instanceof TakenOver || error instanceof PlainError;
}

/** The homeserver was not reached or had a fault of its own: whoever needs the answer asks again. */
export function isOnlyTheLine(error: unknown): boolean {
  if (error instanceof ConnectionError) return true;
  if (error instanceof HTTPError) return error.httpStatus !== 401;
  return error instanceof Error && error.name === 'AbortError';
}
