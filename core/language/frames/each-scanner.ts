import type { Clause } from '../clause.ts';
import type { Made } from '../result.ts';
import type { ScannersSaid } from '../roles/scanner.ts';

/** One fact for each scanner said; one without, and what is missing, where it cannot be told. */
export function each(scanners: ScannersSaid, make: (id: string | undefined) => Made): Made[] {
  return scanners.ids.length === 0 ? [make(undefined)] : scanners.ids.map(make);
}

/** The slot for a scanner, left out where it is not known. */
export function withScanner(id: string | undefined): Record<string, unknown> {
  return id === undefined ? {} : { scanner: id };
}

/** True where a clause has any word for a scanner. */
export function namesScanner(c: Clause): boolean {
  const kinds = ['scanner', 'some', 'no-scanner'] as const;
  return c.at('scanner') >= 0 || kinds.some((kind) => c.entities(kind).length > 0);
}
