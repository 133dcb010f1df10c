import { defineConfig } from 'vitest/config';

/** The tests that speak of core/language and core/record, and no slow ones: each is run for many mutants. */
export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/language/**/*.test.ts', 'tests/record/**/*.test.ts'],
    exclude: [
      'tests/language/ordinary-english.test.ts',
      'tests/language/read-command.test.ts',
      'tests/language/slips.test.ts',
    ],
  },
});
