import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys, setViewport } from '@web/test-runner-commands';
import type { PutExampleEvent, ReferencePanel, Tried } from '../../../src/panels/index.ts';
import type { Example, FunctionCard, Result } from '../../../src/reckoning/index.ts';
import '../../../src/panels/reference.ts';
import { accessible, button, find, focused, heard, press, tabTo, texts, words } from './support.ts';

const cm = (value: number): Result => ({ kind: 'quantity', value: value * 10, unit: 'cm' });
const one = (result: Result): Example => ({ results: [[result]], height: 1, width: 1 });

function card(name: string, more: Partial<FunctionCard>): FunctionCard {
  return { name, trade: true, topic: 'Pleats', about: `What ${name} tells.`, asks: [], rule: '', source: 'exact geometry', example: `=${name}(1)`, needs: [], units: 'Gives a length.', differs: '', args: [], repeats: 0, ...more };
}

const CARDS: readonly FunctionCard[] = [
  card('PLEAT.DEPTH', {
    about: 'How deep each fold is.', asks: ['how deep should pleats be'], rule: '(cloth − finished) ÷ (2 × folds)', example: '=PLEAT.DEPTH(300 cm, 100 cm, 20)',
    args: [{ name: 'cloth', about: 'flat width of the cloth', kind: 'a length', optional: false }, { name: 'kind', about: 'knife or box', kind: 'one of these words', optional: true, choices: ['knife', 'box'] }],
  }),
  card('PLEAT.COUNT', { asks: ['how many pleats'] }),
  card('SIZE.AT', {
    topic: 'Sizes and charts', about: 'The size that suits a measure.', asks: ['which size am I'], example: '=SIZE.AT(chart, "bust", 37 in)',
    needs: [{ name: 'chart', kind: 'chart', rows: [['', '10', '12'], ['bust', '92 cm', "'97 cm"]] }],
  }),
  card('ROUNDUP', { trade: false, topic: 'Rounding', about: 'Rounds away from zero.', asks: ['always round up'], args: [{ name: 'figure', about: 'what to round', kind: 'a figure', optional: false }], source: 'OpenFormula, section 6.17.7' }),
  card('SORT', { trade: false, topic: 'Blocks of cells', about: 'Puts rows in order.', repeats: 1, args: [{ name: 'block', about: 'what to sort', kind: 'a block of cells', optional: false }], differs: 'Sorts like nothing else.' }),
];

/** Answers as the app does, with what the engine would give. */
async function panel(more: Partial<ReferencePanel> = {}, answer: (formula: string) => Tried = (formula) => ({ formula, example: one(cm(5)) })): Promise<ReferencePanel> {
  const made = await fixture<ReferencePanel>(html`<tt-reference .cards=${CARDS} .place=${'Fit B6'}
    @tt-try-example=${({ detail, target }: CustomEvent<{ formula: string }>) => { (target as ReferencePanel).tried = answer(detail.formula); }}></tt-reference>`);
  Object.assign(made, more);
  await made.updateComplete;
  return made;
}

async function opened(made: ReferencePanel, name?: string): Promise<void> {
  made.open(name);
  await made.updateComplete;
  await new Promise((done) => requestAnimationFrame(done));
}

const dialog = (made: ReferencePanel): HTMLDialogElement => find<HTMLDialogElement>(made, 'dialog');
const chosen = (made: ReferencePanel): string => words(made.renderRoot.querySelector('[aria-selected=true] b')?.textContent);
const title = (made: ReferencePanel): string => words(find(made, '#card-title').textContent);
const result = (made: ReferencePanel): string => words(find(made, '.result').textContent);

