import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { NO_WISH, type FindPanel, type FindWish, type FoundRow } from '../../../src/panels/index.ts';
import '../../../src/panels/find.ts';
import { accessible, button, find, focused, heard, press, tabTo, texts, words } from './support.ts';

const FOUND: FoundRow[] = [
  { place: 'A1 of Fit', kind: 'value', text: 'Full bust' },
  { place: 'C2 of Fit', kind: 'formula', text: '=bust + 2 in' },
  { place: 'A4 of Skirt', kind: 'note', text: 'over the bust' },
  { place: 'D1 of Skirt', kind: 'result', text: 'bust' },
];

async function panel(wish: FindWish = { ...NO_WISH, text: 'bust' }, at = -1, count = FOUND.length): Promise<FindPanel> {
  const made = await fixture<FindPanel>(html`<tt-find .wish=${wish} .found=${wish.text ? FOUND : []} .count=${wish.text ? count : 0} .at=${at} .sheetName=${'Fit'}></tt-find>`);
  made.focus();
  return made;
}
const box = (made: FindPanel, name: string): HTMLInputElement => {
  const label = [...made.renderRoot.querySelectorAll('label')].find((each) => words(each.textContent) === name);
  return label!.querySelector('input')!;
};

describe('find and replace', () => {
  it('asks for what is typed, letter by letter', async () => {
    const made = await panel({ ...NO_WISH });
    const wished = heard<FindWish>(made, 'tt-find');
    expect(focused(made)?.id).to.equal('sought');
    await sendKeys({ type: 'hip' });
    expect(wished.map(({ text }) => text)).to.deep.equal(['h', 'hi', 'hip']);
    expect(wished.at(-1)).to.deep.equal({ ...NO_WISH, text: 'hip' });
    await accessible(made);
  });

  it('lists where it was found, marked, and leads there', async () => {
    const made = await panel();
    expect(texts(made, 'li button')).to.deep.equal(['A1 of Fit Full bust', 'C2 of Fit · formula =bust + 2 in', 'A4 of Skirt · note over the bust', 'D1 of Skirt · result bust']);
    expect(texts(made, 'mark')).to.deep.equal(['bust', 'bust', 'bust', 'bust']);
    expect(words(find(made, '[role=status]').textContent)).to.equal('4 found');
    const gone = heard<{ at: number }>(made, 'tt-find-go');
    await tabTo(made, made.renderRoot.querySelectorAll('li button')[2]!);
    await press('Enter');
    expect(gone).to.deep.equal([{ at: 2 }]);
    await accessible(made);
  });

  it('goes on by Enter and back by Shift + Enter, and says where it is', async () => {
    const made = await panel(undefined, 1);
    const stepped = heard<{ by: number }>(made, 'tt-find-step');
    await press('Enter', 'Shift+Enter');
    await tabTo(made, button(made, 'Next'));
    await press('Enter');
    expect(stepped).to.deep.equal([{ by: 1 }, { by: -1 }, { by: 1 }]);
    expect(words(find(made, '[role=status]').textContent)).to.equal('2 of 4');
    expect(made.renderRoot.querySelector('[aria-current=true]')?.textContent).to.contain('=bust + 2 in');
  });

  it('looks where it is told to', async () => {
    const made = await panel();
    const wished = heard<FindWish>(made, 'tt-find');
    for (const name of ['Results', 'Whole cells', 'In Fit']) {
      await tabTo(made, box(made, name));
      await press('Space');
    }
    expect(wished.map(({ places, whole, onlySheet }) => [places.result, whole, onlySheet])).to.deep.equal([[true, false, false], [false, true, false], [false, false, true]]);
  });

  it('replaces one, or all; a result cannot be', async () => {
    const made = await panel(undefined, 0);
    const replaced = heard<{ at: number | null; by: string }>(made, 'tt-replace');
    await tabTo(made, find(made, '#by'));
    await sendKeys({ type: 'chest' });
    await tabTo(made, button(made, 'Replace this one'));
    await press('Enter');
    await tabTo(made, button(made, 'Replace all 4'));
    await press('Enter');
    expect(replaced).to.deep.equal([{ at: 0, by: 'chest' }, { at: null, by: 'chest' }]);
    made.at = 3;
    await made.updateComplete;
    expect(button(made, 'Replace this one').disabled).to.equal(true);
    made.sentence = 'There is nothing here in which “bust” could be replaced.';
    await made.updateComplete;
    expect(find(made, '[role=alert]').textContent).to.contain('nothing here');
    await accessible(made);
    await tabTo(made, button(made, 'Replace all 4'));
    [made.found, made.count] = [[], 0];
    await made.updateComplete;
    expect(focused(made)?.id, 'where the next word can be typed').to.equal('by');
  });

  it('says when nothing was found, and how many more there are', async () => {
    const made = await panel({ ...NO_WISH, text: 'cuff' }, -1, 0);
    made.found = [];
    await made.updateComplete;
    expect(words(find(made, '[role=status]').textContent)).to.equal('“cuff” was not found.');
    expect([button(made, 'Next').disabled, button(made, 'Replace all').disabled]).to.deep.equal([true, true]);
    const many = await panel(undefined, -1, 1204);
    expect(texts(many, 'p.soft')).to.deep.equal(['And 1,200 more. Next goes through all of them.']);
  });

  it('changes nothing where nothing can be changed', async () => {
    const made = await panel(undefined, 0);
    made.readonly = true;
    await made.updateComplete;
    expect([find<HTMLInputElement>(made, '#by').disabled, button(made, 'Replace this one').disabled, button(made, 'Replace all 4').disabled]).to.deep.equal([true, true, true]);
  });
});
