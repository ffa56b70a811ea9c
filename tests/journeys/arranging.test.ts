/** A list of pieces that is filled, sorted, matched, found in, noted and looked back on, with the keys alone. */
import { expect, waitUntil } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { App, press, words } from './app.ts';

let app: App;

before(async function () {
  this.timeout(60_000);
  app = await App.open();
});
beforeEach(function () { this.timeout(60_000); });
afterEach(() => app.expectNoTrouble());
after(() => app.close());

/** Selects a block: by its name at the left of the entry line. */
const select = (block: string): Promise<void> => app.go(block);

/** The cells of a block as they are shown, row by row. */
function block(columns: string, from: number, to: number): string[][] {
  return Array.from({ length: to - from + 1 }, (_, at) => [...columns].map((letter) => app.shown(`${letter}${from + at}`)));
}

/** The words that a button beside the cells is known by. */
const undoTitle = (): string => [...app.page.querySelectorAll('header button')].map((each) => each.getAttribute('aria-label') ?? '').find((name) => name.startsWith('Undo')) ?? '';

/** From a panel at the side. */
async function backToCells(): Promise<void> {
  await app.press('Escape');
  expect(app.focusInCells, 'Escape leads back to the cells').to.equal(true);
}

describe('a list of pieces', () => {
  it('is numbered and measured by filling', async () => {
    await app.run('Add a blank sheet');
    await app.fill('A1', [['Piece', 'Width', 'With seams', 'Size'], ['Piece 1', '2 1/4 in', '=B2+3 cm', 'XL']]);
    await app.put('B3', '2 1/2 in');
    await select('A2:A7');
    await app.press('Alt+Shift+D');
    expect(app.said).to.equal('');
    expect(undoTitle()).to.equal('Undo: fill 5 cells in New sheet');
    await select('B2:B7');
    await app.press('Alt+Shift+D');
    await select('C2:C7');
    await app.press('Alt+Shift+D');
    expect(block('A', 2, 7).flat()).to.deep.equal(['Piece 1', 'Piece 2', 'Piece 3', 'Piece 4', 'Piece 5', 'Piece 6']);
    expect(app.shown('B7')).to.match(/^3 .* in$/);
    await app.go('B7');
    expect(app.typed).to.equal('3 1/2 in');
    await app.go('C7');
    expect(app.typed).to.equal('=B7+3 cm');
  });

  it('is sorted by size, and every formula keeps its result', async () => {
    await app.fill('D2', [['XL'], ['S'], ['M'], ['XS'], ['L'], ['XXL']]);
    await app.put('F1', '=C4');
    await app.put('F2', '=SUM(B2:B7)');
    const before = new Map(block('ABC', 2, 7).map(([piece, ...rest]) => [piece, rest.join(' ')]));
    const [one, sum] = [app.shown('F1'), app.shown('F2')];
    await app.go('D3');
    await press('Alt+Shift+S');
    await waitUntil(() => app.part<HTMLDialogElement>('dialog', app.inside('tt-sort')).open);
    expect(app.read('tt-sort')).to.contain('Sort the rows of A1:D7 of New sheet');
    expect(app.focused?.getAttribute('aria-label')).to.equal('By column');
    await app.tabTo('Sort 6 rows');
    await app.press('Enter');
    expect(block('AD', 2, 7)).to.deep.equal([['Piece 4', 'XS'], ['Piece 2', 'S'], ['Piece 3', 'M'], ['Piece 5', 'L'], ['Piece 1', 'XL'], ['Piece 6', 'XXL']]);
    for (const [piece, ...rest] of block('ABC', 2, 7)) expect(rest.join(' '), piece).to.equal(before.get(piece));
    expect([app.shown('F1'), app.shown('F2')]).to.deep.equal([one, sum]);
    expect(undoTitle()).to.equal('Undo: sort 6 rows in New sheet');
    await app.press('Control+z');
    expect(app.said).to.equal('Undone: sort 6 rows in New sheet');
    expect(block('D', 2, 3)).to.deep.equal([['XL'], ['S']]);
    await app.press('Control+Shift+z');
  });

  it('shows only rows that match, until all are wanted again', async () => {
    await app.go('B2');
    await press('Alt+Shift+M');
    const filter = app.inside('tt-filter');
    await waitUntil(() => app.part<HTMLDialogElement>('dialog', filter).open);
    await app.tabTo('How, condition 1');
    await sendKeys({ type: 'is less than' });
    await app.tabTo('What, condition 1');
    await sendKeys({ type: '3' });
    await app.press('Enter');
    await waitUntil(() => filter.querySelector('[role=alert]'));
    expect(words(filter.querySelector('[role=alert]')!.textContent)).to.equal('The figures in column B of New sheet have a unit: write one after 3, such as cm or in.');
    await sendKeys({ type: ' in' });
    await app.press('Enter');
    expect(app.part<HTMLDialogElement>('dialog', filter).open).to.equal(false);
    expect(undoTitle()).to.equal('Undo: show only rows that match in New sheet');
    await app.run('Show also rows that do not match');
    expect(block('A', 2, 7).flat()).to.deep.equal(['Piece 4', 'Piece 2', 'Piece 3', 'Piece 5', 'Piece 1', 'Piece 6']);
  });

  it('moves a row by keys, with all that points at it', async () => {
    await app.go('A2');
    await app.press('Alt+Shift+ArrowDown', 'Alt+Shift+ArrowDown');
    expect(block('A', 2, 4).flat()).to.deep.equal(['Piece 2', 'Piece 3', 'Piece 4']);
    expect(app.active).to.equal('A4');
    await app.go('F4');
    expect(app.typed).to.equal('=SUM(B2:B7)');
  });

  it('has a note kept with a cell, found again and replaced', async () => {
    await app.go('A3');
    await press('Alt+Shift+N');
    await waitUntil(() => app.part<HTMLDialogElement>('dialog', app.inside('tt-note')).open);
    await sendKeys({ type: 'cut twice, doubled' });
    await app.press('Control+Enter');
    await press('Control+f');
    await waitUntil(() => app.page.querySelector('tt-find'));
    await sendKeys({ type: 'doubled' });
    const find = app.inside('tt-find');
    await waitUntil(() => words(find.querySelector('[role=status]')!.textContent) === '1 found');
    await app.press('Enter');
    expect(app.active).to.equal('A3');
    expect(words(find.querySelector('li')!.textContent)).to.equal('A3 of New sheet · note cut twice, doubled');
    await app.tabTo('Replace with');
    await sendKeys({ type: 'selvedge' });
    await app.tabTo('Replace all');
    await app.press('Enter');
    expect(undoTitle()).to.equal('Undo: replace “doubled” in 1 cell of New sheet');
    await backToCells();
    expect(app.spoken('A3')).to.contain('selvedge');
  });

  it('looks as is chosen, and the choice is kept', async () => {
    await app.go('B3');
    await press('Alt+Shift+F');
    await waitUntil(() => app.page.querySelector('tt-cell-format'));
    await sendKeys({ type: 'Length' });
    await press('Enter');
    await waitUntil(() => app.shown('B3').endsWith('cm'), 'shown in cm');
    await backToCells();
    await app.go('B3');
    expect(app.typed).to.equal('2 3/4 in');
  });
});

