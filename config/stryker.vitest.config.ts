import { globSync, readFileSync } from 'node:fs';
import { defineConfig } from 'vitest/config';

const root = new URL('..', import.meta.url).pathname;

/** Stryker runs this in its own copy of the project, where a file with mutants begins with a function of this name. */
function hasMutants(folder: string): boolean {
  const files = globSync(`${folder}/**/*.ts`, { cwd: root });
  return files.some((file) => readFileSync(root + file, 'utf8').includes('stryNS_'));
}

const mutated = ['record', 'language'].filter((part) => hasMutants(`core/${part}`));

/**
 * The tests that speak of the parts that hold mutants, without those that take seconds each: a test is run for every
 * mutant whose line it reaches. Of the record these are the ones that draw whole timelines at random (of 945 mutants of
 * the fold they noticed 3 that the others did not), of the reading the ones that go through thousands of notes.
 */
export default defineConfig({
  test: {
    root,
    include: mutated.map((part) => `tests/${part}/**/*.test.ts`),
    exclude: [
      'tests/record/timeline.test.ts',
      'tests/record/timeline-snapshot.test.ts',
      'tests/language/learnable.test.ts',
      'tests/language/ordinary-english.test.ts',
      'tests/language/read-command.test.ts',
      'tests/language/slips.test.ts',
    ],
    // Room for a busy machine, as in the suite's own.
    testTimeout: 60_000,
  },
});
