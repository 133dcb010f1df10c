import { readFileSync } from 'node:fs';

/** The program's version, as its package has it; empty where that says none. */
export function version(): string {
  const path = new URL('../../../../package.json', import.meta.url);
  const about: { version?: string } = JSON.parse(readFileSync(path, 'utf8'));
  return about.version ?? '';
}
