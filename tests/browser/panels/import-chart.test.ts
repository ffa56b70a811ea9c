import { expect, fixture, html, oneEvent } from '@open-wc/testing';
import { sendKeys, setViewport } from '@web/test-runner-commands';
import { tokens } from '../../../src/look/index.ts';
import type { ImportChart, ImportEvent } from '../../../src/panels/import-chart.ts';
import '../../../src/panels/import-chart.ts';

document.adoptedStyleSheets = [...document.adoptedStyleSheets, tokens.styleSheet!];

const CHART = 'measurement_in,00,0,2,4\nbust_girth,31 1/8,31 3/4,33,34 1/8\nwaist_girth_straight,25 3/8,26 1/8,26 7/8,27 5/8\n';

async function selectAll(): Promise<void> {
  await sendKeys({ down: 'Control' });
  await sendKeys({ press: 'a' });
  await sendKeys({ up: 'Control' });
}

class Desk {
  constructor(readonly panel: ImportChart) {}

  static async open(taken = { sheets: ['Measures'], names: ['waist'] }): Promise<Desk> {
    const panel = await fixture<ImportChart>(html`<tt-import-chart .taken=${taken}></tt-import-chart>`);
    panel.open();
    await panel.updateComplete;
    return new Desk(panel);
  }

  find<T extends HTMLElement = HTMLElement>(selector: string): T {
    const found = this.panel.renderRoot.querySelector<T>(selector);
    if (!found) throw new Error(`no ${selector}`);
    return found;
  }

  has(selector: string): boolean {
    return this.panel.renderRoot.querySelector(selector) !== null;
  }

  get words(): string {
    return this.find('dialog').innerText;
  }

  /** As a file chosen with the button: the picker itself belongs to the browser. */
  async choose(content: BlobPart, name = 'misses_2011.csv'): Promise<void> {
    const files = new DataTransfer();
    files.items.add(new File([content], name, { type: 'text/csv' }));
    const input = this.find<HTMLInputElement>('input[type=file]');
    input.files = files.files;
    input.dispatchEvent(new Event('change'));
    await this.settled();
  }

  async settled(): Promise<void> {
    await new Promise((done) => setTimeout(done, 30));
    await this.panel.updateComplete;
  }

  /** After buttons have faded from one colour to another. */
  async accessible(): Promise<void> {
    await new Promise((done) => setTimeout(done, 200));
    await expect(this.panel).to.be.accessible();
  }

  async paste(text: string): Promise<void> {
    const field = this.find<HTMLTextAreaElement>('textarea');
    field.focus();
    field.value = text;
    field.dispatchEvent(new Event('input'));
    await this.settled();
  }

  async pick(key: string, value: string): Promise<void> {
    const select = this.find<HTMLSelectElement>(`#choose-${key}`);
    select.value = value;
    select.dispatchEvent(new Event('change'));
    await this.settled();
  }

  get table(): string[][] {
    const [table] = this.panel.renderRoot.querySelectorAll('section table');
    return [...(table as HTMLTableElement).rows].map((row) => [...row.cells].map((cell) => cell.textContent!.trim()));
  }

  focused(): Element | null {
    return (this.panel.renderRoot as ShadowRoot).activeElement;
  }
}

