import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import type { LitElement } from 'lit';
import type { Started, StartOwnPanel, StartPerson } from '../../../src/panels/index.ts';
import '../../../src/panels/start-own.ts';
import { accessible, button, find, focused, heard, press, tabTo, texts, words } from './support.ts';

const GARMENTS = [
  { id: 'dress', name: 'Dress', about: 'From a pattern with a size chart.', asks: ['bust', 'waist', 'hip'], chart: true },
  { id: 'circle-skirt', name: 'Circle skirt', about: 'No pattern needed.', asks: ['waist', 'hip'], chart: false },
];
const MARA: StartPerson = {
  key: 'k', name: 'Mara', where: 'Coat, measured 3 November 2026', child: false, notes: 'narrow shoulder', newest: { bust: '92 cm', waist: '76 cm', hip: '39 in' },
  worked: { id: 'w', garment: 'Pleated skirt', day: '2025-12-01', sizes: [{ level: 'waist', raw: '16' }], ease: [{ level: 'waist', raw: '2 cm' }], length: '68 cm', alterations: 'back 1 cm in', remark: '' },
};
async function start(people: readonly StartPerson[] = [MARA]): Promise<StartOwnPanel> {
  const made = await fixture<StartOwnPanel>(html`<tt-start-own .people=${people} .garments=${GARMENTS} .moreSheets=${[{ id: 'bias-binding', label: 'Bias binding' }]} .today=${'2026-11-25'}></tt-start-own>`);
  made.focus();
  await made.updateComplete;
  return made;
}
const fieldsOf = (made: StartOwnPanel) => find<HTMLElementTagNameMap['tt-measure-fields']>(made, 'tt-measure-fields');
/** By the Tab key alone: into an element that has a root of its own. */
async function tabInto(made: StartOwnPanel, inner: LitElement, selector: string): Promise<void> {
  for (let tabs = 0; tabs < 40 && focused(inner)?.matches(selector) !== true; tabs++) await press('Tab');
  if (focused(inner)?.matches(selector) !== true) throw new Error(`The Tab key does not come to ${selector} of ${inner.localName} in ${made.localName}.`);
}

