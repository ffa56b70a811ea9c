import { expect, fixture, html } from '@open-wc/testing';
import type { WorkingPanel } from '../../../src/panels/index.ts';
import '../../../src/panels/index.ts';
import { quantity, type ShowAs, type UnitCode } from '../../../src/quantities/index.ts';
import type { Result, Working } from '../../../src/reckoning/index.ts';
import type { Area } from '../../../src/workbook/index.ts';
import { accessible, find, heard, press, tabTo, texts, words } from './support.ts';

const q = (amount: number, unit: UnitCode): Result => ({ kind: 'quantity', value: quantity(amount, unit).value, unit });
const at = (row: number, col: number): Area => ({ sheet: 1, top: row, left: col, bottom: row, right: col });

/** Ease at the waist: 84 cm finished on a body of 77.5 cm. */
const EASE: Working = {
  result: q(6.5, 'cm'),
  call: {
    name: 'EASE', about: 'How much a garment is larger than the body.', rule: 'finished − body', source: 'common practice',
    given: [
      { name: 'finished', about: 'measure of the garment', value: q(84, 'cm'), from: at(11, 2) },
      { name: 'body', about: 'measure of the body', value: q(77.5, 'cm'), from: null },
    ],
    steps: [{ words: 'the ease', sum: [q(84, 'cm'), ' − ', q(77.5, 'cm')], value: q(6.5, 'cm') }],
    cautions: [{ sentence: 'Under 2 cm there is no room to sit down.', mend: q(2, 'cm') }],
  },
  uses: [{ area: at(11, 2), text: 'C12', value: q(84, 'cm') }],
};

async function panel(properties: Partial<WorkingPanel>): Promise<WorkingPanel> {
  const made = await fixture<WorkingPanel>(html`<tt-working></tt-working>`);
  Object.assign(made, properties);
  await made.updateComplete;
  return made;
}
const read = (made: WorkingPanel): string => words((made.renderRoot as ShadowRoot).textContent);
const show = (system: ShowAs['system']): ShowAs => ({ system, inchStep: 8 });

