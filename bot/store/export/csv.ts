import Papa from 'papaparse';
import { columns, type Row } from './row.ts';

/**
 * A cell that a spreadsheet would take for a formula (OWASP, CSV Injection: = + - @, tab, carriage return, line feed
 * at its start) and that is not a plain number: it gets an apostrophe in front. -5 stays -5.
 */
const formula = /^(?![+-]?\d+(?:\.\d+)?$)[=+\-@\t\r\n]/;

/** Rows as CSV (RFC 4180, lines end with CRLF), with the heading first. Safe to open in a spreadsheet. */
export function* csvOf(rows: Iterable<Row>): Generator<string> {
  yield* csvLines(columns, rows, (row) => columns.map((column) => row[column]));
}

/** Any rows as CSV in the same way. */
export function* csvLines<T>(
  heading: readonly string[],
  rows: Iterable<T>,
  cells: (row: T) => readonly (string | number)[],
): Generator<string> {
  yield line(heading);
  for (const row of rows) yield line(cells(row));
}

/** Quoted beyond what RFC 4180 asks: where semicolons separate, such a cell would fall apart. */
const separated = /[;\t]/;

function line(cells: readonly (string | number)[]): string {
  const quotes = (cell: unknown): boolean => separated.test(String(cell));
  return `${Papa.unparse([[...cells]], { newline: '\r\n', escapeFormulae: formula, quotes })}\r\n`;
}
