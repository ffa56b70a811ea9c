/**
 * From a person and a pattern to the cutting table, in the real app and with its
 * keys: somebody new is measured in inches, her pattern's chart is in
 * centimetres; the size at each level and the blend, a longer skirt, what every
 * seam and the cloth change by, last year's dress beside it, the list for the
 * shop, and the cutting ticket as PDF. What the page shows and what the paper
 * says is held against this script's own arithmetic on the figures it typed.
 * Needs poppler-utils. `PICTURES=folder` keeps screens and PDFs to look at.
 *
 * The garment, the person and the chart are made up.
 */
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { canReadPdf, openApp, sizesOf, textOf } from './open.mjs';

const PATIENCE = 30_000;
const MOST_TABS = 250;
const INCH = 25.4;

const NAME = 'Ilse Marran';
const NOW = 'Summer dress';
const BEFORE = 'Dress of last year';
/** In inches, as she says them, with what they are in mm. */
const MEASURES = {
  [BEFORE]: { Bust: ['34 1/2', 34.5 * INCH], Waist: ['27 3/4', 27.75 * INCH], Hip: ['37 1/2', 37.5 * INCH] },
  [NOW]: { Bust: ['34 3/4', 34.75 * INCH], Waist: ['28 3/4', 28.75 * INCH], Hip: ['38', 38 * INCH] },
};
const SIZES = [10, 12, 14, 16, 18, 20];
/** In cm. */
const CHART = { Bust: [80, 84, 88, 92, 97, 102], Waist: [62, 66, 70, 74, 79, 85], Hip: [87, 91, 95, 99, 104, 109] };
const CSV = [['Measure (cm)', ...SIZES], ...Object.entries(CHART).map(([name, figures]) => [name, ...figures])].map((row) => row.join(',')).join('\n');
const LEVELS = ['Bust', 'Waist', 'Hip'];
/** Drawn into the pattern, and the usual ease of a dress of average fit in the workbook's table: 2 1/2, 1 and 3 in. */
const DRAWN = { Bust: 70, Waist: 40, Hip: 60 };
const WISHED = { Bust: 2.5 * INCH, Waist: INCH, Hip: 3 * INCH };

const faults = [];
let checks = 0;

function check(right, otherwise) {
  checks += 1;
  if (!right) faults.push(otherwise);
}

const plain = (text) => text.replace(/\s+/g, '');
const words = (text) => (text ?? '').replace(/\s+/g, ' ').trim();

// The script's own arithmetic.

const EIGHTHS = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞'];
const minus = (text) => text.replace('-', '−');
const cm = (mm) => minus(`${(mm / 10).toFixed(1)} cm`);
const metres = (mm) => `${(mm / 1000).toFixed(2)} m`;
function inches(mm) {
  const eighths = Math.round((Math.abs(mm) / INCH) * 8);
  const [whole, part] = [Math.floor(eighths / 8), eighths % 8];
  return `${mm < 0 && eighths > 0 ? '−' : ''}${whole > 0 || part === 0 ? whole : ''}${whole > 0 && part > 0 ? ' ' : ''}${EIGHTHS[part]} in`;
}

/** All sizes at all three levels, under the cost that the panel states for a semi-fitted garment, a change of size counting 1 cm. */
function cheapest(body) {
  const all = SIZES.flatMap((_, bust) => SIZES.flatMap((__, waist) => SIZES.map((___, hip) => [bust, waist, hip])));
  const costs = all.filter(([a, b, c]) => Math.abs(a - b) <= 2 && Math.abs(b - c) <= 2).map((at) => {
    const misfit = LEVELS.reduce((sum, level, i) => {
      const more = CHART[level][at[i]] * 10 - body[level];
      return sum + (level === 'Waist' ? 0.5 : 1) * (more < 0 ? -2 * more : more);
    }, 0);
    return { at, cost: misfit + 10 * (Math.abs(at[0] - at[1]) + Math.abs(at[1] - at[2])) };
  });
  costs.sort((a, b) => a.cost - b.cost);
  if (costs[1].cost - costs[0].cost < 0.5) throw new Error('Two choices are as good as each other: take other measures.');
  return Object.fromEntries(LEVELS.map((level, i) => [level, costs[0].at[i]]));
}