describe('start my own', () => {
  it('from nothing to a garment by keys alone', async () => {
    const made = await start();
    const started = heard<Started>(made, 'tt-start');
    await press('Tab');
    await sendKeys({ type: 'Nora' });
    await tabTo(made, find(made, '[name=garment]'));
    await press('Space', 'ArrowDown');
    await made.updateComplete;
    await tabTo(made, find(made, '[name=unit]'));
    await press('ArrowRight');
    await made.updateComplete;
    const fields = fieldsOf(made);
    await tabInto(made, fields, '#m0');
    await sendKeys({ type: '29 1/2' });
    await tabInto(made, fields, '#m1');
    await sendKeys({ type: '98.5 cm' });
    await accessible(made);
    await tabTo(made, button(made, 'Start'));
    await press('Enter');
    expect(started).to.deep.equal([{
      key: null, name: 'Nora', child: false, years: '', garment: 'circle-skirt', more: [], title: 'Circle skirt', show: 'both',
      measures: [{ of: 'waist', raw: '29 1/2 in' }, { of: 'hip', raw: '98.5 cm' }], day: '2026-11-25', by: '', chart: null,
      takes: { ease: true, length: true, alterations: true, notes: true },
    }]);
  });

  it('somebody known: her newest figures stand there, and what worked is offered, to take or leave', async () => {
    const made = await start();
    const started = heard<Started>(made, 'tt-start');
    find<HTMLSelectElement>(made, '#who').focus();
    await sendKeys({ type: 'Mara' });
    await made.updateComplete;
    find<HTMLInputElement>(made, '[value=circle-skirt]').click();
    await made.updateComplete;
    await fieldsOf(made).updateComplete;
    expect([...fieldsOf(made).renderRoot.querySelectorAll('input')].map(({ value }) => value)).to.deep.equal(['76 cm', '39 in']);
    expect(texts(made, '.checks label')).to.deep.equal([
      'Ease she liked: waist 2 cm', 'Length: 68 cm', 'Alterations, on a sheet to remember: back 1 cm in', 'Notes that carry over, on a sheet to remember: narrow shoulder',
    ]);
    await accessible(made);
    find<HTMLInputElement>(made, '.checks input').click();
    await made.updateComplete;
    button(made, 'Start').click();
    expect(started[0]).to.deep.include({ key: 'k', takes: { ease: false, length: true, alterations: true, notes: true } });
    expect(started[0]!.measures).to.deep.equal([{ of: 'bust', raw: '92 cm' }, { of: 'waist', raw: '76 cm' }, { of: 'hip', raw: '39 in' }]);
  });

  it('says what is missing, one thing after another, and goes there', async () => {
    const made = await start();
    const started = heard(made, 'tt-start');
    const said = () => words(find(made, 'footer p').textContent);
    const press1 = async () => { button(made, 'Start').click(); await made.updateComplete; await fieldsOf(made).updateComplete; await new Promise((done) => setTimeout(done)); };
    await press1();
    expect([said(), focused(made)!.id]).to.deep.equal(['✕ Type the name of the person.', 'name']);
    await sendKeys({ type: 'Nora' });
    await press1();
    expect(said()).to.equal('✕ Choose a garment.');
    find<HTMLInputElement>(made, '[value=dress]').click();
    await press1();
    expect([said(), focused(fieldsOf(made))!.id]).to.deep.equal(['✕ For this garment these are needed: bust, waist, hip.', 'm0']);
    expect(texts(fieldsOf(made), '.wrong')[0]).to.equal('✕ Bust is needed: type a figure such as 94 cm.');
    await accessible(made);
    expect(started.length).to.equal(0);
  });

  it('reads a pasted size chart; a unit that is a guess has to be looked at', async () => {
    const made = await start();
    const started = heard<Started>(made, 'tt-start');
    find<HTMLSelectElement>(made, '#who').focus();
    await sendKeys({ type: 'Mara' });
    find<HTMLInputElement>(made, '[value=dress]').click();
    await made.updateComplete;
    const chart = find<HTMLElementTagNameMap['tt-start-chart']>(made, 'tt-start-chart');
    await chart.updateComplete;
    find<HTMLTextAreaElement>(chart, 'textarea').focus();
    await sendKeys({ type: 'Measure,10,12' });
    await press('Enter');
    await sendKeys({ type: 'Bust,80,84' });
    await press('Enter');
    await sendKeys({ type: 'Waist,62,66' });
    await chart.updateComplete;
    expect(texts(chart, '[role=status]')).to.deep.equal(['2 sizes, 10 to 12, and 2 measures: 4 figures read, none left over.']);
    await accessible(made);
    button(made, 'Start').click();
    await made.updateComplete;
    expect([started.length, focused(chart)!.id]).to.deep.equal([0, 'unit-seen']);
    await press('Space');
    button(made, 'Start').click();
    expect(started[0]!.chart!.measures.map(({ name }) => name)).to.deep.equal(['Bust', 'Waist']);
  });

  it('a child: the caution, and her age asked', async () => {
    const made = await start([]);
    find<HTMLInputElement>(made, '#child').click();
    await made.updateComplete;
    expect(words(find(made, '.note').textContent)).to.contain('local rules and licensed practice decide');
    await tabTo(made, find(made, '#years'));
    await accessible(made);
  });

  it('has targets of 24 pixels and fits a phone', async () => {
    const made = await start();
    made.style.width = '390px';
    await made.updateComplete;
    for (const target of made.renderRoot.querySelectorAll('button, input[type=text], select, .garments label, summary')) {
      const { width, height } = target.getBoundingClientRect();
      if (width > 0) expect(Math.min(width, height), target.outerHTML).to.be.at.least(23.9);
    }
    expect(made.scrollWidth).to.be.at.most(390);
  });
});
