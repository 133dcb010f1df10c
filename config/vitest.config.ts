import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/seed.ts'],
    passWithNoTests: false,
    // Room for a busy machine: nothing here waits on real time but the homeserver, which says itself what it waits for.
    testTimeout: 60_000,
    hookTimeout: 300_000,
    // In CI a real homeserver shares two cores with everything else; examples are drawn from a fixed seed, so trying
    // once more cannot hide a fault of ours.
    retry: process.env.CI === undefined ? 0 : 1,
  },
});
