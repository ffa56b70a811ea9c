import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { blendedEdge, sizeOutline } from '../../../src/pictures/index.ts';
import '../../../src/panels/size-choice.ts';
import type { SizeChoicePanel } from '../../../src/panels/size-choice.ts';
import type { SizeChoiceChange, SizeChoiceView } from '../../../src/panels/size-choice-view.ts';
import { accessible, button, find, focused, heard, press, tabTo, texts, words } from './support.ts';

const CM = { system: 'cm', inchStep: 8 } as const;
const row = (level: string, raw: string, more: Partial<SizeChoiceView['levels'][number]> = {}) => ({ level, label: level.charAt(0).toUpperCase() + level.slice(1), raw, reads: '', fault: '', hint: '', ...more });

const EMPTY: SizeChoiceView = {
  charts: ['our chart', 'letters'], chart: 'our chart', styles: [{ style: 'fitted', words: 'Fitted' }, { style: 'knit', words: 'Knit' }], style: 'fitted', garments: [], garment: '',
  people: [{ id: 'p1', name: 'Nora' }], levels: [row('high bust', '', { hint: 'High under the arms.' }), row('bust', '92 cm'), row('waist', '')],
  change: '', changeFault: '', apart: '2', seams: '2', cost: 'How it is counted.', answer: null, sentence: 'Type the measures.', target: '', isThere: false, targetFault: '', candidate: '', block: '', readonly: false,
};
const ANSWER: SizeChoiceView = {
  ...EMPTY, sentence: '', garments: ['dress'], garment: 'dress', candidate: 'Measures B3', block: 'Measures A3:B6', target: 'Fit A20:H34',
  levels: [row('bust', '=bust', { reads: '92.0 cm', ease: { low: '', high: '9 cm', usual: 'Usual: 5 cm to 8 cm; from memory.', fault: '' } }), row('waist', 'ninety', { fault: '“ninety” is no length.' })],
  answer: {
    sentence: 'Cut size 12 at the bust and 22 at the waist.',
    levels: [{ label: 'Bust', size: '12', continued: false, why: 'Bust: size 12. Just right.', pins: [] }, { label: 'Waist', size: '22', continued: true, why: 'Waist: size 22.', pins: ['Size 22 is not in the chart.'] }],
    beside: [
      { label: 'Bust', what: 'ease', sizes: [{ size: '10', continued: false, left: '+1.0 cm', under: false }, { size: '12', continued: false, left: '+5.0 cm', under: false }, { size: '14', continued: false, left: '+9.0 cm', under: false }] },
      { label: 'Waist', what: 'ease', sizes: [{ size: '20', continued: false, left: '−4.0 cm', under: true }, { size: '22', continued: true, left: '0.0 cm', under: false }, null] },
    ],
    bust: 'The bust is 4 cm more than the high bust.',
    blends: [{ level: 'bust', label: 'Bust to waist', sentence: 'From size 12 to size 22 over 17 cm.', raw: '', usual: '17 cm', fault: '' }],
    outline: sizeOutline({ levels: [{ name: 'bust', body: 920, size: '12', girth: 970, left: 50 }], isEase: true, unit: 'cm' }, CM),
    edge: blendedEdge({ levels: [{ name: 'bust', size: 0, down: 170 }, { name: 'waist', size: 1 }], sizes: [{ name: '12', girths: [970, 780] }, { name: '22', girths: [1170, 980] }], seams: 2, unit: 'cm' }, CM),
  },
};

const shown = async (view: SizeChoiceView) => {
  const panel = await fixture<SizeChoicePanel>(html`<tt-size-choice .view=${view}></tt-size-choice>`);
  await panel.updateComplete;
  return { panel, wishes: heard<SizeChoiceChange>(panel, 'tt-size-choice') };
};