describe('the reference', () => {
  beforeEach(() => setViewport({ width: 1200, height: 800 }));

  it('lists every function by topic, and draws nothing while it is closed', async () => {
    const made = await panel();
    expect(made.renderRoot.querySelectorAll('[role=option]')).to.have.length(0);
    await opened(made);
    expect(texts(made, '#found h3')).to.deep.equal(['Pleats', 'Sizes and charts', 'Rounding', 'Blocks of cells']);
    expect(texts(made, '#found b')).to.deep.equal(CARDS.map(({ name }) => name));
    expect(focused(made)).to.equal(find(made, 'input'));
    expect(words(find(made, '[role=status]').textContent)).to.equal('5 functions');
    await accessible(made);
    await press('Escape');
    await made.updateComplete;
    expect([dialog(made).open, made.renderRoot.querySelectorAll('[role=option]').length]).to.deep.equal([false, 0]);
  });

  it('finds by what one wants, and shows the best at once', async () => {
    const made = await panel();
    await opened(made);
    await sendKeys({ type: 'how deep should pleats be' });
    await made.updateComplete;
    expect([chosen(made), title(made)]).to.deep.equal(['PLEAT.DEPTH', 'PLEAT.DEPTH(cloth, [kind])']);
    expect(find(made, 'input').getAttribute('aria-activedescendant')).to.equal('f-PLEAT.DEPTH');
    expect(texts(made, 'dd')).to.deep.equal(['flat width of the cloth a length', 'knife or box one of "knife", "box"; may be left out']);
    expect(words(find(made, '.rule').textContent)).to.equal('(cloth − finished) ÷ (2 × folds)');
    expect(words(find(made, '.card').textContent)).to.contain('Gives a length.').and.to.contain('Source: exact geometry.');
    await accessible(made);
  });

  it('says so when nothing fits', async () => {
    const made = await panel();
    await opened(made);
    await sendKeys({ type: 'xyzzy' });
    await made.updateComplete;
    expect(words(find(made, '[role=status]').textContent)).to.contain('Nothing here has these words.');
    expect(find(made, 'input').getAttribute('aria-expanded')).to.equal('false');
    await accessible(made);
  });

  it('goes along the list by arrow keys, and into the card by Enter', async () => {
    const made = await panel();
    await opened(made);
    await press('ArrowDown', 'ArrowDown', 'ArrowDown', 'ArrowUp');
    await made.updateComplete;
    expect(chosen(made)).to.equal('PLEAT.COUNT');
    await press('ArrowUp', 'ArrowUp');
    await made.updateComplete;
    expect(chosen(made)).to.equal('SORT');
    expect(find(made, 'h3#card-title').textContent).to.contain('…');
    expect(words(find(made, '.note').textContent)).to.equal('Sorts like nothing else.');
    await press('Enter');
    await made.updateComplete;
    expect(focused(made)).to.equal(find(made, '#card-title'));
  });

  it('asks an example of its own accord, or goes to a topic', async () => {
    const made = await panel();
    await opened(made);
    await tabTo(made, button(made, 'which size am I'));
    await press('Enter');
    await made.updateComplete;
    expect([find<HTMLInputElement>(made, 'input').value, chosen(made)]).to.deep.equal(['which size am I', 'SIZE.AT']);
    await press('Escape');
    await opened(made);
    await tabTo(made, button(made, 'Rounding'));
    await press('Enter');
    await made.updateComplete;
    expect(chosen(made)).to.equal('ROUNDUP');
  });

  it('has a live example: changes are worked out', async () => {
    const asked: string[] = [];
    const made = await panel({ as: { system: 'own', inchStep: 8 } }, (formula) => {
      asked.push(formula);
      return { formula, example: one(formula.includes('16') ? cm(6.25) : cm(5)) };
    });
    await opened(made, 'PLEAT.DEPTH');
    expect(focused(made)).to.equal(find(made, '#card-title'));
    expect(result(made)).to.equal('5.0 cm2 in');
    await tabTo(made, find(made, 'textarea'));
    await press('End', 'Backspace', 'Backspace', 'Backspace');
    await sendKeys({ type: '16)' });
    await press('Enter');
    await made.updateComplete;
    expect(asked.at(-1)).to.equal('=PLEAT.DEPTH(300 cm, 100 cm, 16)');
    expect(result(made)).to.contain('6.3 cm');
    expect(find(made, '.result').getAttribute('aria-live')).to.equal('polite');
    await tabTo(made, button(made, 'The example again'));
    await press('Enter');
    await made.updateComplete;
    expect([find<HTMLTextAreaElement>(made, 'textarea').value, result(made)]).to.deep.equal(['=PLEAT.DEPTH(300 cm, 100 cm, 20)', '5.0 cm2 in']);
  });

  it('works out after a pause too, and shows only the answer to what stands there', async () => {
    const made = await panel();
    const asked = heard<{ formula: string }>(made, 'tt-try-example');
    await opened(made, 'PLEAT.DEPTH');
    await tabTo(made, find(made, 'textarea'));
    await press('End');
    await sendKeys({ type: ' + 1 cm' });
    await made.updateComplete;
    expect(result(made)).to.equal('Working it out…');
    await new Promise((done) => setTimeout(done, 400));
    await made.updateComplete;
    expect(asked.map(({ formula }) => formula)).to.deep.equal(['=PLEAT.DEPTH(300 cm, 100 cm, 20)', '=PLEAT.DEPTH(300 cm, 100 cm, 20) + 1 cm']);
    expect(result(made)).to.equal('5.0 cm2 in');
  });

  it('shows errors, words, and blocks with what is left of them', async () => {
    const answers: Record<string, Tried> = {
      '=SORT(1)': { formula: '=SORT(1)', example: { results: [[cm(86), cm(92)], [cm(98), { kind: 'empty' }]], height: 9, width: 2 } },
      '=PLEAT.COUNT(1)': { formula: '=PLEAT.COUNT(1)', example: one({ kind: 'error', sentence: 'PLEAT.COUNT needs spacing too.' }) },
      '=ROUNDUP(1)': { formula: '=ROUNDUP(1)', sentence: 'It was tried twice and took too long.' },
      '=SIZE.AT(chart, "bust", 37 in)': { formula: '=SIZE.AT(chart, "bust", 37 in)', example: one({ kind: 'text', text: '10' }) },
    };
    const made = await panel({}, (formula) => answers[formula]!);
    await opened(made, 'SORT');
    expect(texts(made, '.result td')).to.deep.equal(['86.0 cm', '92.0 cm', '98.0 cm', '']);
    expect(result(made)).to.contain('The beginning of 9 rows and 2 columns.');
    await accessible(made);
    made.close();
    for (const [name, said] of [['PLEAT.COUNT', 'PLEAT.COUNT needs spacing too.'], ['ROUNDUP', 'It was tried twice and took too long.']] as const) {
      const other = await panel({}, (formula) => answers[formula]!);
      await opened(other, name);
      expect(words(find(other, '.fault').textContent)).to.equal(said);
      other.close();
    }
    const size = await panel({}, (formula) => answers[formula]!);
    await opened(size, 'SIZE.AT');
    expect(result(size)).to.equal('10');
    expect(words(find(size, 'caption').textContent)).to.equal('chart, with invented figures');
    expect(texts(size, '.cells td')).to.deep.equal(['', '10', '12', 'bust', '92 cm', '97 cm']);
    await accessible(size);
  });

  it('puts the formula into the selected cell and closes', async () => {
    const made = await panel({ filled: true });
    const put = heard<PutExampleEvent['detail']>(made, 'tt-put-example');
    await opened(made, 'SIZE.AT');
    await tabTo(made, button(made, 'Put it into Fit B6, in place of what is there'));
    await press('Enter');
    await made.updateComplete;
    expect(put.map(({ formula, needs }) => [formula, needs.map(({ name }) => name)])).to.deep.equal([['=SIZE.AT(chart, "bust", 37 in)', ['chart']]]);
    expect(dialog(made).open).to.equal(false);
  });

  it('stays open and says why, where it was refused; offers nothing where nothing can be put', async () => {
    const made = await panel();
    made.addEventListener('tt-put-example', (event) => {
      event.preventDefault();
      made.sentence = 'Nothing can be changed here: open in another tab.';
    });
    await opened(made, 'ROUNDUP');
    await tabTo(made, button(made, 'Put it into Fit B6'));
    await press('Enter');
    await made.updateComplete;
    expect([dialog(made).open, words(find(made, '[role=alert]').textContent)]).to.deep.equal([true, 'Nothing can be changed here: open in another tab.']);
    await accessible(made);
    made.place = '';
    await made.updateComplete;
    expect(button(made, 'Put it into the selected cell').disabled).to.equal(true);
  });

  it('covers the list with the card where there is no room for both', async () => {
    await setViewport({ width: 390, height: 800 });
    const made = await panel();
    await opened(made);
    const seen = (selector: string) => find(made, selector).getClientRects().length > 0;
    expect([seen('input'), seen('.side.one')]).to.deep.equal([true, false]);
    await sendKeys({ type: 'round up' });
    await press('Enter');
    await made.updateComplete;
    expect([seen('input'), seen('.side.one'), title(made)]).to.deep.equal([false, true, 'ROUNDUP(figure)']);
    expect(dialog(made).scrollWidth).to.be.at.most(390);
    await accessible(made);
    await press('Shift+Tab');
    expect(focused(made)).to.equal(button(made, 'Back to the list'));
    await press('Enter');
    await made.updateComplete;
    await new Promise((done) => requestAnimationFrame(done));
    expect([seen('input'), focused(made)]).to.deep.equal([true, find(made, 'input')]);
    expect(chosen(made)).to.equal('ROUNDUP');
  });

  it('tells how to use it while the functions are not known yet', async () => {
    const made = await panel({ cards: [] });
    await opened(made);
    expect(words(find(made, '[role=status]').textContent)).to.contain('as soon as the sums are ready');
    made.cards = CARDS;
    await made.updateComplete;
    expect(made.renderRoot.querySelectorAll('[role=option]')).to.have.length(CARDS.length);
  });
});
