/**
 * Small faults put into the arithmetic one by one: which of them do the tests
 * notice? `npm run test:mutants` takes hours for all of it; one file at a time:
 * `npm run test:mutants -- --mutate src/sewing/pleat.ts`.
 */
export default {
  testRunner: 'vitest',
  vitest: { configFile: '.ci/vitest-mutants.config.mjs', related: false },
  mutate: ['src/quantities/**/*.ts', 'src/sewing/**/*.ts'],
  // Words are looked at by people; a changed one is no fault of the arithmetic.
  mutator: { excludedMutations: ['StringLiteral'] },
  coverageAnalysis: 'perTest',
  concurrency: 2,
  incremental: true,
  incrementalFile: 'coverage/mutants.json',
  tempDirName: 'coverage/mutants',
  reporters: ['clear-text', 'progress'],
  clearTextReporter: { allowColor: false, reportTests: false },
  thresholds: { high: 95, low: 85, break: 85 },
  plugins: ['@stryker-mutator/vitest-runner'],
  allowConsoleColors: false,
  disableTypeChecks: true,
};