describe('the working beside the cells', () => {
  it('shows the note on the cell', async () => {
    const made = await panel({ place: 'Fit B2', raw: '94 cm', result: q(94, 'cm'), note: 'over the blouse' });
    expect(words(find(made, '.kept').textContent)).to.equal('Note. over the blouse');
    await accessible(made);
  });

  it('shows the figure, the rule, each step and where what was put in came from', async () => {
    const made = await panel({ heading: 'Waist ease', place: 'Fit C13', raw: '=EASE(C12, C2)', result: q(6.5, 'cm'), working: EASE });
    expect(find(made, 'h2').textContent).to.equal('Waist ease');
    expect(words(find(made, '.answer').textContent)).to.equal('6.5 cm2 ½ in');
    expect(texts(made, 'ol li')).to.deep.equal(['the ease 84.0 cm − 77.5 cm = 6.5 cm (2 ½ in)']);
    expect(read(made)).to.contain('finished − body').and.to.contain('Source: common practice.');
    expect(read(made)).to.contain('Mind. Under 2 cm there is no room to sit down. 2.0 cm');
    expect(texts(made, 'dl > *')).to.deep.equal(['finished ↗', '84.0 cm', 'measure of the garment', 'body', '77.5 cm', 'measure of the body']);
    await accessible(made);
  });

  it('goes where a figure came from, by keys', async () => {
    const made = await panel({ raw: '=EASE(C12, C2)', result: q(6.5, 'cm'), working: EASE });
    const gone = heard<{ area: Area }>(made, 'tt-go');
    await tabTo(made, find(made, 'dt button'));
    await press('Enter');
    expect(gone).to.deep.equal([{ area: at(11, 2) }]);
  });

  it('shows each figure in the chosen system first, and never twice', async () => {
    const said = async (system: ShowAs['system'], result: Result) => words(find(await panel({ raw: '=B1', result, as: show(system) }), '.answer').textContent).replace(/ ?in(?=\d)/, ' in ');
    expect(await said('own', q(94, 'cm'))).to.equal('94.0 cm37 in');
    expect(await said('in', q(94, 'cm'))).to.equal('37 in 94.0 cm');
    expect(await said('cm', q(2.25, 'in'))).to.equal('5.7 cm2 ¼ in');
    expect(await said('both', q(2.25, 'in'))).to.equal('2 ¼ in 5.7 cm');
    expect(await said('both', q(8, ''))).to.equal('8');
    expect(await said('in', q(6.4, '%'))).to.equal('6.4 %');
    const step = await panel({ raw: '=B1', result: q(2.25, 'in'), as: show('both'), working: { ...EASE, call: { ...EASE.call!, steps: [{ words: 'depth', sum: [q(2.25, 'in')], value: q(2.25, 'in') }] } } });
    expect(texts(step, 'ol .sum')).to.deep.equal(['2 ¼ in = 2 ¼ in (5.7 cm)']);
  });

  it('says what is rounded for show, and what is kept', async () => {
    const typed = await panel({ place: 'Fit B2', raw: '37.3 in', result: q(37.3, 'in') });
    expect(read(typed)).to.contain('Typed: 37.3 in. Kept as 37.3 in; only what is shown is rounded.');
    const exact = await panel({ place: 'Fit B2', raw: '36 1/4"', result: q(36.25, 'in') });
    expect(read(exact)).to.contain('Typed: 36 1/4". Kept exactly.');
    const worked = await panel({ raw: '=EASE(C12, C2)', result: q(6.6, 'cm'), as: show('in'), working: { ...EASE, result: q(6.6, 'cm') } });
    expect(read(worked)).to.contain('Shown to the nearest 1/8 in; exact 2.5984 in. Nothing is rounded in the sum.');
  });

  it('lists what a plain formula uses', async () => {
    const made = await panel({
      place: 'Fit B9', raw: '=SUM(B2:B4) + C1', result: q(10, 'cm'),
      working: { result: q(10, 'cm'), uses: [{ area: { ...at(1, 1), bottom: 3 }, text: 'B2:B4', value: null }, { area: at(0, 2), text: 'C1', value: q(4, 'cm') }] },
    });
    const gone = heard<{ area: Area }>(made, 'tt-go');
    expect(texts(made, 'dt')).to.deep.equal(['B2:B4 ↗', 'C1 ↗']);
    expect(texts(made, 'dd')).to.deep.equal(['several cells', '4.0 cm']);
    await press('Tab', 'Space');
    expect(gone).to.deep.equal([{ area: { ...at(1, 1), bottom: 3 } }]);
    await accessible(made);
  });

  it('says why there is no result, what is kept as text, and what to type in an empty cell', async () => {
    const wrong = await panel({ place: 'Fit B2', raw: '=1/0', result: { kind: 'error', sentence: 'Divides by 0.' } });
    expect(words(find(wrong, '.fault').textContent)).to.equal('No result. Divides by 0.');
    await accessible(wrong);
    const text = await panel({ place: 'Fit B2', raw: '3 furlong', result: { kind: 'text', text: '3 furlong' }, remark: '“furlong” is not a unit known here.' });
    expect(words(find(text, '.note').textContent)).to.equal('“furlong” is not a unit known here.');
    const empty = await panel({ place: 'Fit B2' });
    expect(find(empty, 'h2').textContent).to.equal('Fit B2');
    expect(read(empty)).to.contain('Nothing is typed here yet.');
    await accessible(empty);
    const waiting = await panel({ place: 'Fit B2', raw: '=B1 * 2' });
    expect(find(waiting, '[aria-busy=true]').textContent).to.equal('Looking up the working…');
  });

  it('fits a narrow column', async () => {
    const made = await panel({ heading: 'A very long label that somebody wrote in one breath'.replaceAll(' ', '_'), raw: '=EASE(C12, C2)', result: q(6.5, 'cm'), working: EASE });
    made.style.width = '300px';
    expect(made.scrollWidth).to.be.at.most(300);
  });
});
