import { expect, fixture, html } from '@open-wc/testing';
import type { HistoryPanel, HistoryRow } from '../../../src/panels/index.ts';
import '../../../src/panels/history.ts';
import { accessible, button, find, focused, heard, press, tabTo, texts } from './support.ts';

const AREA = { sheet: 1, top: 3, left: 1, bottom: 3, right: 1 };
const today = new Date();
today.setHours(10, 32, 5, 0);
const ROWS: HistoryRow[] = [
  { index: 2, at: today.toISOString(), way: 'undone', label: 'paste 12 cells in Fit', cells: [{ place: 'A1 of Fit', before: 'x', after: '' }], more: 11, area: { ...AREA, bottom: 9 }, canPutBack: false },
  { index: 1, at: today.toISOString(), way: 'done', label: 'type in B4 of Fit', cells: [{ place: 'B4 of Fit', before: '74 cm', after: '75 cm' }], more: 0, area: AREA, canPutBack: true },
  { index: 0, at: '2026-02-27T09:00:00Z', way: 'done', label: 'change the title', cells: [], more: 0, area: null, canPutBack: false },
];

async function panel(rows = ROWS): Promise<HistoryPanel> {
  const made = await fixture<HistoryPanel>(html`<tt-history .rows=${rows} .cell=${'B4 of Fit'}></tt-history>`);
  made.focus();
  return made;
}

describe('the history', () => {
  it('tells what was done, when, where, and what was there before and after', async () => {
    const made = await panel();
    const time = today.toLocaleTimeString([], { hour: '2-digit', minute: '2-digit', second: '2-digit' });
    expect(texts(made, '.what').slice(0, 2)).to.deep.equal([`Undone: paste 12 cells in Fit${time}`, `type in B4 of Fit${time}`]);
    expect(texts(made, 'h3')[0]).to.equal('Today');
    expect(texts(made, 'h3')).to.have.length(2);
    expect([texts(made, 'dt'), texts(made, 'dd')]).to.deep.equal([['A1 of Fit', 'and 11 more cells', 'B4 of Fit'], ['before: x → after: nothing', 'before: 74 cm → after: 75 cm']]);
    await accessible(made);
  });

  it('goes there, puts one cell back, or the whole workbook, by keys', async () => {
    const made = await panel();
    const [gone, cells, books] = [heard(made, 'tt-go'), heard(made, 'tt-restore-cell'), heard(made, 'tt-restore-book')];
    const second = find(made, 'ol > li:nth-child(2)');
    await tabTo(made, second.querySelectorAll('button')[0]!);
    await press('Enter', 'Tab', 'Enter', 'Tab', 'Enter');
    expect([gone, cells, books]).to.deep.equal([[{ area: AREA }], [{ index: 1 }], [{ index: 1 }]]);
    expect(texts(made, 'ol > li:nth-child(2) button')).to.deep.equal(['Go there', 'Put back “74 cm”', 'Workbook as before this']);
    expect(texts(made, 'ol > li:nth-child(3) button')).to.deep.equal(['Workbook as before this']);
    const names = [...made.renderRoot.querySelectorAll('li button')].map((each) => each.getAttribute('aria-label'));
    expect(new Set(names).size, 'each button says what it is about').to.equal(names.length);
  });

  it('keeps the focus when what was offered is done', async () => {
    const made = await panel();
    await tabTo(made, find(made, 'ol > li:nth-child(2)').querySelectorAll('button')[1]!);
    made.rows = ROWS.map((row) => ({ ...row, canPutBack: false }));
    await made.updateComplete;
    expect(focused(made)?.textContent).to.equal('Close');
  });

  it('shows one cell only, and further back, when it is asked for', async () => {
    const made = await panel();
    const [asked, more] = [heard(made, 'tt-history'), heard(made, 'tt-history-more')];
    const box = find<HTMLInputElement>(made, 'input');
    await tabTo(made, box);
    await press('Space');
    expect(asked).to.deep.equal([{ onlyCell: true }]);
    made.onlyCell = true;
    made.rows = [];
    await made.updateComplete;
    expect(texts(made, 'p')).to.deep.equal(['Nothing has changed B4 of Fit as far back as is known.']);
    await accessible(made);
    made.earlier = true;
    await made.updateComplete;
    await tabTo(made, button(made, 'Show earlier changes'));
    await press('Enter');
    expect(more).to.have.length(1);
  });

  it('restores nothing where nothing can be changed', async () => {
    const made = await panel();
    made.readonly = true;
    await made.updateComplete;
    expect([...made.renderRoot.querySelectorAll<HTMLButtonElement>('.do button:disabled')].length).to.equal(4);
  });
});
