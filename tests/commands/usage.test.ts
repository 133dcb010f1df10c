import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { usageOf } from '../../bot/commands/usage.ts';

const { scripts }: { scripts: Record<string, string> } = JSON.parse(readFileSync('package.json', 'utf8'));
const commands = Object.values(scripts).flatMap(
  (script) => /^node bot\/entry\.js (\S+)$/.exec(script)?.[1] ?? [],
);

test('every command of package.json has its help, and the program names it', () => {
  expect(commands.length).toBeGreaterThan(10);
  for (const command of commands) {
    expect(usageOf(command).join('\n'), command).toContain(`npm run ${command}`);
    expect(usageOf('room').join('\n')).toContain(`  ${command} `);
  }
});