/** What the sheets come to, in mm. */
function workedOut(title, sizes, longer) {
  const body = Object.fromEntries(LEVELS.map((level) => [level, MEASURES[title][level][1]]));
  const finished = Object.fromEntries(LEVELS.map((level) => [level, CHART[level][sizes[level]] * 10 + DRAWN[level]]));
  const change = Object.fromEntries(LEVELS.map((level) => [level, body[level] + WISHED[level] - finished[level]]));
  const moreCloth = 2 * longer;
  const cloth = Math.ceil((CLOTH + moreCloth) / (1 - SHRINKAGE) / 100) * 100;
  return {
    body, finished, change, moreCloth, cloth, cost: (cloth / 1000) * PRICE,
    ease: Object.fromEntries(LEVELS.map((level) => [level, finished[level] - body[level]])),
    // Two seams, two edges each.
    shift: Object.fromEntries(LEVELS.map((level) => [level, change[level] / 4])),
    left: 15 - change.Waist / 4, hem: 50 - longer,
  };
}

const LONGER = 1.5 * INCH;
const CLOTH = 2100;
const SHRINKAGE = 0.03;
const PRICE = 18.5;

// The app, by its keys.

class Sewer {
  #pictures = 0;

  constructor(page) {
    this.page = page;
    this.keys = page.keyboard;
  }

  async press(...keys) {
    for (const key of keys) await this.keys.press(key);
  }

  /** What the control with the focus is called, and what it is. */
  focused() {
    return this.page.evaluate(() => {
      let at = document.activeElement;
      while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
      if (!at) return { name: '', id: '', text: '', cells: false };
      const said = at.getAttribute('aria-label') ?? at.labels?.[0]?.textContent ?? at.textContent ?? '';
      return { name: said.replace(/\s+/g, ' ').trim(), id: at.id, cells: at.localName === 'textarea' && at.getRootNode().host?.localName === 'tt-grid' };
    });
  }

  async tabTo(name, { back = false } = {}) {
    const seen = new Set();
    for (let tabs = 0; tabs < MOST_TABS; tabs++) {
      await this.press(back ? 'Shift+Tab' : 'Tab');
      const at = await this.focused();
      if (at.name.startsWith(name)) return;
      seen.add(at.name.slice(0, 60));
    }
    throw new Error(`Tab does not come to “${name}”, only to ${[...seen].join(' | ')}.`);
  }

  async until(ready, otherwise) {
    const end = Date.now() + PATIENCE;
    for (;;) {
      const found = await ready();
      if (found) return found;
      if (Date.now() > end) throw new Error(typeof otherwise === 'function' ? await otherwise() : otherwise);
      await this.page.waitForTimeout(40);
    }
  }

  async run(command) {
    await this.press('Control+.');
    await this.page.locator('tt-command-list [role=option]').first().waitFor();
    await this.keys.type(command);
    await this.page.locator('tt-command-list [role=option][aria-selected=true]', { hasText: command }).waitFor();
    await this.press('Enter');
  }

  /** Into the field from wherever the focus is, over what stands there. */
  async write(name, text, go = {}) {
    await this.tabTo(name, go);
    await this.press('Control+a');
    await this.keys.type(text);
  }

  async go(place) {
    await this.press('Escape');
    for (let steps = 0; (await this.focused()).id !== 'where'; steps++) {
      if (steps > 3) throw new Error(`Three steps back from the cells is no field for a place, but “${(await this.focused()).name}”.`);
      await this.press('Shift+Tab');
    }
    await this.keys.type(place);
    await this.press('Enter');
    await this.until(async () => (await this.focused()).cells, `${place} is not gone to`);
  }

  async put(place, text) {
    await this.go(place);
    await this.keys.type(text);
    await this.press('Enter');
  }

  /** A cell of the open sheet as it is read; it has to be in view. */
  cell(place) {
    const [, letters, row] = /^([A-Z])(\d+)$/.exec(place);
    const [rowIndex, colIndex] = [Number(row) + 1, letters.charCodeAt(0) - 63];
    return this.page.locator(`tt-grid [role=row][aria-rowindex="${rowIndex}"] > [role=gridcell][aria-colindex="${colIndex}"]`).evaluate((cell) => {
      const copy = cell.cloneNode(true);
      for (const mark of copy.querySelectorAll('i')) mark.remove();
      return copy.textContent.replace(/\s+/g, ' ').trim();
    }, null, { timeout: PATIENCE });
  }

