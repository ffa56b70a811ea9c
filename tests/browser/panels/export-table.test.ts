import { expect, fixture, html, oneEvent } from '@open-wc/testing';
import { sendKeys, setViewport } from '@web/test-runner-commands';
import { tokens } from '../../../src/look/index.ts';
import { quantity, type UnitCode } from '../../../src/quantities/index.ts';
import type { OutCell } from '../../../src/tables/index.ts';
import type { ExportTable, SaveFileEvent } from '../../../src/panels/export-table.ts';
import '../../../src/panels/export-table.ts';

document.adoptedStyleSheets = [...document.adoptedStyleSheets, tokens.styleSheet!];

const t = (text: string): OutCell => ({ kind: 'text', text });
const q = (amount: number, unit: UnitCode): OutCell => ({ kind: 'quantity', quantity: quantity(amount, unit) });
const GRID: OutCell[][] = [[t('Size'), t('Bust'), t('Ease')], [t('8'), q(36.25, 'in'), q(92.075, 'cm')], [t('=10'), q(37.3, 'in'), q(-2, 'cm')]];

async function open(grid: OutCell[][] = GRID): Promise<ExportTable> {
  const panel = await fixture<ExportTable>(html`<tt-export-table .grid=${grid} .title=${'Linden dress: Fit'}></tt-export-table>`);
  panel.open();
  await panel.updateComplete;
  await panel.updateComplete;
  return panel;
}
const find = <T extends HTMLElement>(panel: ExportTable, selector: string): T => panel.renderRoot.querySelector<T>(selector)!;
const preview = (panel: ExportTable): string => find(panel, 'pre').textContent!;
async function click(panel: ExportTable, selector: string): Promise<void> {
  find(panel, selector).click();
  await panel.updateComplete;
}

describe('the dialog that saves CSV', () => {
  it('shows the first lines as they will stand in the file', async () => {
    const panel = await open();
    expect(preview(panel)).to.equal("Size,Bust,Ease\n8,36 1/4 in,92.1 cm\n'=10,37 1/4 in,-2.0 cm\n");
    await click(panel, 'input[value=exact]');
    expect(preview(panel)).to.contain("'=10,37.3 in,-2 cm");
    await click(panel, 'input[value=heading]');
    expect(preview(panel)).to.equal("Size,Bust (in),Ease (cm)\n8,36.25,92.075\n'=10,37.3,-2\n");
    await expect(panel).to.be.accessible();
  });

  it('says what is hidden and left out', async () => {
    const panel = await fixture<ExportTable>(html`<tt-export-table .grid=${GRID} .title=${'Fit'} .leftOut=${'3 hidden rows'}></tt-export-table>`);
    panel.open();
    await panel.updateComplete;
    expect(find(panel, '.note').textContent).to.equal('Only what shows is saved: 3 hidden rows left out. Show them first to have them in the file.');
  });

  it('has a decimal comma only beside the semicolon', async () => {
    const panel = await open();
    expect(find<HTMLInputElement>(panel, 'input[name=decimalMark]').disabled).to.equal(true);
    await click(panel, 'input[value=";"]');
    await click(panel, 'input[name=decimalMark]');
    expect(preview(panel)).to.contain('8;36 1/4 in;92,1 cm');
    await click(panel, 'input[value=","]');
    expect(preview(panel)).to.contain('8,36 1/4 in,92.1 cm');
    expect(find<HTMLInputElement>(panel, 'input[name=decimalMark]').checked).to.equal(false);
  });

  it('says how many texts are guarded, and that units stay where they are mixed', async () => {
    const panel = await open([[t('a'), t('b')], [q(1, 'in'), t('=1')], [q(1, 'cm'), t('-x')]]);
    expect(find(panel, '.note').textContent).to.contain('2 texts begin like a formula');
    await click(panel, 'input[value=heading]');
    expect(find(panel, 'dialog').innerText).to.contain('No column and no row has only one unit');
    await expect(panel).to.be.accessible();
  });

  it('saves by keys alone, with a mark and CR LF', async () => {
    const panel = await open();
    for (let tabs = 0; (panel.renderRoot as ShadowRoot).activeElement !== find(panel, 'footer .main') && tabs < 30; tabs++) await sendKeys({ press: 'Tab' });
    const saved = oneEvent(panel, 'tt-save-file') as Promise<SaveFileEvent>;
    await sendKeys({ press: 'Enter' });
    const { detail } = await saved;
    expect(detail.name).to.equal('Linden dress Fit.csv');
    expect(detail.blob.type).to.equal('text/csv;charset=utf-8');
    const bytes = new Uint8Array(await detail.blob.arrayBuffer());
    expect([...bytes.slice(0, 3)]).to.deep.equal([0xef, 0xbb, 0xbf]);
    expect(new TextDecoder().decode(bytes)).to.equal("Size,Bust,Ease\r\n8,36 1/4 in,92.1 cm\r\n'=10,37 1/4 in,-2.0 cm\r\n");
    expect(find<HTMLDialogElement>(panel, 'dialog').open).to.equal(false);
  });

  it('copies, or says that it cannot', async () => {
    const panel = await open();
    find(panel, 'footer button').click();
    for (let wait = 0; find(panel, '[role=status]').textContent === '' && wait < 50; wait++) await new Promise((done) => setTimeout(done, 20));
    expect(find(panel, '[role=status]').textContent).to.match(/^(?:Copied\.|The browser does not allow copying here\. Save the file instead\.)$/);
  });

  it('shows ten lines of many, and fits a narrow screen', async () => {
    await setViewport({ width: 390, height: 800 });
    const panel = await open(Array.from({ length: 50 }, (_, r) => Array.from({ length: 30 }, (__, c) => q(r + c, 'cm'))));
    expect(preview(panel)).to.contain('… 40 more lines');
    const dialog = find(panel, 'dialog');
    expect(dialog.scrollWidth).to.be.at.most(dialog.clientWidth);
    expect(panel.renderRoot.querySelector('[style]')).to.equal(null);
    expect(panel.hasAttribute('title')).to.equal(false);
    await expect(panel).to.be.accessible();
    await setViewport({ width: 800, height: 600 });
  });
});
