import { CAUSES, type CauseStanding, type ScannerState } from '../state.ts';

/** From here on it is due for that cause until its next pass; said again, the later one stands. */
export function stand(scanner: ScannerState, standing: CauseStanding): void {
  const others = scanner.causes.filter((each) => each.cause !== standing.cause);
  scanner.causes = [...others, standing].sort((a, b) => CAUSES.indexOf(a.cause) - CAUSES.indexOf(b.cause));
}
