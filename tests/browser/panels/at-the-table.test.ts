/** The reading view, worked by keys, a finger and buttons. */
import { expect, fixture, html } from '@open-wc/testing';
import { setViewport } from '@web/test-runner-commands';
import type { AtTheTablePanel, TableStep } from '../../../src/panels/index.ts';
import '../../../src/panels/at-the-table.ts';
import { accessible, button, find, heard, press, tabTo, texts, words } from './support.ts';

const step = (id: string, title: string, more: Partial<TableStep> = {}): TableStep => ({
  id, part: 'Skirt', title, from: '', figures: [{ head: '', main: '295.9 cm', also: '116 ½ in', kind: 'figure' }], remark: '', cautions: [], words: [], tick: 'Cut', state: { state: 'no' }, ...more,
});
const STEPS: readonly TableStep[] = [
  step('care', 'Take care', { part: 'Before you begin', figures: [], words: ['Blade: shut it.'], tick: null }),
  step('1', 'Flat width to cut', { cautions: ['Closed, it will not pass.'], remark: 'of every panel' }),
  step('2', 'Side seams', {
    part: 'Seam by seam', from: 'Alterations', tick: 'Done', state: { state: 'changed', was: '−0.3 cm' },
    figures: [{ head: 'Allowance', main: '1.5 cm', also: '⅝ in', kind: 'typed' }, { head: 'Edge moves', main: '−0.4 cm', also: '−⅛ in', kind: 'figure' }],
  }),
];

async function view(at = 0): Promise<{ made: AtTheTablePanel; ticks: { id: string; on: boolean }[] }> {
  const made = await fixture<AtTheTablePanel>(html`<tt-at-the-table .steps=${STEPS} .at=${at} .title=${'Linden tea dress'} .person=${'Aunt Oda'}></tt-at-the-table>`);
  const ticks = heard<{ id: string; on: boolean }>(made, 'tt-tick');
  // As the app does.
  made.addEventListener('tt-step', (event) => { made.at = (event as CustomEvent<{ at: number }>).detail.at; });
  made.focus();
  return { made, ticks };
}

const title = (made: AtTheTablePanel): string => words(find(made, 'h3').textContent);

afterEach(() => setViewport({ width: 800, height: 600 }));

describe('at the table', () => {
  it('goes from step to step by arrows, to the ends by Home and End, and no further', async () => {
    const { made } = await view();
    expect(title(made)).to.equal('Take care');
    await press('ArrowLeft');
    expect(title(made)).to.equal('Take care');
    await press('ArrowRight', 'ArrowRight', 'ArrowRight');
    expect(title(made)).to.equal('Side seams');
    await press('Home');
    expect(title(made)).to.equal('Take care');
    await press('End');
    expect(title(made)).to.equal('Side seams');
    await press('PageUp');
    expect(title(made)).to.equal('Flat width to cut');
  });

  it('ticks by the space bar, and by its button', async () => {
    const { made, ticks } = await view(1);
    await press('Space');
    await tabTo(made, button(made, '☐ Cut'));
    await press('Enter');
    expect(ticks).to.deep.equal([{ id: '1', on: true }, { id: '1', on: true }]);
    made.steps = STEPS.map((each) => (each.id === '1' ? { ...each, state: { state: 'yes' as const } } : each));
    await made.updateComplete;
    expect(button(made, '✓ Cut').getAttribute('aria-pressed')).to.equal('true');
    expect(find<HTMLProgressElement>(made, 'progress').value).to.equal(1);
    await press('Enter');
    expect(ticks.at(-1)).to.deep.equal({ id: '1', on: false });
  });

  it('cannot tick what is only read, nor where nothing can be changed', async () => {
    const { made, ticks } = await view();
    await press('Space');
    made.readonly = true;
    made.at = 1;
    await made.updateComplete;
    await press('Space');
    expect(ticks).to.deep.equal([]);
    expect(button(made, '☐ Cut').disabled).to.equal(true);
  });

  it('turns by a finger across, and scrolls by one up or down', async () => {
    const { made } = await view();
    const swipe = async (across: number, down: number, pointerType = 'touch'): Promise<string> => {
      const page = find(made, '.step');
      const at = { bubbles: true, composed: true, pointerId: 5, isPrimary: true, pointerType };
      page.dispatchEvent(new PointerEvent('pointerdown', { ...at, clientX: 200, clientY: 200 }));
      page.dispatchEvent(new PointerEvent('pointerup', { ...at, clientX: 200 + across, clientY: 200 + down }));
      await made.updateComplete;
      return title(made);
    };
    expect(await swipe(-120, 10)).to.equal('Flat width to cut');
    expect(await swipe(-120, 100)).to.equal('Flat width to cut');
    expect(await swipe(-40, 0)).to.equal('Flat width to cut');
    expect(await swipe(-120, 0, 'mouse')).to.equal('Flat width to cut');
    expect(await swipe(120, 0)).to.equal('Take care');
  });

  it('says when a tick was for other figures, and whether the screen stays on', async () => {
    const { made } = await view(2);
    expect(words(find(made, '.changed').textContent)).to.contain('It was ticked off when it was −0.3 cm.');
    expect(words(find(made, '.said').textContent)).to.equal('0 of 2 ticked off. This browser cannot keep the screen on: let it stay on longer in the device’s own settings.');
    made.awake = 'on';
    await made.updateComplete;
    expect(words(find(made, '.said').textContent)).to.contain('The screen stays on');
    expect(texts(made, 'option')).to.deep.equal(['Take care', 'Flat width to cut', '⚠ Side seams']);
  });

  for (const [width, height] of [[390, 844], [820, 1180]] as const) {
    it(`is read at arm’s length at ${width}, within the window, by everyone`, async () => {
      await setViewport({ width, height });
      const { made } = await view(2);
      await made.updateComplete;
      for (const figure of made.renderRoot.querySelectorAll('.big')) expect(parseFloat(getComputedStyle(figure).fontSize)).to.be.at.least(40);
      for (const figure of made.renderRoot.querySelectorAll('.also')) expect(parseFloat(getComputedStyle(figure).fontSize)).to.be.at.least(26);
      for (const each of made.renderRoot.querySelectorAll('button')) expect(each.getBoundingClientRect().height).to.be.at.least(44);
      for (const each of made.renderRoot.querySelectorAll('button, select, .where span, .big')) expect(each.getBoundingClientRect().right).to.be.at.most(width);
      await accessible(made);
    });
  }

  it('is closed by its button', async () => {
    const { made } = await view();
    const closed = heard(made, 'tt-close');
    await tabTo(made, button(made, 'Close'));
    await press('Enter');
    expect(closed).to.have.length(1);
  });
});
