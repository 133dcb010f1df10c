/**
 * Rows as CSV by RFC 4180: CRLF, fields quoted where they hold a quote, a comma or a line break, quotes doubled. A field that a
 * spreadsheet would take for a formula gets an apostrophe in front (OWASP, "CSV Injection"); plain numbers keep theirs off.
 */
export function toCsv(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => `${row.map(field).join(',')}\r\n`).join('');
}

function field(value: string): string {
  const risky = /^[=+\-@\t\r\n]/.test(value) && !/^[+-]?\d+(?:\.\d+)?$/.test(value);
  const safe = risky ? `'${value}` : value;
  return risky || /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
