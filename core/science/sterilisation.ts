import type { Goods, HoldRow, LoadTableName, ValidatedCycle } from './load-tables.ts';
import { rowsOfCycles, rowsOfTable } from './load-tables.ts';

/** What was noted of a load's hold; what was not said is absent. */
export interface HoldFigures {
  readonly celsius?: number;
  readonly minutes?: number;
}

/** What a load is judged by. An autoclave with validated cycles listed is judged by those alone. */
export interface HoldStandard {
  readonly table?: LoadTableName;
  readonly cycles?: readonly ValidatedCycle[];
  /** Wrapped instruments when absent; the UK table makes no difference. */
  readonly goods?: Goods;
  /** Kelvin that a validated cycle reaches above its temperature; 3 when absent. */
  readonly aboveKelvin?: number;
  /** Kelvin that a row of a US table reaches above its temperature; 3 when absent. */
  readonly rowAboveKelvin?: number;
  /** Kelvin that the sensor may be wrong by: a reading this near the edge proves nothing. 0 when absent. */
  readonly sensorErrorKelvin?: number;
}

/**
 * What the figures say. `met`: held long enough inside a row. `short`: inside a row, not long enough.
 * `no-value`: the temperature is in no row, so there is no published (or validated) value; never "ok".
 * `not-judged`: no table named, or a figure was not said. Minutes, °C.
 */
export type HoldJudgement =
  | { readonly judged: 'met'; readonly row: HoldRow; readonly requiredMinutes: number }
  | {
      readonly judged: 'short';
      readonly row: HoldRow;
      readonly requiredMinutes: number;
      readonly shortByMinutes: number;
    }
  | { readonly judged: 'no-value'; readonly celsius: number; readonly by: 'table' | 'cycles' }
  | { readonly judged: 'not-judged'; readonly because: 'no-table' | 'celsius-not-said' | 'minutes-not-said' };

/** Lets 134.3 + 3 cover 137.3 whatever the binary fractions do; far below any autoclave's display. */
const NOISE = 1e-9;

function covers(row: HoldRow, celsius: number, sensorError: number): boolean {
  return celsius >= row.fromCelsius + sensorError - NOISE && celsius <= row.toCelsius - sensorError + NOISE;
}

/** The rows that a load is judged by; undefined when the practice names no table and the autoclave lists no cycles. */
function rowsFor(standard: HoldStandard): readonly HoldRow[] | undefined {
  if (standard.cycles !== undefined && standard.cycles.length > 0) {
    return rowsOfCycles(standard.cycles, standard.aboveKelvin);
  }
  if (standard.table === undefined) return undefined;
  const goods = standard.goods ?? 'wrapped instruments';
  return rowsOfTable(standard.table, standard.rowAboveKelvin).filter(
    (row) => row.goods === undefined || row.goods === goods,
  );
}

/**
 * Judges a load's hold. Where several of an autoclave's own cycles cover the temperature, meeting any one is enough
 * and the longest one met is named; short of all, the nearest to being met is.
 */
export function judgeHold(figures: HoldFigures, standard: HoldStandard): HoldJudgement {
  const rows = rowsFor(standard);
  if (rows === undefined) return { judged: 'not-judged', because: 'no-table' };
  const { celsius, minutes } = figures;
  if (celsius === undefined) return { judged: 'not-judged', because: 'celsius-not-said' };
  const covering = rows
    .filter((row) => covers(row, celsius, standard.sensorErrorKelvin ?? 0))
    .sort((a, b) => a.minutes - b.minutes);
  const shortest = covering[0];
  if (shortest === undefined) {
    return { judged: 'no-value', celsius, by: (standard.cycles ?? []).length > 0 ? 'cycles' : 'table' };
  }
  if (minutes === undefined) return { judged: 'not-judged', because: 'minutes-not-said' };
  const met = covering.findLast((row) => minutes >= row.minutes - NOISE);
  if (met !== undefined) return { judged: 'met', row: met, requiredMinutes: met.minutes };
  const requiredMinutes = shortest.minutes;
  return { judged: 'short', row: shortest, requiredMinutes, shortByMinutes: requiredMinutes - minutes };
}
