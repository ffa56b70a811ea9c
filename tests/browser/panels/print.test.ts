/** The dialog that asks what to print, worked by keys; and the paper it shows. */
import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import type { PrintChoice, PrintPanel, Ticket, TicketRow } from '../../../src/panels/index.ts';
import '../../../src/panels/print.ts';
import { accessible, button, find, focused, heard, press, tabTo } from './support.ts';

const CHOICE: PrintChoice = { what: 'ticket', paper: 'A4', across: false, out: [], pictures: [], radius: '', label: '' };
const row = (key: string, label: string, pictured = false): TicketRow => ({
  key, sheet: 1, label, from: '', weight: 6, figures: [{ cell: { sheet: 1, row: 0, col: 1 }, head: '', main: '6.0 cm', also: '2 ⅜ in', kind: 'figure' }],
  pictured: pictured ? { sheet: 1, row: 0, col: 1 } : null,
});
const PARTS = [{ name: 'Seam by seam', rows: [row('1 Side', 'Side seams', true), row('1 Back', 'Centre back')] }];
const TICKET: Ticket = { what: 'ticket', title: 'Linden tea dress', person: 'Aunt Oda', date: '25 November 2026', parts: PARTS, pictures: [], left: [{ name: 'Measures', rows: 2 }], cautions: [{ place: 'Fit B13', text: 'Too little ease.' }] };

async function dialog(choice: Partial<PrintChoice> = {}): Promise<{ made: PrintPanel; choices: PrintChoice[] }> {
  const made = await fixture<PrintPanel>(html`<tt-print></tt-print>`);
  made.choice = { ...CHOICE, ...choice };
  made.offer = { sheet: 'Fit', parts: PARTS, radii: [{ label: 'Circle skirt, Radius', raw: '25.3 cm' }] };
  made.pages = [TICKET];
  const choices = heard<PrintChoice>(made, 'tt-print-choice');
  // As the app does: what was chosen is shown.
  made.addEventListener('tt-print-choice', (event) => { made.choice = (event as CustomEvent<PrintChoice>).detail; });
  made.open();
  await made.updateComplete;
  return { made, choices };
}

describe('what to print', () => {
  it('begins at what is chosen, and another is chosen by arrows', async () => {
    const { made, choices } = await dialog({ what: 'sheet' });
    expect((focused(made) as HTMLInputElement).value).to.equal('sheet');
    await press('ArrowDown');
    await press('ArrowDown');
    expect(choices.map(({ what }) => what)).to.deep.equal(['book', 'ticket']);
    await accessible(made);
  });

  it('takes rows off the ticket one by one and part by part, and puts pictures on it', async () => {
    const { made, choices } = await dialog();
    await tabTo(made, find(made, '[data-key="1 Back"]'));
    await press('Space');
    expect(choices.at(-1)!.out).to.deep.equal(['1 Back']);
    expect(find<HTMLInputElement>(made, '[data-part]').indeterminate).to.equal(true);
    await press('Shift+Tab');
    await press('Space');
    expect(choices.at(-1)!.pictures).to.deep.equal(['1 Side']);
    await press('Shift+Tab', 'Shift+Tab');
    await press('Space');
    expect(choices.at(-1)!.out).to.deep.equal([]);
    await press('Space');
    expect([...choices.at(-1)!.out].sort()).to.deep.equal(['1 Back', '1 Side']);
  });

  it('is told a radius, and prints when asked', async () => {
    const { made, choices } = await dialog({ what: 'curve' });
    let asked = 0;
    made.addEventListener('tt-print-now', () => { asked += 1; });
    await tabTo(made, find(made, '[name=radius]'));
    await sendKeys({ type: '4 7/8 in' });
    await press('Tab');
    expect(choices.at(-1)).to.deep.include({ radius: '4 7/8 in', label: 'Curve' });
    made.sentence = 'A curve has a radius above 0.';
    await made.updateComplete;
    expect(button(made, 'Print').disabled).to.equal(true);
    made.sentence = '';
    await made.updateComplete;
    await tabTo(made, button(made, 'Print'));
    await press('Enter');
    expect(asked).to.equal(1);
    await press('Escape');
    expect(find<HTMLDialogElement>(made, 'dialog').open).to.equal(false);
  });

  it('shows the ticket as it will be, and that it fits a page', async () => {
    const { made } = await dialog();
    const paper = find<HTMLElement>(made, 'tt-paper');
    const words = paper.shadowRoot!.textContent!.replace(/\s+/g, ' ');
    for (const each of ['Cutting ticket: Linden tea dress', 'for Aunt Oda', 'Fit B13: Too little ease.', 'Side seams', '6.0 cm', '2 ⅜ in']) expect(words).to.contain(each);
    await new Promise((drawn) => { setTimeout(drawn, 50); });
    expect(find(made, '[role=status]').textContent).to.equal('It fits one page.');
    await accessible(made);
  });
});

describe('paper', () => {
  it('draws its curve and its square at full size', async () => {
    const { made } = await dialog({ what: 'curve' });
    made.pages = [{ what: 'curve', title: 'Linden tea dress', person: '', date: '', label: 'Neck', radius: 124, shown: '12.4 cm' }];
    await made.updateComplete;
    const paper = find<HTMLElement & { updateComplete: Promise<unknown> }>(made, 'tt-paper');
    await paper.updateComplete;
    const svg = paper.shadowRoot!.querySelectorAll('svg');
    expect([...svg].map((each) => [each.getAttribute('width'), each.getAttribute('viewBox')])).to.deep.equal([['180mm', '0 0 180 226']]);
    expect(paper.shadowRoot!.querySelector('.square')!.getAttribute('d')).to.match(/h100v-100h-100Z$/);
    expect(paper.shadowRoot!.querySelectorAll('[style]').length).to.equal(0);
  });
});
