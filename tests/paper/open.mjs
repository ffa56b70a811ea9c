/** The app in a browser of its own, and what it prints: PDF pages, and what poppler's tools read from them. */
import { execFile } from 'node:child_process';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { startDevServer } from '@web/dev-server';
import { chromium } from 'playwright-core';
import config from '../../web-dev-server.config.mjs';
import { CHROMIUM_ARGS, ensureChromium } from '../../.ci/chromium.mjs';

const run = promisify(execFile);
const PORT = 8337;
/** Dots of a page image to one millimetre. */
export const DOTS = 10;

/** Whether poppler-utils is there to read PDF with. */
export const canReadPdf = () => run('pdftotext', ['-v']).then(() => true, () => false);

export async function openApp() {
  const server = await startDevServer({ config: { ...config, port: PORT, watch: false }, readCliArgs: false, readFileConfig: false, autoExitProcess: false, logStartMessage: false });
  const browser = await chromium.launch({ executablePath: await ensureChromium(), args: CHROMIUM_ARGS });
  return {
    async page(colorScheme = 'light') {
      const page = await browser.newPage({ viewport: { width: 1360, height: 900 }, colorScheme });
      const troubles = [];
      page.on('pageerror', (error) => troubles.push(error.message));
      page.on('console', (message) => { if (message.type() === 'error') troubles.push(message.text()); });
      // The test makes the PDF itself, with what stands on the page at that moment.
      await page.addInitScript(() => { window.print = () => { window.asked = (window.asked ?? 0) + 1; }; });
      await page.goto(`http://localhost:${PORT}/src/`);
      await page.getByText(/^Worked out in/).waitFor({ state: 'attached', timeout: 60_000 });
      await page.waitForFunction(() => customElements.get('tt-paper') && document.querySelector('body > tt-paper'), null, { timeout: 60_000 });
      return { page, troubles };
    },
    /** A page whose cells stand there, and nothing that comes later. `paper: false`: what makes paper never comes. */
    async early({ paper = true } = {}) {
      const page = await browser.newPage({ viewport: { width: 1360, height: 900 } });
      await page.addInitScript(() => {
        window.print = () => { window.asked = (window.asked ?? 0) + 1; };
        window.addEventListener('keydown', (event) => setTimeout(() => { window.prevented = event.defaultPrevented; }), true);
      });
      if (!paper) await page.route(/paper-desk/, () => undefined);
      await page.goto(`http://localhost:${PORT}/src/`, { waitUntil: 'commit' });
      await page.waitForFunction(() => document.querySelector('tt-app')?.shadowRoot?.querySelector('tt-grid'), null, { timeout: 60_000 });
      return page;
    },
    async stop() {
      await browser.close();
      await server.stop();
    },
  };
}

/** The texts of each page of a PDF, as they are laid out. */
export async function textOf(pdf) {
  return inFile(pdf, async (file) => (await run('pdftotext', ['-layout', file, '-'], { maxBuffer: 1e8 })).stdout.split('\f').slice(0, -1));
}

/** Every page as a grey image of `DOTS` to the millimetre: 0 is black. */
export async function imagesOf(pdf) {
  return inFile(pdf, async (file, folder) => {
    await run('pdftoppm', ['-gray', '-r', String(DOTS * 25.4), file, join(folder, 'page')]);
    const { stdout } = await run('pdfinfo', [file]);
    const count = Number(/Pages:\s*(\d+)/.exec(stdout)[1]);
    const images = [];
    for (let page = 1; page <= count; page++) images.push(pgm(await readFile(join(folder, `page-${String(page).padStart(String(count).length, '0')}.pgm`))));
    return images;
  });
}

/** Width and height of each page in mm. */
export async function sizesOf(pdf) {
  return inFile(pdf, async (file) => [...(await run('pdfinfo', ['-l', '999', file])).stdout.matchAll(/size:\s+([\d.]+) x ([\d.]+) pts/g)].map(([, width, height]) => [width, height].map((points) => (Number(points) / 72) * 25.4)));
}

async function inFile(pdf, read) {
  const folder = await mkdtemp(join(tmpdir(), 'tape-and-tally-paper-'));
  try {
    const file = join(folder, 'printed.pdf');
    await writeFile(file, pdf);
    return await read(file, folder);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

function pgm(bytes) {
  const [head, width, height] = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 40).toString('latin1'));
  return { width: Number(width), height: Number(height), dots: bytes.subarray(head.length) };
}
