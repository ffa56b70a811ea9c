/**
 * Prints from the real app and reads the paper back: every text and figure of
 * the open sheet and of the ticket, black on white in either theme, on A4 and
 * on Letter, and the scale to a tenth of a millimetre. Needs poppler-utils.
 */
import { isDeepStrictEqual } from 'node:util';
import { DOTS, canReadPdf, imagesOf, openApp, sizesOf, textOf } from './open.mjs';

const A4 = [210, 297];
const LETTER = [215.9, 279.4];
const faults = [];
let checks = 0;

function check(right, otherwise) {
  checks += 1;
  if (!right) faults.push(otherwise);
}

const plain = (text) => text.replace(/\s+/g, '');
/** Letters of figures that stand apart in a PDF. */
const holds = (page, text) => plain(page).includes(plain(text));

async function main() {
  if (!(await canReadPdf())) {
    console.log('Skipped: pdftotext is not here. Install poppler-utils to have the paper read back.');
    return;
  }
  const app = await openApp();
  try {
    await printedAtOnce(app);
    for (const scheme of ['light', 'dark']) {
      const { page, troubles } = await app.page(scheme);
      await theOpenSheet(page, scheme);
      await everySheet(page);
      await theTicket(page);
      await theList(page);
      await theCurve(page, scheme === 'light' ? 'A4' : 'Letter');
      check(troubles.length === 0, `The page had trouble (${scheme}): ${troubles.join(' | ')}`);
      await page.close();
    }
  } finally {
    await app.stop();
  }
}

/** What the grid shows of the sheet in view, cell by cell. */
const gridTexts = (page) => page.evaluate(() => {
  const grid = document.querySelector('tt-app').shadowRoot.querySelector('tt-grid');
  const { view } = grid;
  const texts = [];
  for (let row = 0; row < view.used.rows; row++) {
    for (let col = 0; col < view.used.cols; col++) {
      const cell = view.cell(row, col);
      if (cell?.text) texts.push([cell.text, cell.also ?? '']);
    }
  }
  return texts;
});

/** By the browser's own printing. */
async function theOpenSheet(page, scheme) {
  await page.getByRole('button', { name: 'cm + in' }).click();
  await page.waitForTimeout(200);
  const texts = await gridTexts(page);
  for (const [format, size] of [['A4', A4], ['Letter', LETTER]]) {
    const pdf = await page.pdf({ format });
    const pages = await textOf(pdf);
    checkSizes(await sizesOf(pdf), size, `the sheet on ${format}`);
    const all = pages.join('\n');
    for (const [text, also] of texts) {
      check(holds(all, text), `The sheet on ${format} has no “${text}”.`);
      if (also) check(holds(all, `${text}${also}`), `The sheet on ${format} has no “${text} ${also}”.`);
    }
    pages.forEach((each, at) => check(holds(each, `page ${at + 1} of ${pages.length}`), `Page ${at + 1} on ${format} has no number.`));
    check(!/Commands|Side by side|Working/.test(all), 'A panel of the app is on the paper.');
    checkGround(await imagesOf(pdf), `the sheet on ${format}, ${scheme}`);
  }
}

async function everySheet(page) {
  const names = await page.evaluate(() => document.querySelector('tt-app').desk.book.sheets.map(({ name }) => name));
  const pdf = await ordered(page, { what: 'book', paper: 'Letter' });
  const all = (await textOf(pdf)).join('\n');
  for (const name of names) check(holds(all, `Linden tea dress: ${name}`), `“${name}” is not among all sheets.`);
  checkSizes(await sizesOf(pdf), LETTER, 'all sheets');
}

/** Asked by its keys as soon as there are cells, and asked otherwise before there is paper. */
async function printedAtOnce(app) {
  const page = await app.early();
  await page.keyboard.press('Control+P');
  await page.waitForFunction(() => window.asked > 0, null, { timeout: 60_000 });
  check(await page.evaluate(() => window.prevented), 'The browser prints by itself before there is paper.');
  const [first] = await textOf(await page.pdf({ format: 'A4' }));
  check(holds(first, 'Linden tea dress: Fit') && holds(first, '6.0 cm') && !/Commands|Side by side/.test(first), `Printed at once, the sheet is not what is on paper, but: ${first.slice(0, 200)}`);
  await page.close();
  const without = await app.early({ paper: false });
  const [sentence] = await textOf(await without.pdf({ format: 'A4' }));
  check(holds(sentence, 'The workbook was not ready to be printed yet') && !/Commands|Linden/.test(sentence), `Without paper, the screen is printed: ${sentence.slice(0, 200)}`);
  await without.close();
}

