import { crc32 } from 'node:zlib';

// SQLite keeps no sums of its own: a flipped bit in a text would be taken as it reads. CRC-32 finds each.

type Part = string | number | null;

/** CRC-32 of what a row holds, its columns in order. */
export function sumOfRow(...parts: readonly Part[]): number {
  return crc32(parts.join('\n'));
}

/** CRC-32 of the head of a history. */
export function sumOfHead(base: number, stamp: string | null): number {
  return sumOfRow(base, stamp);
}
