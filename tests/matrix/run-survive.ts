// Kills the bot and the homeserver again and again in the middle of bursts: npm run survive [kills]; 300 where none are said.
import { startVitest } from 'vitest/node';

process.env.SCANWARD_KILLS = process.argv[2] ?? '300';
// Without a homeserver it must fail, not be left out.
process.env.CI ??= 'true';
const vitest = await startVitest('test', ['tests/matrix/survive'], {
  config: 'config/vitest.config.ts',
  watch: false,
  retry: 0,
});
await vitest?.close();