/** What is to be bought, with boxes to tick and the total. */
async function theList(page) {
  const all = (await textOf(await ordered(page, { what: 'list', paper: 'A4' }))).join('\n');
  const list = await page.evaluate(() => document.querySelector('body > tt-paper').pages[0].list);
  check(list.items.length > 5 && list.unpriced === 0, 'The list to buy is not that of the workbook.');
  for (const { what, buy, cost } of list.items) {
    for (const text of [what, buy.main, buy.also ?? '', cost]) check(holds(all, text), `The list to buy has no “${text}”.`);
  }
  check(holds(all, `Together${list.total}`), 'The list to buy has no total.');
}

async function theTicket(page) {
  for (const [paper, size] of [['A4', A4], ['Letter', LETTER]]) {
    const usual = await ordered(page, { what: 'ticket', paper });
    const pages = await textOf(usual);
    checkSizes(await sizesOf(usual), size, 'the usual ticket');
    check(pages.length === 1, `The usual ticket takes ${pages.length} pages of ${paper}.`);
    check(holds(pages[0], 'Not on this ticket'), 'The ticket does not say what it leaves out.');
    for (const row of ['Size to cut', 'Side seams', 'Flat width to cut', 'Button 11']) check(holds(pages[0], row), `The usual ticket has no “${row}”.`);
  }
  const pdf = await ordered(page, { what: 'ticket', paper: 'A4', whole: true });
  const all = (await textOf(pdf)).join('\n');
  checkSizes(await sizesOf(pdf), A4, 'the ticket');
  const rows = await page.evaluate(() => document.querySelector('body > tt-paper').pages[0].parts.flatMap(({ rows: each }) => each));
  const shown = await page.evaluate((cells) => {
    const { desk } = document.querySelector('tt-app');
    const before = desk.sheetId;
    const grid = document.querySelector('tt-app').shadowRoot.querySelector('tt-grid');
    return (async () => {
      const found = [];
      for (const { sheet, row, col } of cells) {
        if (desk.sheetId !== sheet) {
          desk.openSheet(sheet);
          await document.querySelector('tt-app').updateComplete;
        }
        const { text, also } = grid.view.cell(row, col);
        found.push([text, also ?? '']);
      }
      desk.openSheet(before);
      return found;
    })();
  }, rows.flatMap(({ figures }) => figures.map(({ cell }) => cell)));
  const onTicket = rows.flatMap(({ figures }) => figures.map(({ main, also }) => [main, also ?? '']));
  check(shown.length > 100 && isDeepStrictEqual(onTicket, shown), 'The ticket’s figures are not those of the grid.');
  for (const [text, also] of shown) {
    check(holds(all, text), `The ticket has no “${text}”.`);
    if (also) check(holds(all, also), `The ticket has no “${also}”.`);
  }
  check(holds(all, 'before you cut'), 'The ticket has no cautions.');
  const pictured = (await textOf(await ordered(page, { what: 'ticket', paper: 'A4', pictures: 1 }))).join('\n');
  check(holds(pictured, 'To check the scale') && holds(pictured, '10 cm each way'), 'A ticket with a picture has no square.');
}