  /** Goes there, and holds the texts against what the cell comes to show. */
  async shows(sheet, figures) {
    await this.openSheet(sheet);
    for (const [place, ...texts] of figures) {
      await this.go(place);
      let seen = '';
      const fits = async () => {
        seen = await this.cell(place);
        return texts.every((text) => plain(seen).includes(plain(text)));
      };
      const end = Date.now() + 5_000;
      let right = await fits();
      while (!right && Date.now() < end) {
        await this.page.waitForTimeout(50);
        right = await fits();
      }
      check(right, `${sheet} ${place} shows “${seen}”, not “${texts.join('” and “')}”.`);
    }
  }

  async openSheet(name) {
    const open = () => this.page.locator('tt-sheet-list button[aria-current]').first().evaluate((button) => [...button.childNodes].filter((node) => node.nodeType === Node.TEXT_NODE).map((node) => node.data).join('').trim());
    for (let turns = 0; (await open()) !== name; turns++) {
      if (turns > 12) throw new Error(`There is no sheet “${name}”.`);
      const before = await open();
      await this.press('Alt+PageDown');
      await this.until(async () => (await open()) !== before, 'the sheet is not turned');
    }
  }

  async workedOut() {
    await this.page.getByText(/^Worked out in/).waitFor({ state: 'attached', timeout: PATIENCE });
    await this.until(() => this.page.evaluate(() => !document.querySelector('tt-app').shadowRoot.querySelector('tt-grid').shadowRoot.querySelector('.cell.waiting')), 'the results do not come');
  }

  read(tag) {
    return this.page.locator(tag).first().evaluate((element) => element.shadowRoot.textContent.replace(/\s+/g, ' ').trim());
  }

  async picture(what) {
    if (!process.env.PICTURES) return;
    this.#pictures += 1;
    await this.page.screenshot({ path: join(process.env.PICTURES, `${String(this.#pictures).padStart(2, '0')}-${what}.png`) });
  }
}

async function kept(pdf, name) {
  if (process.env.PICTURES) await writeFile(join(process.env.PICTURES, `${name}.pdf`), pdf);
  return pdf;
}

/** Start my own, answered with the keys. */
async function start(sewer, title, chart) {
  const { page, keys } = sewer;
  await sewer.run('Start my own');
  await sewer.until(async () => (await sewer.focused()).id === 'who', 'the first question does not come');
  const known = page.locator('tt-start-own #who option', { hasText: NAME });
  if (title === BEFORE) await sewer.write('Name', NAME);
  else {
    await known.waitFor({ state: 'attached', timeout: PATIENCE });
    await keys.type(NAME.split(' ')[0]);
  }
  await sewer.tabTo('Dress');
  await sewer.press('Space');
  await sewer.write('Call the workbook', title);
  await sewer.tabTo('centimetres');
  await sewer.press('ArrowDown');
  for (const level of LEVELS) {
    await sewer.write(level, MEASURES[title][level][0]);
    const fields = await sewer.read('tt-start-own tt-measure-fields');
    check(plain(fields).includes(plain(cm(MEASURES[title][level][1]))), `${level} of ${MEASURES[title][level][0]} is not said in cm as it is typed.`);
  }
  await chart();
  await sewer.until(async () => (await sewer.read('tt-start-chart')).includes('18 figures read'), async () => `the chart is not read: ${await sewer.read('tt-start-chart')}`);
  await sewer.picture(`start-${title === NOW ? 'now' : 'before'}`);
  await sewer.tabTo('Start');
  await sewer.press('Enter');
  await sewer.until(() => page.getByRole('heading', { level: 1, name: title }).count().catch(() => 0), async () => `the workbook does not open: ${await sewer.read('tt-start-own')}`);
  await sewer.workedOut();
}

/** The sizes that a level's girth is nearest to: how a workbook begins. */
const nearest = (title) => Object.fromEntries(LEVELS.map((level) => {
  const off = CHART[level].map((figure) => Math.abs(figure * 10 - MEASURES[title][level][1]));
  return [level, off.indexOf(Math.min(...off))];
}));

const COLUMN = { Bust: 'B', Waist: 'C', Hip: 'D' };

async function drawnEase(sewer) {
  await sewer.openSheet('Fit');
  for (const level of LEVELS) await sewer.put(`${COLUMN[level]}11`, `${DRAWN[level] / 10} cm`);
}

