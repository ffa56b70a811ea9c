/**
 * Pictures of the real app with the demo garment, for README.md and for looking
 * at: `npm run screens` writes them to tests/screens/, at three widths, light and dark.
 */
import { mkdir } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { startDevServer } from '@web/dev-server';
import { chromium } from 'playwright-core';
import config from '../web-dev-server.config.mjs';
import { CHROMIUM_ARGS, ensureChromium } from './chromium.mjs';

const out = fileURLToPath(new URL('../tests/screens/', import.meta.url));
const WIDTHS = [[1360, 860], [820, 1180], [390, 844]];

await mkdir(out, { recursive: true });
const server = await startDevServer({ config: { ...config, port: 8321 }, readCliArgs: false, readFileConfig: false, autoExitProcess: false, logStartMessage: false });
const browser = await chromium.launch({ executablePath: await ensureChromium(), args: CHROMIUM_ARGS });
try {
  for (const [width, height] of WIDTHS) {
    for (const colorScheme of ['light', 'dark']) {
      const page = await browser.newPage({ viewport: { width, height }, colorScheme });
      await page.goto('http://localhost:8321/src/');
      await page.getByText(/^Worked out in/).waitFor({ state: 'attached' });
      // To the ease at the bust, whose working is short and whole.
      for (let down = 0; down < 12; down++) await page.keyboard.press('ArrowDown');
      await page.keyboard.press('ArrowRight');
      await page.getByText('finished measure minus body measure').waitFor({ state: 'attached' });
      await page.screenshot({ path: `${out}fit-${width}-${colorScheme}.png` });
      await page.close();
    }
  }
} finally {
  await browser.close();
  await server.stop();
}
console.log(`Written to ${out}`);
