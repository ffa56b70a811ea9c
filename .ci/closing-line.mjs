/** Prints how many browser tests passed and failed, alone on the last line, so that a log shows at its end what ran. */
export function closingLine() {
  const counts = { passed: 0, failed: 0, skipped: 0 };
  const count = (suite) => {
    for (const test of suite.tests) counts[test.skipped ? 'skipped' : test.passed ? 'passed' : 'failed']++;
    suite.suites.forEach(count);
  };
  return {
    stop({ sessions }) {
      const broken = sessions.filter(({ testResults, errors }) => !testResults || errors.length > 0).length;
      for (const { testResults } of sessions) if (testResults) count(testResults);
      // A file that never ran is a failure too, though it has no test to count.
      const skipped = counts.skipped > 0 ? `, ${counts.skipped} skipped` : '';
      console.log(`\n${counts.passed} passed, ${counts.failed + broken} failed${skipped}`);
    },
  };
}
