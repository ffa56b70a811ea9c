import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import type { BackOffer, BackWish, WorkBackPanel, WorkBackShown } from '../../../src/panels/index.ts';
import '../../../src/panels/work-back.ts';
import { quantity } from '../../../src/quantities/index.ts';
import { accessible, button, find, heard, press, tabTo, texts, words } from './support.ts';

const cell = (row: number) => ({ sheet: 1, row, col: 1 });
const cm = (amount: number) => ({ kind: 'quantity', value: quantity(amount, 'cm').value, unit: 'cm' } as const);
const offer = (which: BackOffer['which'], change: Partial<BackOffer> = {}): BackOffer => ({
  which, sentence: 'The nearest to 290.0 cm that can be cut.', input: { main: '5.5 cm', also: '2 ⅛ in', exact: true }, result: { main: '290.3 cm', also: '114 ¼ in', exact: true },
  raw: '5.5 cm', sound: true, pins: [], gone: [],
  working: {
    result: cm(290.3), uses: [],
    call: { name: 'PLEAT.CLOTH', about: 'Flat width.', rule: 'finished + folds', source: 'geometry', given: [], steps: [{ words: 'folds', sum: [cm(107), ' + ', cm(183.3)], value: cm(290.3) }], cautions: [] },
  },
  ...change,
});

const SHOWN: WorkBackShown = {
  result: { cell: cell(14), label: 'Flat width to cut', place: 'Skirt B15', now: '295.9 cm' }, wanted: '290 cm', bound: 'exactly', sentence: '', searching: false, stale: false, resultAs: { system: 'own', inchStep: 8 },
  inputs: [{ cell: cell(9), label: 'Pleat depth', place: 'Skirt B10', now: '2 ¼ in', from: '1 in', to: '4 in', step: '1/8 in', fault: '', found: null }],
  offered: [{ cell: cell(7), label: 'Number of pleats', place: 'Skirt B8', now: '8' }],
};
const found = (...offers: BackOffer[]): WorkBackShown => ({ ...SHOWN, inputs: [{ ...SHOWN.inputs[0]!, found: { sentences: ['From 1 in to 2 in there is no result: Divides by 0.'], offers } }] });

async function panel(shown: WorkBackShown, more: Partial<WorkBackPanel> = {}): Promise<WorkBackPanel> {
  const aside = await fixture(html`<aside aria-label="Work back"><tt-work-back></tt-work-back></aside>`);
  const made = aside.querySelector('tt-work-back')!;
  Object.assign(made, { shown, ...more });
  await made.updateComplete;
  return made;
}