async function theSizes(sewer) {
  const { page } = sewer;
  const sizes = cheapest(workedOut(NOW, nearest(NOW), 0).body);
  const size = (level) => SIZES[sizes[level]];
  await sewer.run('Add a blank sheet');
  await sewer.run('Rename this sheet');
  // What is fetched first takes the focus when it comes.
  await page.locator('tt-rename dialog[open]').waitFor({ timeout: PATIENCE });
  await sewer.tabTo('This sheet');
  await sewer.press('Control+a');
  await sewer.keys.type('Sizes');
  await sewer.press('Enter');
  await sewer.until(async () => (await sewer.focused()).cells, 'the name is not given');
  await sewer.press('Alt+Shift+KeyZ');
  await sewer.until(async () => (await page.locator('tt-size-choice').count()) && (await sewer.read('tt-size-choice')).includes('Cut size'), 'no size is chosen');
  await sewer.tabTo('Style');
  await sewer.keys.type('Semi');
  await sewer.press('Tab');
  const sentence = `Cut size ${size('Bust')} at the bust, ${size('Waist')} at the waist and ${size('Hip')} at the hip.`;
  await sewer.until(async () => (await sewer.read('tt-size-choice')).includes(sentence), async () => `Not “${sentence}” but ${(await sewer.read('tt-size-choice')).match(/Cut size[^.]*\./)}`);
  const said = await sewer.read('tt-size-choice');
  const gap = (level, other) => Math.abs(CHART[level][sizes[level]] - CHART[level][sizes[other]]) * 10 / 4;
  for (const [upper, lower] of [['Bust', 'Waist'], ['Waist', 'Hip']]) {
    const apart = [gap(upper, lower), Math.abs(CHART[lower][sizes[upper]] - CHART[lower][sizes[lower]]) * 10 / 4];
    if (size(upper) === size(lower)) check(said.includes(`Size ${size(upper)} all the way.`), `Nothing is said of the blend from ${upper} to ${lower}.`);
    else for (const text of [`From size ${size(upper)} to size ${size(lower)} over`, ...apart.flatMap((mm) => [inches(mm), cm(mm)])]) check(plain(said).includes(plain(text)), `The blend from ${upper} to ${lower} does not say “${text}”.`);
  }
  await sewer.picture('sizes');
  await sewer.tabTo('Put it in the sheet');
  await sewer.press('Enter');
  await sewer.until(async () => (await sewer.focused()).cells, 'the sizes are not put in');
  await sewer.press('Escape');
  await sewer.workedOut();
  await sewer.shows('Sizes', LEVELS.flatMap((level, i) => [
    [`B${i + 2}`, inches(MEASURES[NOW][level][1]), cm(MEASURES[NOW][level][1])],
    [`C${i + 2}`, String(size(level))],
    [`E${i + 2}`, cm(CHART[level][sizes[level]] * 10 - MEASURES[NOW][level][1])],
  ]));
  await sewer.picture('sizes-in-the-sheet');
  return sizes;
}

/** The sizes go on into the fitting, and from there to the seams. */
async function theSeams(sewer, sizes) {
  await sewer.openSheet('Fit');
  for (const [i, level] of LEVELS.entries()) await sewer.put(`${COLUMN[level]}10`, `=Sizes!C${i + 2}`);
  await drawnEase(sewer);
  const figures = workedOut(NOW, sizes, LONGER);
  await sewer.shows('Fit', LEVELS.flatMap((level) => [
    [`${COLUMN[level]}10`, String(SIZES[sizes[level]])],
    [`${COLUMN[level]}12`, cm(figures.finished[level])],
    [`${COLUMN[level]}13`, cm(figures.ease[level]), inches(figures.ease[level])],
    [`${COLUMN[level]}17`, inches(WISHED[level])],
    [`${COLUMN[level]}18`, cm(figures.change[level])],
    [`${COLUMN[level]}20`, cm(figures.shift[level])],
  ]));
  await sewer.picture('fit');
  await sewer.shows('Alterations', [['B24', '0']]);
  await sewer.put('B24', '1 1/2 in');
  await sewer.shows('Alterations', [
    ['B2', cm(figures.finished.Waist)], ['B4', cm(figures.change.Waist)],
    ['D9', cm(figures.shift.Waist)], ['E9', cm(figures.change.Waist)], ['F9', cm(figures.left)], ['B6', '0'],
    ['B24', inches(LONGER), cm(LONGER)], ['B26', inches(LONGER / 2), cm(LONGER / 2)], ['B27', inches(figures.moreCloth), cm(figures.moreCloth)], ['B30', cm(figures.hem)],
  ]);
  await sewer.picture('alterations');
  return figures;
}

