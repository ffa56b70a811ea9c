import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import type { AsideRow, BookWish, SetAsidePanel, ShelfPanel, ShelfRow } from '../../../src/panels/index.ts';
import '../../../src/panels/shelf.ts';
import '../../../src/panels/set-aside.ts';
import { accessible, button, find, heard, press, tabTo, texts, words } from './support.ts';

const row = (id: string, more: Partial<ShelfRow> = {}): ShelfRow => ({
  id, title: `Skirt ${id}`, person: 'Mara', changed: '25 November 2026, 14:02', saved: '', open: false, place: 'shelf', daysLeft: 0,
  picture: [['Waist', '74 cm'], ['A label longer than the column', '=B1/4']], ...more,
});

async function shelf(more: Partial<ShelfPanel> = {}): Promise<ShelfPanel> {
  const made = await fixture<ShelfPanel>(html`<tt-shelf .books=${[row('a', { open: true }), row('b', { saved: '1 November 2026, 09:00' }), row('c', { place: 'away' }), row('d', { place: 'bin', daysLeft: 1 })]}></tt-shelf>`);
  Object.assign(made, more);
  made.open();
  await made.updateComplete;
  return made;
}

describe('the shelf', () => {
  it('shows each where it lies, with the last change and whether it was saved as a file', async () => {
    const made = await shelf({ promise: 'Save copies as files.' });
    expect(texts(made, 'h3, h4')).to.deep.equal(['On the shelf', 'Skirt a', 'Skirt b', 'Put away', 'Skirt c', 'In the bin', 'Skirt d']);
    expect(words(find(made, 'li').textContent)).to.contain('for Mara Open here. Changed 25 November 2026, 14:02. Never saved as a file.');
    expect(words(made.renderRoot.querySelectorAll('li')[1]!.textContent)).to.contain('Saved as a file 1 November 2026, 09:00.');
    expect(words(made.renderRoot.querySelectorAll('li')[3]!.textContent)).to.contain('Gone for good in 1 day.');
    expect(texts(made, 'li:first-child text').slice(0, 4)).to.deep.equal(['Waist', '74 cm', 'A label lo…', '=B1/4']);
    await accessible(made);
  });

  it('a text from a file is shown as text', async () => {
    const made = await shelf({ books: [row('x', { title: '<img src=x onerror=alert(1)>', person: '<b>Mara</b>', picture: [['<script>']] })] });
    expect(texts(made, 'h4')).to.deep.equal(['<img src=x onerror=alert(1)>']);
    expect(made.renderRoot.querySelectorAll('img, b, script').length).to.equal(0);
  });

  it('each wish by keys', async () => {
    const made = await shelf();
    const wishes = heard<{ id: string; wish: BookWish }>(made, 'tt-book');
    for (const name of ['Copy: Skirt a', 'Open: Skirt b', 'Put away: Skirt b', 'Delete: Skirt b', 'Take out again: Skirt c', 'Take it back: Skirt d']) {
      await tabTo(made, button(made, name));
      await press('Enter');
    }
    expect(wishes.map(({ id, wish }) => `${id} ${wish}`)).to.deep.equal(['a copy', 'b open', 'b put-away', 'b throw-away', 'c take-out', 'd take-back']);
    expect(() => button(made, 'Open: Skirt a'), 'the open one').to.throw();
  });

  it('removes for good only when asked twice', async () => {
    const made = await shelf();
    const wishes = heard<{ id: string; wish: BookWish }>(made, 'tt-book');
    await tabTo(made, button(made, 'Remove now: Skirt d'));
    await press('Enter');
    expect(wishes).to.deep.equal([]);
    expect(find(made, '[role=alert]').textContent).to.contain('cannot be undone');
    await accessible(made);
    await press('Enter');
    expect(wishes).to.deep.equal([{ id: 'd', wish: 'remove' }]);
  });

  it('renames garment and person', async () => {
    const made = await shelf();
    const renamed = heard(made, 'tt-book-rename');
    await tabTo(made, button(made, 'Rename: Skirt b'));
    await press('Enter');
    await made.updateComplete;
    await accessible(made);
    await sendKeys({ type: ' Sunday skirt ' });
    await press('Tab');
    await sendKeys({ type: 'Ines' });
    await press('Enter');
    expect(renamed).to.deep.equal([{ id: 'b', title: 'Sunday skirt', person: 'Ines' }]);
  });

  it('asks before it keeps a part of a file', async () => {
    const made = await shelf({ partFile: { name: '“skirt.json”', problems: ['Line 7 of the file is damaged and was left out.'] } });
    const taken = heard(made, 'tt-part-file');
    expect(words(find(made, '[role=alert]').textContent)).to.contain('Line 7 of the file is damaged');
    await accessible(made);
    await tabTo(made, button(made, 'Keep that part and open it'));
    await press('Enter', 'Tab', 'Enter');
    expect(taken).to.deep.equal([{ take: true }, { take: false }]);
  });
});

describe('what was set aside', () => {
  const ROWS: readonly AsideRow[] = [
    { key: 3, when: '25 November 2026, 14:02', problems: ['Part of it could not be read.'], whole: true, changes: 2 },
    { key: null, when: 'now', problems: ['The change of 14:00 cannot be read.'], whole: false, changes: 1 },
  ];

  it('is shown with what it holds, and can be put back, saved and thrown away', async () => {
    const made = await fixture<SetAsidePanel>(html`<tt-set-aside .rows=${ROWS}></tt-set-aside>`);
    const wishes = heard(made, 'tt-aside');
    made.open();
    await made.updateComplete;
    expect(texts(made, 'h3')).to.deep.equal(['25 November 2026, 14:02: a damaged copy of the workbook and 2 changes', 'now: 1 change']);
    await accessible(made);
    await tabTo(made, button(made, 'Put it back as a workbook of its own'));
    await press('Enter', 'Tab', 'Enter', 'Tab', 'Enter');
    await made.updateComplete;
    expect(wishes).to.deep.equal([{ at: 0, wish: 'put-back' }, { at: 0, wish: 'save' }]);
    expect(find(made, '[role=alert]').textContent).to.contain('cannot be undone');
    await press('Enter');
    expect(wishes.at(-1)).to.deep.equal({ at: 0, wish: 'forget' });
    expect([...made.renderRoot.querySelectorAll('button')].filter(({ textContent }) => textContent === 'Throw it away').length, 'what still lies where it lay').to.equal(1);
  });
});
