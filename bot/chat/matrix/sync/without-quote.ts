/**
 * A reply's text without the quoted message that older clients put before it: lines that begin with `> `, then an empty
 * line (Client-Server API, Rich replies; the fallback was removed in v1.13, readers should still strip it).
 */
export function withoutQuote(body: string): string {
  if (!body.startsWith('> ')) return body;
  const rows = body.split('\n');
  const first = rows.findIndex((row) => !/^>(?: |$)/.test(row));
  if (first === -1) return '';
  return rows.slice(rows[first] === '' ? first + 1 : first).join('\n');
}