describe('what was done', () => {
  const rows = (): string[] => [...app.inside('tt-history').querySelectorAll('.what span')].map((each) => words(each.textContent));

  it('stands in the history, cell by cell when that is wanted', async () => {
    await app.put('E1', '12 cm');
    await app.put('E1', '13 cm');
    await app.go('E1');
    await app.run('History of this cell');
    await waitUntil(() => app.page.querySelector('tt-history'));
    expect(rows()).to.deep.equal(['type in E1 of New sheet', 'type in E1 of New sheet']);
    expect([...app.inside('tt-history').querySelectorAll('dd')].map((each) => words(each.textContent))).to.deep.equal(['before: 12 cm → after: 13 cm', 'before: nothing → after: 12 cm']);
    await app.tabTo('Put back “12 cm”');
    await app.press('Enter');
    expect(app.shown('E1')).to.equal('12.0 cm');
    expect(undoTitle()).to.contain('restore E1 of New sheet as it was before');
    await backToCells();
  });

  it('survives the closing of the page, and can be undone after it', async () => {
    await app.kept();
    const before = app.texts();
    const title = undoTitle();
    await app.reload();
    await app.openSheet('New sheet');
    await waitUntil(() => undoTitle() === title, 'the past is read again');
    expect(app.texts()).to.deep.equal(before);
    await app.press('Control+z');
    expect(app.shown('E1')).to.equal('13.0 cm');
  });

  it('leads back to the workbook as it was, and forward again', async () => {
    const now = app.texts();
    await app.press('Alt+Shift+H');
    const history = app.inside('tt-history');
    const first = [...history.querySelectorAll('ol > li')].find((each) => words(each.textContent).includes('sort 6 rows'))!;
    const button = [...first.querySelectorAll('button')].at(-1)!;
    for (let tabs = 0; app.focused !== button && tabs < 80; tabs++) await press('Tab');
    await app.press('Enter');
    expect(app.said).to.equal('The workbook is as it was then. This too can be undone.');
    expect(block('D', 2, 3)).to.deep.equal([['XL'], ['S']]);
    await backToCells();
    await app.press('Control+z');
    expect(app.texts()).to.deep.equal(now);
  });
});
