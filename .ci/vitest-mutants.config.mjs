/** The tests that know the arithmetic: those of its own folders, and the published figures that need no engine. */
import usual from './vitest.config.mjs';

export default {
  ...usual,
  test: { ...usual.test, include: ['tests/unit/quantities/**/*.test.ts', 'tests/unit/sewing/**/*.test.ts'], testTimeout: 20_000 },
};
