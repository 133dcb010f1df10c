/** How far a value's source was read: itself, as a quotation, worked out again here, or not at all. */
type Known = 'seen' | 'quoted' | 'computed' | 'from memory';

/** What is in the load, as CDC's table divides it. */
export type Goods = 'wrapped instruments' | 'textile packs' | 'wrapped utensils';

/** One row: held anywhere from `fromCelsius` to `toCelsius` for at least `minutes`. */
export interface HoldRow {
  readonly fromCelsius: number;
  readonly toCelsius: number;
  readonly minutes: number;
  readonly goods?: Goods;
  /** Least and greatest drying time given with the row, minutes. */
  readonly drying?: readonly [number, number];
  readonly source: string;
  readonly known: Known;
}

export type LoadTableName = 'uk' | 'us-gravity' | 'us-prevacuum';

/** How far above its own temperature a US row or a validated cycle reaches, kelvin; assumed (EN 285 uses 3, EN 13060 4). */
const ABOVE_KELVIN = 3;

const UK_SOURCE = 'HTM 01-05:2013, sterilisation chapter';
const CDC_SOURCE =
  'CDC, Guideline for Disinfection and Sterilization in Healthcare Facilities 2008 (upd. 2019), Table 7';

function uk(fromCelsius: number, minutes: number): HoldRow {
  return { fromCelsius, toCelsius: fromCelsius + 3, minutes, source: UK_SOURCE, known: 'from memory' };
}

function cdc(celsius: number, minutes: number, goods: Goods, drying: readonly [number, number]): HoldRow {
  return {
    fromCelsius: celsius,
    toCelsius: celsius + ABOVE_KELVIN,
    minutes,
    goods,
    drying,
    source: CDC_SOURCE,
    known: 'seen',
  };
}

/** The tables a practice may work to. A temperature that no row covers has no published value there. */
export const LOAD_TABLES: Readonly<Record<LoadTableName, readonly HoldRow[]>> = {
  uk: [uk(134, 3), uk(126, 10), uk(121, 15)],
  'us-gravity': [
    cdc(121, 30, 'wrapped instruments', [15, 30]),
    cdc(132, 15, 'wrapped instruments', [15, 30]),
    cdc(121, 30, 'textile packs', [15, 15]),
    cdc(132, 25, 'textile packs', [15, 15]),
    cdc(121, 30, 'wrapped utensils', [15, 30]),
    cdc(132, 15, 'wrapped utensils', [15, 30]),
  ],
  'us-prevacuum': [
    cdc(132, 4, 'wrapped instruments', [20, 30]),
    cdc(132, 4, 'textile packs', [5, 20]),
    cdc(132, 4, 'wrapped utensils', [20, 20]),
  ],
};

/** A table's rows; `aboveKelvin` says how far above its own temperature a US row reaches, the UK's bands are as published. */
export function rowsOfTable(table: LoadTableName, aboveKelvin = ABOVE_KELVIN): readonly HoldRow[] {
  if (table === 'uk') return LOAD_TABLES.uk;
  return LOAD_TABLES[table].map((row) => ({ ...row, toCelsius: row.fromCelsius + aboveKelvin }));
}

/** A cycle that an autoclave has been validated for, as the practice file lists it. */
export interface ValidatedCycle {
  readonly celsius: number;
  readonly minutes: number;
}

/** An autoclave's own validated cycles as rows. */
export function rowsOfCycles(cycles: readonly ValidatedCycle[], aboveKelvin = ABOVE_KELVIN): HoldRow[] {
  return cycles.map(({ celsius, minutes }) => ({
    fromCelsius: celsius,
    toCelsius: celsius + aboveKelvin,
    minutes,
    source: "the autoclave's own validated cycles, from the practice file",
    known: 'seen',
  }));
}
