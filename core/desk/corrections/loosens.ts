import type { Practice } from '../../practice/practice.ts';
import type { State } from '../../record/state.ts';
import { readinessOf } from '../../rules/readiness.ts';
import { scannerWords } from '../../rules/tips/tip-words.ts';
import type { Instant } from '../../time/instant.ts';

/** What may be loosened by taking a note back or changing it, as it stands at one instant. */
export interface Guarded {
  readonly sterile: ReadonlySet<string>;
  readonly passed: ReadonlySet<string>;
  readonly ready: ReadonlySet<string>;
  readonly held: ReadonlySet<string>;
}

/** Takes down what is sterile, passed, ready and held, to compare with after a correction. */
export function guarded(practice: Practice, state: State, now: Instant): Guarded {
  const tips = [...state.tips.values()];
  const scanners = [...state.scanners.keys()];
  return {
    sterile: new Set(tips.filter((tip) => tip.state === 'sterile').map((tip) => tip.id)),
    passed: new Set(
      [...state.loads.values()].filter((load) => load.status === 'passed').map((load) => load.key),
    ),
    ready: new Set(scanners.filter((id) => readinessOf({ practice, state, now }, id).ready)),
    held: new Set([
      ...tips.filter((tip) => tip.holds.length > 0).map((tip) => `tip:${tip.id}`),
      ...[...state.autoclaves.values()]
        .filter((one) => one.holds.length > 0)
        .map((one) => `autoclave:${one.id}`),
    ]),
  };
}

/** What a correction would make sterile, passed or ready that was not, or free that was held: in people's words, empty when nothing. */
export function loosened(practice: Practice, before: Guarded, after: Guarded): readonly string[] {
  const gained = (one: ReadonlySet<string>, other: ReadonlySet<string>) =>
    [...other].filter((id) => !one.has(id));
  return [
    ...gained(before.sterile, after.sterile).map((id) => `tip ${id} sterile`),
    ...gained(before.passed, after.passed).map((key) => `load ${/\/(.+)@/.exec(key)?.[1] ?? key} passed`),
    ...gained(before.ready, after.ready).map((id) => `${scannerWords(practice, id)} ready`),
    ...gained(after.held, before.held).map((item) => `${item.replace(':', ' ')} free`),
  ];
}
