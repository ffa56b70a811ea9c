/**
 * The command that compares what is on the page with a committed reference
 * picture. Differences are left in `.cache/pictures`. After a change that is
 * meant, look at the contact sheet, then run the browser tests of this folder
 * with UPDATE_REFERENCES=1 and commit the new references.
 */
import { fileURLToPath } from 'node:url';
import { visualRegressionPlugin } from '@web/test-runner-visual-regression/plugin';

const root = fileURLToPath(new URL('../../..', import.meta.url));

export const references = () => visualRegressionPlugin({
  baseDir: root,
  update: process.env.UPDATE_REFERENCES === '1',
  getBaselineName: ({ name }) => `tests/browser/pictures/references/${name}`,
  getDiffName: ({ name }) => `.cache/pictures/${name}-difference`,
  getFailedName: ({ name }) => `.cache/pictures/${name}`,
  // Smoothed edges differ a little from one build of the browser to the next: so much, on a whole sheet.
  diffOptions: { threshold: 0.15 },
  failureThreshold: 60,
  failureThresholdType: 'pixel',
});