async function theShop(sewer, figures) {
  await sewer.openSheet('To buy');
  await sewer.shows('To buy', [['A2', 'Main cloth']]);
  await sewer.put('C2', `${CLOTH / 1000} m`);
  await sewer.openSheet('Alterations');
  await sewer.go('B27');
  await sewer.run('Put this on the list to buy');
  await sewer.until(async () => (await sewer.focused()).name.startsWith('Ask for'), 'the list does not ask what it is');
  await sewer.press('Control+a');
  await sewer.keys.type('Main cloth');
  await sewer.write('It is for', 'longer skirt');
  await sewer.press('Enter');
  await sewer.until(async () => (await sewer.read('tt-to-buy')).includes('Main cloth is on the list in To buy.'), async () => `it is not put on the list: ${await sewer.read('tt-to-buy')}`);
  await sewer.press('Escape');
  await sewer.openSheet('To buy');
  // One row of needs more: the list itself begins at row 15 now.
  await sewer.shows('To buy', [['A15', 'Main cloth'], ['E15', '3']]);
  await sewer.put('H15', String(PRICE));
  await sewer.shows('To buy', [['C15', metres(CLOTH + figures.moreCloth)], ['G15', metres(figures.cloth)], ['J15', figures.cost.toFixed(2)]]);
  await sewer.picture('to-buy-sheet');
  await sewer.press('Alt+Shift+KeyB');
  await sewer.until(async () => (await sewer.read('tt-to-buy')).includes('Together'), 'the list does not come');
  const list = await sewer.read('tt-to-buy');
  for (const text of ['Main cloth', metres(figures.cloth), figures.cost.toFixed(2), 'longer skirt']) check(plain(list).includes(plain(text)), `The list for the shop has no “${text}”: ${list.slice(0, 600)}`);
  check(!/Enough at home|bodice/.test(list), `What this dress does not need is on the list: ${list.slice(0, 600)}`);
  await sewer.picture('to-buy');
  await sewer.press('Escape');
}

/** The rows of a table beside the cells, as they are read. */
async function compared(sewer, caption) {
  return sewer.page.locator('tt-side-by-side table', { has: sewer.page.locator('caption', { hasText: caption }) }).evaluate((table) => [...table.rows].map((row) => [...row.cells].map((cell) => (cell.querySelector('input')?.value ?? cell.textContent).replace(/\s+/g, ' ').trim())));
}

