import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import type { Run, RunOfValuesPanel, RunWish } from '../../../src/panels/index.ts';
import { NO_RUN } from '../../../src/panels/run-of-values.ts';
import { runPlot } from '../../../src/pictures/index.ts';
import { quantity } from '../../../src/quantities/index.ts';
import { accessible, button, find, heard, press, tabTo, texts, words } from './support.ts';

const AS = { system: 'own', inchStep: 8 } as const;
const cell = (row: number) => ({ sheet: 1, row, col: 1 });
const cm = (amount: number) => ({ kind: 'quantity', value: quantity(amount, 'cm').value, unit: 'cm' } as const);
const PLEATS = { cell: cell(7), label: 'Number of pleats', place: 'Skirt B8', as: AS };
const WIDTH = { cell: cell(14), label: 'Flat width', place: 'Skirt B15', as: AS };

const RUN: Run = {
  ...NO_RUN, kept: { id: '1', all: [{ id: '1', title: 'Pleats' }] }, input: PLEATS, from: '4', to: '6', step: '1', results: [WIDTH],
  offered: [{ cell: cell(10), label: 'Pleat spacing', place: 'Skirt B11', as: AS }],
  values: [
    { shown: '4', now: false, results: [cm(200)], pins: [] },
    { shown: '5', now: true, results: [cm(225.5)], pins: [1] },
    { shown: '6', now: false, results: [{ kind: 'error', sentence: 'Divides by 0.' }], pins: [1] },
  ],
  pins: [{ number: 1, place: 'Flat width · Skirt B15', where: 'from 5 to 6', sentence: 'These pleats overlap.' }],
  plots: [runPlot({
    input: { name: 'Number of pleats', unit: '', as: AS }, result: { name: 'Flat width', unit: 'cm', as: AS }, apart: true,
    points: [{ x: 4, y: 2000 }, { x: 5, y: 2255 }, { x: 6, y: null }], pins: [{ number: 1, from: 5, to: 6 }],
  })],
};

async function panel(run: Run, more: Partial<RunOfValuesPanel> = {}): Promise<RunOfValuesPanel> {
  const aside = await fixture(html`<aside aria-label="Run of values"><tt-run-of-values></tt-run-of-values></aside>`);
  const made = aside.querySelector('tt-run-of-values')!;
  Object.assign(made, { run, ...more });
  await made.updateComplete;
  return made;
}

describe('a run of values', () => {
  it('shows the results as columns, with the pins along the way', async () => {
    const made = await panel(RUN);
    const table = find<HTMLTableElement>(made, 'table');
    expect([...table.rows].map((row) => [...row.cells].map((each) => words(each.textContent)))).to.deep.equal([
      ['Number of pleats', 'Flat width ✕', 'Pins'], ['4', '200.0 cm', ''], ['5as it is', '225.5 cm', '⚑ 1'], ['6', '✕ Divides by 0.', '⚑ 1'],
    ]);
    expect(texts(made, 'ol li')).to.deep.equal(['⚑ Flat width · Skirt B15, from 5 to 6. These pleats overlap.']);
    await accessible(made);
  });

  it('shows them as a plot that says in words what it shows', async () => {
    const made = await panel(RUN);
    expect(find(made, 'figure svg').getAttribute('aria-label')).to.equal(
      'Flat width over Number of pleats from 4 to 6: least 200.0 cm with 4, most 225.5 cm with 5. There is no result for 1 of 3 values. Pin 1 from 5 to 6. The figures are in the table.');
    expect(texts(made, 'figure text')).to.include.members(['pin 1', 'Number of pleats', '200.0 cm', '4', '5', '6']);
  });

  it('takes what runs and how far, and what is shown, by keys', async () => {
    const made = await panel(RUN, { candidate: { input: 'Pleat depth · Skirt B10', result: '' } });
    const asked = heard<RunWish>(made, 'tt-run-wish');
    made.focus();
    await press('Control+a');
    await sendKeys({ type: '8' });
    await press('Tab');
    for (const name of ['Run over Pleat depth · Skirt B10', '+ Pleat spacing', 'Leave Flat width out']) {
      await tabTo(made, button(made, name));
      await press('Enter');
    }
    expect(asked).to.deep.equal([{ wish: 'limit', of: 'from', raw: '8' }, { wish: 'input' }, { wish: 'offered', cell: cell(10) }, { wish: 'leave out', at: 0 }]);
    expect(button(made, 'Select a result in the sheet to show it').disabled).to.equal(true);
  });

  it('says what to do first, what is wrong, and that it is at work; saves and closes', async () => {
    const empty = await panel(NO_RUN);
    expect(button(empty, 'Select the figure that is to run in the sheet').disabled).to.equal(true);
    expect(button(empty, 'Save as CSV…').disabled).to.equal(true);
    await accessible(empty);
    const busy = await panel({ ...RUN, values: null });
    expect(texts(busy, '[role=status]')).to.deep.equal(['Working it out…']);
    const wrong = await panel({ ...RUN, values: null, sentence: 'It cannot go from more to less: write the smaller figure first.' });
    expect(texts(wrong, '[role=status]')).to.deep.equal(['It cannot go from more to less: write the smaller figure first.']);
    const made = await panel({ ...RUN, pins: [], values: RUN.values!.map((value) => ({ ...value, pins: [] })), plots: [null] });
    expect(words(made.renderRoot.textContent)).to.contain('There is no pin along the way.').and.to.contain('There is nothing to draw');
    const [saved, closed] = [heard(made, 'tt-export-run'), heard(made, 'tt-close')];
    for (const name of ['Close', 'Save as CSV…']) {
      await tabTo(made, button(made, name));
      await press('Enter');
    }
    expect([saved.length, closed.length]).to.deep.equal([1, 1]);
    await accessible(made);
  });
});