describe('choose the size', () => {
  it('takes measures by the keys, goes to the first that is missing, and asks when one is left', async () => {
    const { panel, wishes } = await shown(EMPTY);
    panel.focus();
    expect(focused(panel)?.id).to.equal('measure-waist');
    await sendKeys({ type: '29 1/2 in' });
    await press('Tab');
    expect(wishes).to.deep.equal([{ change: 'measure', level: 'waist', value: '29 1/2 in' }]);
    expect(texts(panel, '.note')).to.deep.equal(['Type the measures.']);
    expect(words(find(panel, '#measure-high-bust-says').textContent)).to.equal('High under the arms.');
    await accessible(panel);
  });

  it('takes the selected cell, a block of cells, and a person', async () => {
    const { panel, wishes } = await shown(ANSWER);
    button(panel, 'Take Measures B3 as the waist').click();
    button(panel, 'Take the measures in Measures A3:B6').click();
    const person = find<HTMLSelectElement>(panel, '#person');
    person.value = 'p1';
    person.dispatchEvent(new Event('change'));
    expect(wishes).to.deep.equal([{ change: 'take', level: 'waist' }, { change: 'take-block' }, { change: 'person', value: 'p1' }]);
    const { panel: without } = await shown(EMPTY);
    expect(button(without, 'Take cell as the bust').disabled).to.equal(true);
  });

  it('says the sizes, why, and what the sizes beside them leave, in words and not by colour alone', async () => {
    const { panel } = await shown(ANSWER);
    expect(words(find(panel, '[role=status]').textContent)).to.equal('Cut size 12 at the bust and 22 at the waist.');
    expect(texts(panel, '.chosen dt')).to.deep.equal(['Bust: size 12', 'Waist: size 22continued']);
    expect(texts(panel, '.chosen dd')).to.deep.equal(['Bust: size 12. Just right.', 'Waist: size 22.▲ Size 22 is not in the chart.']);
    expect(texts(panel, 'tbody td')).to.deep.equal(['+1.0 cmsize 10', '+5.0 cmsize 12', '+9.0 cmsize 14', '▲ −4.0 cmsize 20', '0.0 cmsize 22, continued', '–']);
    expect(panel.renderRoot.querySelectorAll('figure svg')).to.have.lengthOf(2);
    expect(texts(panel, '.wrong')).to.deep.equal(['“ninety” is no length.']);
    await accessible(panel);
  });

  it('asks for ease, distance, style and weights', async () => {
    const { panel, wishes } = await shown(ANSWER);
    const type = (selector: string, value: string) => {
      const field = find<HTMLInputElement>(panel, selector);
      field.value = value;
      field.dispatchEvent(new Event('change'));
    };
    type('[aria-label="Least ease wanted at the bust"]', '4 cm');
    type('#down-bust', '16 cm');
    type('#style', 'knit');
    find(panel, 'summary').click();
    type('#change', '1/2 in');
    type('#apart', '3');
    type('#seams', '1');
    expect(wishes).to.deep.equal([
      { change: 'ease', level: 'bust', end: 'low', value: '4 cm' }, { change: 'down', level: 'bust', value: '16 cm' }, { change: 'style', value: 'knit' },
      { change: 'changeCost', value: '1/2 in' }, { change: 'apart', value: '3' }, { change: 'seams', value: '1' },
    ]);
    expect(texts(panel, 'details p')).to.deep.equal(['How it is counted.']);
    await accessible(panel);
  });

  it('puts it in the sheet by the keys, unless something is in the way or it is there', async () => {
    const { panel, wishes } = await shown(ANSWER);
    const put = button(panel, 'Put it in the sheet');
    find(panel, 'summary').focus();
    await tabTo(panel, put);
    await press('Enter');
    expect(wishes).to.deep.equal([{ change: 'put' }]);
    panel.view = { ...ANSWER, targetFault: 'It would cover B4, which is filled.' };
    await panel.updateComplete;
    expect(put.disabled).to.equal(true);
    panel.view = { ...ANSWER, isThere: true };
    await panel.updateComplete;
    expect([put.disabled, words(find(panel, '.put p').textContent)]).to.deep.equal([true, 'It is in Fit A20:H34 now. Select another cell to put it there as well.']);
  });
});