async function beside(sewer, figures) {
  const { page } = sewer;
  await sewer.openSheet('Fit');
  await sewer.press('Alt+KeyB');
  await sewer.until(async () => (await page.locator('tt-side-by-side select[name=book] option').count()) > 0, 'no other workbook is offered');
  await sewer.press('Escape');
  await sewer.tabTo('Another workbook');
  await sewer.keys.type(BEFORE.split(' ')[0]);
  await sewer.tabTo('Add its values as a case');
  await sewer.press('Enter');
  await sewer.until(async () => (await page.locator('tt-side-by-side table').count()) === 2, async () => `nothing is compared: ${await sewer.read('tt-side-by-side')}`);
  const inputs = await compared(sewer, 'Inputs');
  check(inputs[0].includes(BEFORE), `Last year's dress is not among the cases: ${inputs[0].join(' | ')}`);
  const rowOf = (rows, place) => rows.find(([first]) => first.endsWith(`${place} ↗`)) ?? [];
  for (const [level, cellOf] of [['Bust', 'Measures B5'], ['Waist', 'Measures B7'], ['Hip', 'Measures B8']]) {
    const row = inputs.find(([first]) => first.startsWith(level) && first.includes('Measures')) ?? [];
    check(row[1] === `${MEASURES[NOW][level][0]} in` && row[2] === `${MEASURES[BEFORE][level][0]} in`, `${level} side by side: ${row.join(' | ') || `no row (${cellOf})`}`);
  }
  const others = inputs.slice(1).map(([first]) => first).filter((first) => !LEVELS.some((level) => first.startsWith(level)));
  check(others.length === 2 && others[0].startsWith('Longer by') && others[1].includes('To buy C2'), `Other inputs that differ: ${others.join(' | ')}, not the length and the cloth.`);
  const results = await compared(sewer, 'Results that depend on them');
  await sewer.picture('beside');
  // Last year's measures, and her other inputs of last year: no longer skirt, no cloth told.
  const last = workedOut(BEFORE, cheapest(Object.fromEntries(LEVELS.map((level) => [level, MEASURES[BEFORE][level][1]]))), 0);
  for (const level of LEVELS) {
    for (const [row, key] of [[12, 'finished'], [13, 'ease'], [18, 'change'], [20, 'shift']]) {
      const found = rowOf(results, `Fit ${COLUMN[level]}${row}`);
      if (found.length > 0) check(plain(found[0]).includes(`,${level}Fit`), `Side by side it is not said that Fit ${COLUMN[level]}${row} is of the ${level}: ${found[0]}`);
      if (key === 'finished' && last.finished[level] === figures.finished[level] && found.length === 0) continue;
      check(plain(found[1] ?? '').includes(plain(cm(figures[key][level]))) && plain(found[2] ?? '').includes(plain(cm(last[key][level]))), `Side by side, Fit ${COLUMN[level]}${row}: ${found.join(' | ')}, not ${cm(figures[key][level])} and ${cm(last[key][level])}.`);
      const difference = last[key][level] - figures[key][level];
      if (Math.abs(difference) > 0.5) check(plain(found[3] ?? '').includes(plain(`${difference > 0 ? '+' : ''}${cm(difference)}`)), `The difference of Fit ${COLUMN[level]}${row} is “${found[3]}”, not ${cm(difference)}.`);
    }
  }
  const more = rowOf(results, 'Alterations B27');
  check(plain(more[1] ?? '').includes(plain(cm(figures.moreCloth))) && /^0(?:\.0)? /.test(more[2] ?? ''), `Side by side, more cloth: ${more.join(' | ')}.`);
  await sewer.press('Escape');
  await sewer.until(async () => (await sewer.focused()).cells, 'the comparison does not close');
}

/** The ticket and the list on paper: what the dialog shows, what the PDF says, and what it comes to. */
async function onPaper(sewer, figures, sizes) {
  const { page } = sewer;
  await sewer.press('Alt+Shift+KeyT');
  const dialog = page.getByRole('dialog', { name: 'Print' });
  await dialog.waitFor();
  const ticket = page.getByRole('radio', { name: 'A cutting ticket' });
  for (let steps = 0; !(await ticket.isChecked()); steps++) {
    if (steps > 5) throw new Error('The arrow keys do not come to the ticket.');
    await sewer.press('ArrowDown');
    await page.waitForTimeout(100);
  }
  const preview = dialog.getByRole('group', { name: 'Pages' });
  await preview.getByText(`Cutting ticket: ${NOW}`).waitFor();
  // A row's words and figures, one by one: on paper they stand in columns of their own.
  const rows = await preview.getByRole('listitem').evaluateAll((items) => items.map((item) => {
    const walker = document.createTreeWalker(item, NodeFilter.SHOW_TEXT);
    const texts = [];
    while (walker.nextNode()) if (walker.currentNode.data.trim()) texts.push(walker.currentNode.data.replace(/\s+/g, ' ').trim());
    return texts;
  }));
  await sewer.picture('ticket');
  await sewer.tabTo('Print');
  await sewer.press('Enter');
  await sewer.until(() => page.evaluate(() => window.asked > 0), 'the browser is not asked to print');
  const pdf = await kept(await page.pdf({ preferCSSPageSize: true }), 'ticket');
  const pages = await textOf(pdf);
  const all = pages.join('\n');
  const holds = (text) => plain(all).includes(plain(text));
  check((await sizesOf(pdf)).length === pages.length && pages.length === 1, `The ticket takes ${pages.length} pages.`);
  check(rows.length > 8, `The ticket on the page has only ${rows.length} rows.`);
  for (const text of [`Cutting ticket: ${NOW}`, NAME, 'Sizes by level', 'Seam by seam']) check(holds(text), `The ticket has no “${text}”.`);
  for (const row of rows) for (const text of row) check(/\d/.test(text) ? holds(text) || text.split(' ').every(holds) : text.split(' ').every(holds), `The ticket on paper has no “${text}” of “${row.join(' ')}”.`);
  const line = (label) => (rows.find(([first]) => first === label) ?? []).join(' ');
  const lengths = (mm) => [inches(mm), cm(mm)];
  const wanted = [
    ...LEVELS.map((level) => ['Size to cut', `${level} ${SIZES[sizes[level]]}`]),
    ...LEVELS.map((level) => [level.toLowerCase(), `Size ${SIZES[sizes[level]]}`]),
    ...LEVELS.map((level) => ['Each seam edge moves by', ...lengths(figures.shift[level])]),
    ['Side seams', ...lengths(figures.shift.Waist), ...lengths(figures.change.Waist), ...lengths(figures.left)],
    ['At each line', ...lengths(LONGER / 2)], ['More cloth', ...lengths(figures.moreCloth)], ['Left in the hem', ...lengths(figures.hem)],
  ];
  for (const [label, ...texts] of wanted) {
    for (const text of texts) {
      check(plain(line(label)).includes(plain(text)), `On the page, the ticket's “${label}” is “${line(label)}”, without “${text}”.`);
      check(holds(text), `On paper, the ticket has no “${text}” for “${label}”.`);
    }
  }
  check(line('Nearest size') === '' && line('Best single size') === '', 'The ticket has another size than the one to cut.');
  check(!holds('no price yet') && !holds('Thread needed'), 'What is for the shop is on the ticket.');

  await sewer.press('Alt+Shift+KeyB');
  await sewer.until(async () => (await sewer.focused()).name.startsWith('Bought'), 'the list does not come');
  await sewer.tabTo('Print…');
  await sewer.press('Enter');
  await dialog.waitFor();
  await preview.getByText(`To buy: ${NOW}`).waitFor();
  await sewer.tabTo('Print');
  await sewer.press('Enter');
  await sewer.until(() => page.evaluate(() => window.asked > 1), 'the browser is not asked to print the list');
  const list = plain((await textOf(await kept(await page.pdf({ preferCSSPageSize: true }), 'to-buy'))).join('\n'));
  for (const text of [`To buy: ${NOW}`, 'Main cloth', metres(figures.cloth), figures.cost.toFixed(2), 'longer skirt']) check(list.includes(plain(text)), `The list on paper has no “${text}”.`);
}

