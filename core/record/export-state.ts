import { toIso } from '../time/instant.ts';
import { type Mark, type ScannerState, type State, type TipState, UNNAMED } from './state.ts';

/** What the rules say of one scanner at the instant of the export. */
export interface ReadyShown {
  /** The first cause that holds, `weekly` among them; `null`: not due. */
  readonly calibrationDue: string | null;
  readonly ready: boolean;
  readonly notReadyBecause: readonly string[];
}

export interface ExportedState {
  readonly scanners: Readonly<Record<string, unknown>>;
  readonly tips: Readonly<Record<string, unknown>>;
  readonly autoclaves?: Readonly<Record<string, unknown>>;
}

/** The state as it is shown to the outside: scanners, tips and, where the practice lists them, autoclaves. */
export function exportState(state: State, ready: (scanner: ScannerState) => ReadyShown): ExportedState {
  const scanners = mapped(state.scanners, (scanner) => ({ ...scannerShown(scanner), ...ready(scanner) }));
  const tips = mapped(state.tips, (tip) => tipShown(state, tip));
  if (state.practice.autoclaves.length === 0) return { scanners, tips };
  const autoclaves = mapped(state.autoclaves, ({ holds }) => ({
    held: holds.length > 0,
    why: holds.length > 0 ? holds.map((each) => each.reason ?? 'held').join(', ') : null,
  }));
  delete autoclaves[UNNAMED];
  return { scanners, tips, autoclaves };
}

function mapped<T>(map: ReadonlyMap<string, T>, show: (value: T) => unknown): Record<string, unknown> {
  return Object.fromEntries([...map].map(([id, value]) => [id, show(value)]));
}

function isoOf(mark: Mark | null | undefined): string | null {
  return mark == null ? null : toIso(mark.at);
}

function scannerShown(scanner: ScannerState) {
  return {
    site: scanner.site,
    room: scanner.room,
    inTransit: scanner.departed !== null,
    calibrated: isoOf(scanner.lastPass?.mark),
    clean: scanner.dirtySince === null,
    covered: scanner.covered !== null,
    tip: scanner.tip,
  };
}

function tipShown(state: State, tip: TipState) {
  return {
    state: tip.state,
    site: tip.site,
    room: tip.room,
    cycles: tip.cycles,
    load: loadShown(state, tip.load),
    since: isoOf(tip.since),
  };
}

/** The number; with its autoclave where another autoclave has a load of that number too. */
function loadShown(state: State, key: string | null): string | null {
  const load = key === null ? undefined : state.loads.get(key);
  if (load === undefined) return null;
  const same = state.loadsByNumber.get(load.number) ?? [];
  const others = same.some(({ autoclave }) => autoclave !== load.autoclave);
  return others && load.autoclave !== null ? `${load.autoclave}/${load.number}` : load.number;
}
