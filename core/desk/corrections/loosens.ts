import type { Practice } from '../../practice/practice.ts';
import type { State } from '../../record/state.ts';
import { readinessOf } from '../../rules/readiness.ts';
import { scannerWords } from '../../rules/tips/tip-words.ts';
import type { Instant } from '../../time/instant.ts';

/** What may be loosened by taking a note back or changing it, as it stands at one instant. */
export interface Guarded {
  readonly sterile: ReadonlySet<string>;
  /** Keys of loads. */
  readonly passed: ReadonlySet<string>;
  /** Whether a load had passed that may be in the archive. */
  readonly hadPassed: (load: string) => boolean;
  readonly ready: ReadonlySet<string>;
  readonly held: ReadonlySet<string>;
}

/**
 * Takes down what is sterile, passed, ready and held, to compare with after a correction. `isFar`: the correction is of what
 * is in the archive, so that any load may change.
 */
export function guarded(practice: Practice, state: State, now: Instant, isFar: boolean): Guarded {
  const tips = [...state.tips.values()];
  const scanners = [...state.scanners.keys()];
  return {
    sterile: new Set(tips.filter((tip) => tip.state === 'sterile').map((tip) => tip.id)),
    ...passedLoads(state.loads, isFar),
    ready: new Set(scanners.filter((id) => readinessOf({ practice, state, now }, id).ready)),
    held: new Set([
      ...tips.filter((tip) => tip.holds.length > 0).map((tip) => `tip:${tip.id}`),
      ...[...state.autoclaves.values()]
        .filter((one) => one.holds.length > 0)
        .map((one) => `autoclave:${one.id}`),
    ]),
  };
}

function passedLoads(loads: State['loads'], isFar: boolean): Pick<Guarded, 'passed' | 'hadPassed'> {
  const all = isFar ? loads.all() : loads.recent();
  const passed = new Set(all.filter(({ status }) => status === 'passed').map(({ key }) => key));
  if (isFar) return { passed, hadPassed: (key) => passed.has(key) };
  const seen = new Set(all.map(({ key }) => key));
  // What was in the archive then and is not now was brought back by the correction; the archive has it as it was.
  const wasPassed = (key: string) => !seen.has(key) && loads.archived(key)?.status === 'passed';
  return { passed, hadPassed: (key) => passed.has(key) || wasPassed(key) };
}

/** What a correction would make sterile, passed or ready that was not, or free that was held: in people's words, empty when nothing. */
export function loosened(practice: Practice, before: Guarded, after: Guarded): readonly string[] {
  const gained = (one: ReadonlySet<string>, other: ReadonlySet<string>) =>
    [...other].filter((id) => !one.has(id));
  return [
    ...gained(before.sterile, after.sterile).map((id) => `tip ${id} sterile`),
    ...[...after.passed]
      .filter((key) => !before.hadPassed(key))
      .map((key) => `load ${/\/(.+)@/.exec(key)?.[1] ?? key} passed`),
    ...gained(before.ready, after.ready).map((id) => `${scannerWords(practice, id)} ready`),
    ...gained(after.held, before.held).map((item) => `${item.replace(':', ' ')} free`),
  ];
}
