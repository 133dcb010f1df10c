import { Given } from '../rules/given.ts';
import { FERNGATE } from '../rules/scanner/ferngate.ts';

/** Chat room that serves all three sites. */
export const ALL_ROOM = '!all:example.org';
/** Its site is half an hour off the whole hours: Asia/Kolkata. */
export const HILL_ROOM = '!hill:example.org';

/** Ferngate with 40 tips over its three sites. */
export function fortyTips(): Given {
  return new Given(
    FERNGATE.replace(
      '  - {ids: 1-12, home: quay}',
      '  - {ids: 1-18, home: quay}\n  - {ids: 19-30, home: north}\n  - {ids: 31-40, home: hill}',
    ),
  );
}

/** "1" to "18" and the like. */
export function ids(from: number, to: number): string[] {
  return Array.from({ length: to - from + 1 }, (_, n) => String(from + n));
}

/** Every tip out of a passed load on Monday morning, each site's in one of its own. */
export function allSterile(given: Given): Given {
  const loads = [
    ['101', ids(1, 18)],
    ['102', ids(19, 30)],
    ['103', ids(31, 40)],
  ] as const;
  for (const [load, tips] of loads) {
    given.note('2026-11-23 08:00', { kind: 'load-started', load, tips: [...tips] });
    given.note('2026-11-23 08:40', {
      kind: 'load-finished',
      load,
      outcome: 'passed',
      celsius: 134,
      minutes: 3.5,
    });
  }
  return given;
}
