import { fileURLToPath } from 'node:url';
import { defaultReporter } from '@web/test-runner';
import { chromeLauncher } from '@web/test-runner-chrome';
import { devtoolsCommand } from '../tests/browser/grid/devtools-command.mjs';
import { axeCommand } from '../tests/journeys/axe-command.mjs';
import { screenReader } from '../tests/journeys/screen-reader.mjs';
import { references } from '../tests/browser/pictures/references.mjs';
import { closingLine } from './closing-line.mjs';
import { CHROMIUM_ARGS, findChromium } from './chromium.mjs';
import { appPage, servePlugins } from './serve-plugins.mjs';

export default {
  rootDir: fileURLToPath(new URL('..', import.meta.url)),
  files: ['tests/browser/**/*.test.ts', 'tests/journeys/**/*.test.ts'],
  nodeResolve: true,
  // Real keys go to the page in front, so pages take turns.
  concurrency: 1,
  browsers: [chromeLauncher({ launchOptions: { executablePath: findChromium(), args: CHROMIUM_ARGS } })],
  middleware: [appPage()],
  plugins: [...servePlugins, devtoolsCommand(), screenReader(), axeCommand(), references()],
  testFramework: { config: { timeout: 20_000 } },
  testsFinishTimeout: 300_000,
  // Tests run unbundled, where Lit says so in every page.
  filterBrowserLogs: ({ args }) => !String(args[0]).startsWith('Lit is in dev mode'),
  reporters: [defaultReporter({ reportTestResults: true, reportTestProgress: false }), closingLine()],
};