/** The square is 10 cm and 4 in wide and high, and the curve is where its radius says. */
async function theCurve(page, paper) {
  const radius = 160;
  const pdf = await ordered(page, { what: 'curve', paper, radius: `${radius / 10} cm` });
  const pages = await textOf(pdf);
  check(pages.length === 1, `A radius of ${radius} mm took ${pages.length} pages.`);
  check(holds(pages[0], 'Measure the square before you cut'), 'The curve says nothing of its square.');
  const [image] = await imagesOf(pdf);
  const dark = (x, y) => image.dots[y * image.width + x] < 140;
  const longest = (x0, dx, y0, dy) => {
    let [most, end, run] = [0, 0, 0];
    for (let x = x0, y = y0, n = 0; x < image.width && y < image.height; x += dx, y += dy, n++) {
      run = dark(x, y) ? run + 1 : 0;
      if (run > most) [most, end] = [run, n];
    }
    return [most, end];
  };
  // The unbroken sides of the square are the lines of 10 cm; along two of them a dash of the other square may go on.
  const sides = (count, read) => Array.from({ length: count }, (_, at) => [at, ...read(at)]).filter(([, run]) => run >= 99.6 * DOTS && run <= 102 * DOTS).map(([at]) => at);
  for (const [way, found] of [['wide', sides(image.width, (x) => longest(x, 0, 0, 1))], ['high', sides(image.height, (y) => longest(0, 1, y, 0))]]) {
    const between = (found.at(-1) - found[0]) / DOTS;
    check(Math.abs(between - 100) <= 0.3, `The square is ${between} mm ${way}.`);
  }
  // The straight edges meet at the centre: half a line's width, 0.3 mm, from where the lower one begins, in the middle of its own.
  const edge = [...Array(image.height).keys()].map((y) => [y, ...longest(0, 1, y, 0)]).filter(([, run]) => Math.abs(run - radius * DOTS) <= DOTS);
  check(edge.length > 0, 'The straight edge is not as long as the radius.');
  if (edge.length === 0) return;
  const centre = { x: edge[0][2] - edge[0][1] + 1 + 0.3 * DOTS, y: edge.reduce((sum, [y]) => sum + y, 0) / edge.length };
  const points = [];
  for (let degrees = 2; degrees < 89; degrees++) {
    const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
    // Where along this ray is the line's middle?
    const hits = [];
    for (let r = (radius - 3) * DOTS; r < (radius + 3) * DOTS; r += 0.25) if (dark(Math.round(centre.x + r * cos), Math.round(centre.y - r * sin))) hits.push(r);
    if (hits.length > 0) points.push([centre.x + ((hits[0] + hits.at(-1)) / 2) * cos, centre.y - ((hits[0] + hits.at(-1)) / 2) * sin].map((dots) => dots / DOTS));
  }
  check(points.length === 87, `Of 87 places of the curve ${points.length} are on the paper.`);
  const circle = circleThrough(points);
  const off = Math.max(...points.map(([x, y]) => Math.abs(Math.hypot(x - circle.x, y - circle.y) - circle.radius)));
  const shift = Math.hypot(circle.x - centre.x / DOTS, circle.y - centre.y / DOTS);
  console.log(`${paper}: radius ${circle.radius.toFixed(2)} mm for ${radius} mm, no place more than ${off.toFixed(2)} mm off, centre within ${shift.toFixed(2)} mm of the corner.`);
  check(Math.abs(circle.radius - radius) <= 0.2 && off <= 0.2 && shift <= 0.6, 'The curve is not the circle that was asked for.');
}

/** The circle nearest to points: least squares of x² + y² + dx + ey + f (Kåsa 1976). */
function circleThrough(points) {
  const [mx, my] = [0, 1].map((axis) => points.reduce((sum, point) => sum + point[axis], 0) / points.length);
  let [xx, xy, yy, xz, yz, zz] = [0, 0, 0, 0, 0, 0];
  for (const point of points) {
    const [x, y] = [point[0] - mx, point[1] - my];
    const z = x * x + y * y;
    xx += x * x;
    xy += x * y;
    yy += y * y;
    xz += x * z;
    yz += y * z;
    zz += z;
  }
  const by = 2 * (xx * yy - xy * xy);
  const [x, y] = [(xz * yy - yz * xy) / by, (yz * xx - xz * xy) / by];
  return { x: x + mx, y: y + my, radius: Math.sqrt(x * x + y * y + zz / points.length) };
}

/** By the dialog, with its keys and boxes; what would go to the printer as PDF. */
async function ordered(page, { what, paper, radius, pictures = 0, whole = false }) {
  await page.keyboard.press('Alt+Shift+KeyT');
  await page.locator(`tt-print input[value=${what}]`).check();
  await page.locator(`tt-print input[value=${paper}]`).check();
  if (radius) {
    await page.locator('tt-print input[name=radius]').fill(radius);
    await page.keyboard.press('Tab');
  }
  if (whole) for (const part of await page.locator('tt-print [data-part]').all()) await part.check();
  for (let at = 0; at < pictures; at++) await page.locator('tt-print [data-picture]').nth(at).check();
  await page.waitForTimeout(300);
  await page.locator('tt-print button.main').click();
  const pdf = await page.pdf({ preferCSSPageSize: true });
  check(await page.evaluate(() => window.asked > 0), 'The browser was not asked to print.');
  return pdf;
}

function checkSizes(sizes, [width, height], what) {
  check(sizes.length > 0 && sizes.every(([w, h]) => Math.abs(w - width) < 0.6 && Math.abs(h - height) < 0.6), `The paper of ${what} is ${sizes[0]?.map((each) => each.toFixed(1)).join(' × ')} mm.`);
}

/** White ground, and ink on it. */
function checkGround(images, what) {
  images.forEach(({ dots }, at) => {
    let [white, black] = [0, 0];
    for (const dot of dots) {
      if (dot > 250) white += 1;
      else if (dot < 60) black += 1;
    }
    check(white / dots.length > 0.85 && black > 500, `Page ${at + 1} of ${what} is not black on white: ${((100 * white) / dots.length).toFixed(0)} % white.`);
  });
}

await main();
for (const fault of faults.slice(0, 20)) console.error(fault);
if (checks > 0) console.log(`${checks} checks of printed pages, ${faults.length} faults.`);
if (faults.length > 0) process.exitCode = 1;
