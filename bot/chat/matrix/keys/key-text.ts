/**
 * A key of the key store as text that sorts nowhere but tells every key from every other: IndexedDB's keys are numbers,
 * dates, texts, bytes and lists of these. Throws TypeError on anything else.
 */
export function keyText(key: unknown): string {
  return JSON.stringify(plain(key));
}

function plain(key: unknown): unknown {
  if (typeof key === 'string') return key;
  if (typeof key === 'number') return { n: String(key) };
  if (key instanceof Date) return { d: key.getTime() };
  if (Array.isArray(key)) return key.map(plain);
  if (key instanceof ArrayBuffer) return { b: Buffer.from(key).toString('base64') };
  if (ArrayBuffer.isView(key)) {
    return { b: Buffer.from(key.buffer, key.byteOffset, key.byteLength).toString('base64') };
  }
  throw new TypeError('a key of a kind that IndexedDB does not have');
}
