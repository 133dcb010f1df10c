import { createHash } from 'node:crypto';
import canonicalize from 'canonicalize';
import type { Desk } from '../../core/desk/desk.ts';

/**
 * SHA-256 (hex) of everything that a desk knows, so that two folders can be held against each other: state, learned words,
 * what was said and is still open. The same lines give the same hash under one version of the program.
 */
export function stateHash(desk: Desk): string {
  const saved = desk.save();
  return createHash('sha256')
    .update(canonicalize(saved) ?? '')
    .digest('hex');
}