async function main() {
  if (!(await canReadPdf())) {
    console.log('Skipped: pdftotext is not here. Install poppler-utils to have the paper read back.');
    return;
  }
  if (process.env.PICTURES) await mkdir(process.env.PICTURES, { recursive: true });
  const app = await openApp();
  let sewer;
  try {
    const { page, troubles } = await app.page();
    await page.setViewportSize({ width: 1400, height: 1300 });
    sewer = new Sewer(page);
    await start(sewer, BEFORE, async () => {
      await sewer.tabTo('Or choose a file');
      const chooser = page.waitForEvent('filechooser', { timeout: PATIENCE });
      // The browser has to know first that somebody waits for it.
      await page.waitForTimeout(300);
      await sewer.press('Enter');
      await (await chooser).setFiles({ name: 'pattern.csv', mimeType: 'text/csv', buffer: Buffer.from(CSV) });
    });
    await drawnEase(sewer);
    const then = workedOut(BEFORE, nearest(BEFORE), 0);
    await sewer.shows('Fit', LEVELS.map((level) => [`${COLUMN[level]}13`, cm(then.ease[level])]));
    await sewer.until(async () => /^kept/.test(words(await page.locator('.whom').textContent())), 'it is not kept');
    await start(sewer, NOW, async () => {
      await sewer.tabTo('Rows of the chart');
      for (const [at, row] of CSV.split('\n').entries()) {
        if (at > 0) await sewer.press('Enter');
        await sewer.keys.type(row);
      }
    });
    await sewer.picture('started');
    const sizes = await theSizes(sewer);
    const figures = await theSeams(sewer, sizes);
    await theShop(sewer, figures);
    await beside(sewer, figures);
    await onPaper(sewer, figures, sizes);
    check(troubles.length === 0, `The page had trouble: ${troubles.join(' | ')}`);
  } catch (error) {
    await sewer?.picture('where-it-stopped');
    throw error;
  } finally {
    await app.stop();
  }
}

await main();
for (const fault of faults.slice(0, 20)) console.error(fault);
if (checks > 0) console.log(`From a person to the cutting table: ${checks} checks, ${faults.length} faults.`);
if (faults.length > 0) process.exitCode = 1;
