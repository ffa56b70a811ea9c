/**
 * The built app with its demo workbook: how many frames pass from the key that
 * enters a figure to the frame that shows what depends on it. Beside it a page
 * that does nothing but send the text to a worker and show what it sends back:
 * no page can be faster on this machine.
 */
const EDITS = 60;

export const ECHO = {
  '/echo': '<!doctype html><meta charset="utf-8"><title>Echo</title><textarea></textarea><p></p><script src="/echo-page.js"></script>',
  '/echo-page.js': `const worker = new Worker('/echo-worker.js');
    worker.onmessage = ({ data }) => { document.querySelector('p').textContent = data; };
    document.querySelector('textarea').onkeydown = (event) => {
      if (event.key !== 'Enter') return;
      event.preventDefault();
      worker.postMessage(event.target.value + performance.now());
    };`,
  '/echo-worker.js': 'onmessage = ({ data }) => postMessage(data);',
};

const at = (list, part) => [...list].sort((a, b) => a - b)[Math.min(list.length - 1, Math.floor(list.length * part))];

export async function editsInDemo(context, origin, print) {
  const app = await opened(context, `${origin}/app/`, openFit);
  const echo = await opened(context, `${origin}/echo`, () => document.querySelector('textarea').focus());
  const seen = { app: { frames: [], times: [] }, echo: { frames: [], times: [] } };
  for (let edit = 0; edit < EDITS; edit++) {
    for (const [name, page] of [['app', app], ['echo', echo]]) {
      await page.bringToFront();
      await page.evaluate(watch, name);
      await page.keyboard.type(`${90 + (edit % 20)} cm`);
      await page.keyboard.press('Control+Enter');
      const { frame, time } = await page.evaluate(() => window.shown);
      seen[name].frames.push(frame);
      seen[name].times.push(time);
    }
  }
  const words = ({ frames, times }) => `p50 ${at(frames, 0.5)}, p95 ${at(frames, 0.95)} (${at(times, 0.5).toFixed(0)} / ${at(times, 0.95).toFixed(0)} ms)`;
  print('edit to painted result in the demo workbook, frames', 'p95 <= 2', `${words(seen.app)}, a worker that only answers ${words(seen.echo)}, of ${EDITS}`);
  await app.close();
  await echo.close();
}

async function opened(context, address, begin) {
  const page = await context.newPage();
  await page.goto(address);
  if (address.endsWith('/app/')) await page.waitForFunction(() => document.querySelector('tt-app')?.shadowRoot?.querySelector('.took')?.textContent.startsWith('Worked out'), null, { timeout: 120_000 });
  await page.evaluate(begin);
  return page;
}

/** Goes to a typed figure on which others on the same sheet depend. */
function openFit() {
  const { desk, renderRoot } = document.querySelector('tt-app');
  const sheet = desk.book.sheets.find(({ name }) => name === 'Fit');
  desk.openSheet(sheet.id);
  const place = { row: 10, col: 1 };
  desk.select({ anchor: place, focus: place });
  renderRoot.querySelector('tt-grid').focus();
}

/**
 * From the Enter key on: in which frame what depends on the figure is painted
 * with another text, the one after the key being the first. No frame is asked
 * for meanwhile: a page that asks for every frame makes the browser draw before
 * it hands over what a worker sent.
 */
function watch(name) {
  const grid = document.querySelector('tt-app')?.renderRoot.querySelector('tt-grid');
  const shown = () => (name === 'echo' ? document.querySelector('p') : grid.renderRoot.querySelector('[aria-rowindex="13"] [aria-colindex="3"]')).textContent;
  const before = shown();
  const frame = 1000 / 60;
  window.shown = new Promise((done) => {
    window.addEventListener('keydown', function pressed(event) {
      if (event.key !== 'Enter') return;
      window.removeEventListener('keydown', pressed, true);
      const from = event.timeStamp;
      let first = 0;
      requestAnimationFrame((time) => { first = time; });
      const observer = new MutationObserver(() => {
        if (shown() === before) return;
        observer.disconnect();
        // What has changed by now is painted by this very frame.
        requestAnimationFrame((time) => setTimeout(() => done({ frame: Math.round((time - first) / frame) + 1, time: performance.now() - from })));
      });
      observer.observe(name === 'echo' ? document.body : grid.renderRoot.querySelector('.body'), { subtree: true, childList: true, characterData: true });
    }, true);
  });
}
