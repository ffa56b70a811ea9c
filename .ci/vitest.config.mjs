import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    include: ['tests/unit/**/*.test.ts', 'tests/published/**/*.test.ts'],
    setupFiles: ['tests/unit/seed.ts'],
    testTimeout: 120_000,
    coverage: { include: ['src/**', 'workers/**'], reporter: ['text-summary'], reportsDirectory: 'coverage' },
  },
});
