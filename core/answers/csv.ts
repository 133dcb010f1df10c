import Papa from 'papaparse';
import type { AnswerFile } from './answer-view.ts';

/**
 * A field that a spreadsheet would take for a formula (OWASP, "CSV Injection": = + - @, tab, carriage return, line feed at its
 * start) and that is no plain number: it gets an apostrophe in front.
 */
const FORMULA = /^(?![+-]?\d+(?:\.\d+)?$)[=+\-@\t\r\n]/;

/** Rows as CSV by RFC 4180, each line ended by CRLF. Fields with semicolons are quoted too: some spreadsheets split there. */
export function toCsv(rows: readonly (readonly string[])[]): string {
  const text = Papa.unparse(
    rows.map((row) => [...row]),
    { newline: '\r\n', escapeFormulae: FORMULA, quotes: (value: unknown) => /[;\t]/.test(String(value)) },
  );
  return `${text}\r\n`;
}

/** Rows under their heading as a file of that name, without its ending. */
export function csvFile(
  name: string,
  columns: readonly string[],
  rows: readonly (readonly string[])[],
): AnswerFile {
  const safe = name.replaceAll(/[^\w.-]+/g, '-');
  return { name: `${safe}.csv`, type: 'text/csv', content: toCsv([columns, ...rows]) };
}
