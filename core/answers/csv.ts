import type { AnswerFile } from './answer-view.ts';

/**
 * Rows as CSV by RFC 4180: CRLF, fields quoted where they hold a quote, a comma, a semicolon or a line break, quotes doubled.
 * A field that a spreadsheet would take for a formula gets an apostrophe in front and is quoted (OWASP, "CSV Injection");
 * plain numbers keep theirs off.
 */
export function toCsv(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => `${row.map(field).join(',')}\r\n`).join('');
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

function field(value: string): string {
  const risky = /^[=+\-@\t\r\n]/.test(value) && !/^[+-]?\d+(?:\.\d+)?$/.test(value);
  const safe = risky ? `'${value}` : value;
  return risky || /[",;\t\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