describe('the dialog that reads a size chart', () => {
  it('shows what was understood of a file, and the chart as it will stand', async () => {
    const desk = await Desk.open();
    await desk.choose(CHART);
    expect(desk.find('[role=status]').textContent).to.equal('4 sizes, 00 to 4, and 2 measures: 8 figures read, none left over.');
    expect(desk.find<HTMLSelectElement>('#choose-unit').selectedOptions[0]!.textContent).to.equal('as found: inches');
    expect(desk.find('#why-unit').textContent).to.contain('measurement_in');
    expect(desk.find<HTMLSelectElement>('#choose-sizes').selectedOptions[0]!.textContent).to.contain('across');
    expect(desk.table).to.deep.equal([
      ['measurement', '00', '0', '2', '4'],
      ['bust girth', '31 1/8 in', '31 3/4 in', '33 in', '34 1/8 in'],
      ['waist girth straight', '25 3/8 in', '26 1/8 in', '26 7/8 in', '27 5/8 in'],
    ]);
    expect(desk.find<HTMLInputElement>('#sheet-name').value).to.equal('misses 2011');
    await desk.accessible();
  });

  it('makes the chart by keys alone', async () => {
    const desk = await Desk.open();
    await desk.paste(CHART);
    const name = desk.find<HTMLInputElement>('#chart-name');
    for (let tabs = 0; desk.focused() !== name && tabs < 40; tabs++) await sendKeys({ press: 'Tab' });
    expect(desk.focused()).to.equal(name);
    await selectAll();
    await sendKeys({ type: 'misses' });
    await sendKeys({ press: 'Tab' });
    await sendKeys({ press: 'Tab' });
    const imported = oneEvent(desk.panel, 'tt-import') as Promise<ImportEvent>;
    await sendKeys({ press: 'Enter' });
    const { detail, bubbles, composed } = await imported;
    expect([bubbles, composed]).to.deep.equal([true, true]);
    expect([detail.sheetName, detail.chartName, detail.reading.unit.value, detail.reading.sizeLabels.length]).to.deep.equal(['Size chart', 'misses', 'in', 4]);
    expect(desk.find<HTMLDialogElement>('dialog').open).to.equal(false);
    desk.panel.open();
    await desk.settled();
    expect(desk.find<HTMLTextAreaElement>('textarea').value).to.equal('');
  });

  it('takes a dropped file, and dropped text', async () => {
    const desk = await Desk.open();
    const files = new DataTransfer();
    files.items.add(new File([CHART], 'dropped.csv'));
    const over = new DragEvent('dragover', { dataTransfer: files, cancelable: true });
    desk.find('dialog').dispatchEvent(over);
    expect(over.defaultPrevented).to.equal(true);
    desk.find('dialog').dispatchEvent(new DragEvent('drop', { dataTransfer: files, cancelable: true }));
    await desk.settled();
    expect(desk.find<HTMLInputElement>('#sheet-name').value).to.equal('dropped');
    const text = new DataTransfer();
    text.setData('text/plain', 'size\tbust (cm)\n8\t84');
    desk.find('dialog').dispatchEvent(new DragEvent('drop', { dataTransfer: text, cancelable: true }));
    await desk.settled();
    expect(desk.table).to.deep.equal([['size', 'bust'], ['8', '84 cm']]);
  });

  it('reads Windows-1252 as browsers do, and says that it is a guess', async () => {
    const desk = await Desk.open();
    // 0x96 is an en dash, 0xBD is ½, 0x93 and 0x94 are quotation marks.
    const bytes = Uint8Array.from('\x93Karte\x94;;\nGr\xf6\xdfe;36;38\nBrust (cm);84\xbd;86\x9690\n', (c) => c.charCodeAt(0));
    await desk.choose(bytes, 'karte.csv');
    expect(desk.table).to.deep.equal([['“Karte”', '', ''], ['Größe', '36', '38'], ['Brust', '84½ cm', '86–90 cm']]);
    expect(desk.find('#why-encoding').textContent).to.contain('A guess');
    await desk.pick('encoding', 'utf-8');
    expect(desk.table[1]![0]).to.equal('Gr\uFFFD\uFFFDe');
  });

  it('lists what cannot be read by row, column and text, and marks it by more than colour', async () => {
    const desk = await Desk.open();
    await desk.choose('Finished (cm)\nsize,bust,waist\n8,84,6B\n10,ask,72\n');
    expect([...desk.panel.renderRoot.querySelectorAll('table.unreadable tbody tr')].map((row) => [...row.querySelectorAll('td')].slice(0, 3).map((cell) => cell.textContent))).to.deep.equal([['3', '3', '6B'], ['4', '2', 'ask']]);
    expect([...desk.panel.renderRoot.querySelectorAll('td.unread')].map((cell) => cell.textContent!.replace(/\s+/g, ' ').trim())).to.deep.equal(['✕ not read: 6B', '✕ not read: ask']);
    await desk.accessible();
  });

  it('wants a guessed unit to be looked at', async () => {
    const desk = await Desk.open();
    await desk.choose('size,bust,waist\n8,84,66\n10,88,70\n');
    let imported: ImportEvent | null = null;
    desk.panel.addEventListener('tt-import', (event) => { imported = event as ImportEvent; });
    desk.find('footer .main').click();
    await desk.settled();
    expect(imported).to.equal(null);
    expect(desk.focused()).to.equal(desk.find('#unit-seen'));
    expect(desk.find('#unit-missing').textContent).to.contain('Tick this');
    await desk.accessible();
    await sendKeys({ press: 'Space' });
    desk.find('footer .main').click();
    expect(imported).not.to.equal(null);
  });

  it('lets a unit be chosen instead', async () => {
    const desk = await Desk.open();
    await desk.choose('size,bust,waist\n8,84,66\n10,88,70\n');
    await desk.pick('unit', 'in');
    expect(desk.has('#unit-seen')).to.equal(false);
    expect(desk.table[1]).to.deep.equal(['8', '84 in', '66 in']);
    expect(desk.words).to.contain('would be 213 cm: is the unit right?');
    await desk.pick('unit', '');
    expect(desk.table[1]).to.deep.equal(['8', '84 cm', '66 cm']);
  });

  it('corrects the row of headings, the direction and the separator', async () => {
    const desk = await Desk.open();
    await desk.choose('US,8,10\nEU,38,40\nBust (cm),84,88\n');
    await desk.pick('headerRow', '1');
    expect(desk.table).to.deep.equal([['US', '8', '10'], ['EU', '38', '40'], ['Bust', '84 cm', '88 cm']]);
    await desk.pick('sizes', 'down');
    expect(desk.find('[role=status]').textContent).to.contain('1 size and 2 measures');
    await desk.pick('separator', ';');
    expect(desk.find('.fault').textContent).to.contain('No table of figures');
    expect(desk.find<HTMLButtonElement>('footer .main').disabled).to.equal(true);
    await desk.pick('separator', '');
    expect(desk.has('.fault')).to.equal(false);
  });

  it('says why a file is not read, and keeps what was pasted', async () => {
    const desk = await Desk.open();
    await desk.paste('dear reader');
    expect(desk.find('.fault').textContent).to.contain('No table of figures');
    await desk.choose(new Uint8Array(21 * 1024 * 1024), 'big.csv');
    expect(desk.find('.fault').textContent).to.contain('21 MB');
    expect(desk.find<HTMLTextAreaElement>('textarea').value).to.equal('dear reader');
    await desk.choose('', 'empty.csv');
    expect(desk.find('.fault').textContent).to.contain('nothing in this file');
    await desk.accessible();
  });

  it('keeps everything when it is closed and opened again', async () => {
    const desk = await Desk.open();
    await desk.paste(CHART);
    await desk.pick('decimalMark', ',');
    await sendKeys({ press: 'Escape' });
    expect(desk.find<HTMLDialogElement>('dialog').open).to.equal(false);
    desk.panel.open();
    await desk.settled();
    expect(desk.find<HTMLSelectElement>('#choose-decimalMark').value).to.equal(',');
    expect(desk.table).to.have.length(3);
  });

  it('asks for names that are free and can be names', async () => {
    const desk = await Desk.open({ sheets: ['Misses'], names: ['chart'] });
    await desk.choose(CHART, 'misses.csv');
    expect(desk.find<HTMLInputElement>('#sheet-name').value.toLowerCase()).to.equal('misses 2');
    expect(desk.find<HTMLInputElement>('#chart-name').value).to.equal('chart 2');
    const name = desk.find<HTMLInputElement>('#chart-name');
    name.focus();
    await selectAll();
    await sendKeys({ type: 'Chart' });
    await desk.settled();
    expect(desk.find('#chart-name-wrong').textContent).to.contain('already used');
    let heard = false;
    desk.panel.addEventListener('tt-import', () => { heard = true; });
    desk.find('footer .main').click();
    expect([heard, desk.focused()]).to.deep.equal([false, name]);
  });

  it('stays open when the wish is refused', async () => {
    const desk = await Desk.open();
    await desk.choose(CHART);
    desk.panel.addEventListener('tt-import', (event) => event.preventDefault());
    desk.find('footer .main').click();
    expect(desk.find<HTMLDialogElement>('dialog').open).to.equal(true);
    expect(desk.table).to.have.length(3);
  });

  it('shows the beginning of a large chart only', async () => {
    const desk = await Desk.open();
    await desk.choose(`size,${Array.from({ length: 40 }, (_, m) => `m${m} (cm)`).join(',')}\n${Array.from({ length: 400 }, (_, s) => `A${s},${Array.from({ length: 40 }, (__, m) => 20 + m + s).join(',')}`).join('\n')}`);
    expect(desk.table).to.have.length(30);
    expect(desk.table[0]).to.have.length(15);
    expect(desk.words).to.contain('first 30 rows of 401 and 15 columns of 41');
  });

  it('fits a narrow screen', async () => {
    await setViewport({ width: 390, height: 800 });
    const desk = await Desk.open();
    await desk.choose(`size,bust,waist,hip,back waist length,shoulder length\n${'8,84,66,9O,41,12\n'}`);
    const dialog = desk.find('dialog');
    expect(dialog.scrollWidth).to.be.at.most(dialog.clientWidth);
    for (const target of desk.panel.renderRoot.querySelectorAll<HTMLElement>('button, select, #sheet-name, #chart-name, label, summary')) {
      expect(target.getBoundingClientRect().height, target.outerHTML).to.be.at.least(23.9);
      expect(target.getBoundingClientRect().right).to.be.at.most(390.5);
    }
    await desk.accessible();
    await setViewport({ width: 800, height: 600 });
  });

  it('writes no style attribute', async () => {
    const desk = await Desk.open();
    await desk.choose(CHART);
    expect(desk.has('[style]')).to.equal(false);
  });
});
