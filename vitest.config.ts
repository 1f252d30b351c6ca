import { defineConfig } from 'vitest/config';

// `globals` stays off: charts are placed half a pixel differently when a global `it` exists.
export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/support/seed.ts'],
    globals: false,
    testTimeout: 240_000,
    hookTimeout: 60_000,
  },
});
