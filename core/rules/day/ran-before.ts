import type { Mark, State } from '../../record/state.ts';
import type { Instant } from '../../time/instant.ts';
import type { View } from '../matter.ts';

/**
 * Whether the program was there at that instant: it says so, or something was noted by then. A post of the day whose
 * time went by before it was first started was never due.
 */
export function ranBefore({ said, state }: View, at: Instant): boolean {
  if (said.upSince !== null && said.upSince <= at) return true;
  return marksOf(state).some((mark) => mark !== null && mark.noted <= at);
}

/** The last note of everything: one of them is likely old. */
function marksOf(state: State): readonly (Mark | null)[] {
  return [
    ...[...state.tips.values()].flatMap(({ spoken, since, placed, added }) => [spoken, since, placed, added]),
    ...[...state.scanners.values()].flatMap((scanner) => [
      scanner.lastNoted,
      scanner.placed,
      scanner.lastPass?.mark ?? null,
      scanner.lastWipe,
      scanner.lastScan?.started ?? null,
    ]),
    ...[...state.sites.values()].flatMap((site) => [
      site.lastNoted,
      site.stocktake,
      ...site.readings.slice(0, 1).map(({ mark }) => mark),
      ...[...site.bookings.values()].flatMap((bookings) => bookings.map(({ mark }) => mark)),
    ]),
    ...state.loads
      .recent()
      .slice(0, 1)
      .map(({ started, finished }) => started ?? finished),
    state.history.findings.at(0)?.mark ?? null,
  ];
}
