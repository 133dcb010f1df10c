import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { describe, expect, it } from 'vitest';

/** The host's own zone must never show: one is UTC, one half an hour off, one moves by half an hour, one is far ahead. */
const HOSTS = [
  'UTC',
  'Asia/Kolkata',
  'America/St_Johns',
  'Australia/Lord_Howe',
  'Pacific/Kiritimati',
  'Europe/London',
];

const run = promisify(execFile);

async function printedUnder(zone: string): Promise<string> {
  const script = new URL('./print-all.ts', import.meta.url).pathname;
  const { stdout } = await run(process.execPath, [script], { env: { ...process.env, TZ: zone } });
  return stdout;
}

describe('the host’s zone', () => {
  // Six processes on a busy machine: the limit only catches one that hangs.
  it('changes nothing', { timeout: 60_000 }, async () => {
    const [first, ...others] = await Promise.all(HOSTS.map(printedUnder));
    const [hostLine = '', ...cases] = (first ?? '').split('\n');
    expect(hostLine).toContain('0');
    expect(cases.length).toBeGreaterThan(300);
    // The first line is the host's own offset, so that this test can fail: there it must differ.
    expect(new Set(others.map((text) => text.split('\n')[0])).size).toBeGreaterThan(3);
    for (const other of others) expect(other.split('\n').slice(1)).toEqual(cases);
  });
});
