import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    exclude: ['dist/**', 'node_modules/**'],
    testTimeout: 30_000,
    maxWorkers: 2,
  },
});