describe('work back', () => {
  it('asks for a result first, by pointing', async () => {
    const none: WorkBackShown = { ...SHOWN, result: null, inputs: [], offered: [] };
    const empty = await panel(none);
    expect(button(empty, 'Select the cell of a result in the sheet').disabled).to.equal(true);
    expect(empty.renderRoot.querySelector('.search')).to.equal(null);
    await accessible(empty);
    const made = await panel(none, { candidate: { result: 'Flat width · Skirt B15', input: '' } });
    const asked = heard<BackWish>(made, 'tt-back');
    await tabTo(made, button(made, 'Take Flat width · Skirt B15 as the result'));
    await press('Enter');
    expect(asked).to.deep.equal([{ wish: 'result' }]);
  });

  it('takes what is wanted, and how far an input may move, by keys', async () => {
    const made = await panel({ ...SHOWN, wanted: '' });
    const asked = heard<BackWish>(made, 'tt-back');
    made.focus();
    await sendKeys({ type: '290 cm' });
    await press('Tab');
    await tabTo(made, find(made, '[aria-label="Pleat depth, from"]'));
    await sendKeys({ type: '2 in' });
    await press('Tab');
    await tabTo(made, find(made, '[name=bound]'));
    await press('ArrowDown');
    expect(asked).to.deep.equal([{ wish: 'wanted', raw: '290 cm' }, { wish: 'limit', at: 0, of: 'from', raw: '2 in' }, { wish: 'bound', bound: 'atMost' }]);
  });

  it('lets a figure change that the result comes from, or one that is pointed at, and leaves one as it is', async () => {
    const made = await panel(SHOWN, { candidate: { result: '', input: 'Body hip · Skirt B3' } });
    const asked = heard<BackWish>(made, 'tt-back');
    for (const name of ['Number of pleats: 8', 'Let Body hip · Skirt B3 change', 'Leave Pleat depth as it is']) {
      await tabTo(made, button(made, name));
      await press('Enter');
    }
    expect(asked).to.deep.equal([{ wish: 'offered', cell: cell(7) }, { wish: 'input' }, { wish: 'leave out', at: 0 }]);
  });

  it('searches with Enter and with its button, and stops', async () => {
    const made = await panel(SHOWN);
    const asked = heard<BackWish>(made, 'tt-back');
    await tabTo(made, find(made, '[name=wanted]'));
    await press('Enter');
    await tabTo(made, button(made, 'Work it out'));
    await press('Enter');
    expect(asked).to.deep.equal([{ wish: 'search' }, { wish: 'search' }]);
    made.shown = { ...SHOWN, searching: true };
    await made.updateComplete;
    await tabTo(made, button(made, 'Stop'));
    await press('Enter');
    expect(asked.at(-1)).to.deep.equal({ wish: 'cancel' });
    expect(texts(made, '[role=status]')).to.deep.equal(['Trying values out…']);
    await accessible(made);
  });

  it('shows an answer in both systems, with its working and its pins, and puts it in', async () => {
    const pinned = offer('cut', { pins: [{ place: 'Skirt B15', sentence: 'These pleats overlap.' }], gone: [{ place: 'Skirt B12', sentence: 'Too tight.' }] });
    const made = await panel(found(pinned, offer('exact', { raw: '5.4567890123456 cm', sentence: 'This gives exactly 290.0 cm.' })));
    const first = words(find(made, '.offer').textContent);
    expect(first).to.contain('5.5 cm (2 ⅛ in)').and.to.contain('Gives 290.3 cm (114 ¼ in).').and.to.contain('⚑ There would be a pin on Skirt B15. These pleats overlap.').and.to.contain('The pin on Skirt B12 would be gone.');
    expect(words(made.renderRoot.textContent)).to.contain('From 1 in to 2 in there is no result: Divides by 0.').and.to.contain('No pin comes or goes with it.');
    const asked = heard<BackWish>(made, 'tt-back');
    await tabTo(made, find(made, 'summary'));
    await press('Enter');
    expect(words(find(made, 'details[open]').textContent)).to.contain('107.0 cm + 183.3 cm = 290.3 cm');
    await accessible(made);
    for (const name of ['Put 5.5 cm into Skirt B10', 'Put the exact figure into Skirt B10']) {
      await tabTo(made, button(made, name));
      await press('Enter');
    }
    expect(asked).to.deep.equal([{ wish: 'put', at: 0, which: 'cut' }, { wish: 'put', at: 0, which: 'exact' }]);
  });

  it('puts nothing in that is not what was asked for, nor what is out of date, nor where nothing may be changed', async () => {
    const poor = await panel(found(offer('best', { sound: false, sentence: 'The nearest to 290.0 cm that there is; it is not what was asked for.' })));
    expect(texts(poor, '.offer .do button')).to.deep.equal([]);
    const stale = await panel({ ...found(offer('cut')), stale: true });
    expect(button(stale, 'Put 5.5 cm into Skirt B10').disabled).to.equal(true);
    expect(texts(stale, '[role=status]')).to.deep.equal(['The sheet has changed since this was worked out. Work it out again.']);
    await accessible(stale);
    const reading = await panel(found(offer('cut')), { readonly: true });
    expect(button(reading, 'Put 5.5 cm into Skirt B10').disabled).to.equal(true);
  });

  it('says what is wrong, goes to a cell and closes', async () => {
    const made = await panel({ ...SHOWN, sentence: 'Say what the result is to be.', inputs: [{ ...SHOWN.inputs[0]!, fault: 'From: “x” is no figure.' }] });
    expect([words(find(made, '[role=status]').textContent), words(find(made, '.fault').textContent)]).to.deep.equal(['Say what the result is to be.', 'From: “x” is no figure.']);
    const [gone, closed] = [heard<{ area: object }>(made, 'tt-go'), heard(made, 'tt-close')];
    await tabTo(made, button(made, 'Close'));
    await press('Enter');
    await tabTo(made, button(made, 'Pleat depth Skirt B10 ↗'));
    await press('Enter');
    expect([gone, closed.length]).to.deep.equal([[{ area: { sheet: 1, top: 9, left: 1, bottom: 9, right: 1 } }], 1]);
    await accessible(made);
  });
});
