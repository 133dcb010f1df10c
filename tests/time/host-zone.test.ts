import { execFileSync } from 'node:child_process';
import { expect, test } from 'vitest';

const script = new URL('host-zone-digest.ts', import.meta.url).pathname;

function digestUnder(zone: string): { readonly lines: number; readonly sum: number; readonly host: number } {
  const printed = execFileSync(process.execPath, [script], {
    env: { ...process.env, TZ: zone },
    encoding: 'utf8',
  });
  return JSON.parse(printed);
}

test("the host's zone changes nothing: 400 days of six sites are the same under four TZ settings", () => {
  const zones = ['UTC', 'America/St_Johns', 'Asia/Kathmandu', 'Pacific/Kiritimati'];
  const digests = zones.map(digestUnder);
  expect(digests[0]?.lines).toBe(2400);
  expect(new Set(digests.map(({ sum }) => sum)).size).toBe(1);
  // That the setting reached the child at all: its own clock shows different hours.
  expect(new Set(digests.map(({ host }) => host)).size).toBeGreaterThan(2);
});
