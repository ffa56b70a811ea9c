import { expect, fixture, html, oneEvent } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import '../../../src/panels/pins.ts';
import type { PinRow, PinsPanel } from '../../../src/panels/pins.ts';

const row = (id: string, more: Partial<PinRow> = {}): PinRow => ({
  id, area: { sheet: 1, top: 8, left: 1, bottom: 8, right: 1 }, place: 'B9', label: 'Ease, Bust', note: null,
  sentence: 'There is less ease at the bust than was asked for: the finished measure must be at least 96 cm.',
  mend: { to: '96 cm', place: 'B4', label: 'Finished, Bust' }, ...more,
});
const SHEETS = [
  { name: 'Fit', rows: [row('1,8,1 a'), row('1,9,1 b', { place: 'B10', mend: null })] },
  { name: 'Skirt', rows: [row('2,3,1 c', { note: 'zip at the side' })] },
];

const open = async (): Promise<PinsPanel> => fixture(html`<tt-pins .sheets=${SHEETS} .at=${'1,9,1'}></tt-pins>`);
const button = (panel: PinsPanel, text: string): HTMLButtonElement => [...panel.shadowRoot!.querySelectorAll('button')].find((each) => (each.textContent ?? '').includes(text))!;

describe('the pins panel', () => {
  it('lists pins by sheet and the acknowledged ones apart, with their notes', async () => {
    const panel = await open();
    const lists = [...panel.shadowRoot!.querySelectorAll('ul')].map((list) => `${list.getAttribute('aria-label')}: ${list.children.length}`);
    expect(lists).to.deep.equal(['Pins on Fit: 2', 'Acknowledged pins on Skirt: 1']);
    expect(panel.shadowRoot!.querySelector('[role=status]')!.textContent).to.equal('2 pins to look at.');
    expect(panel.shadowRoot!.querySelector('.seen .kept')!.textContent).to.equal('zip at the side');
    await expect(panel).to.be.accessible();
  });

  it('begins at the pin of the selected cell', async () => {
    const panel = await open();
    panel.focus();
    expect(panel.shadowRoot!.activeElement!.getAttribute('aria-label')).to.equal('Go to Ease, Bust, B10');
  });

  it('asks to go there, to mend, and to pin again, by keys', async () => {
    const panel = await open();
    for (const [text, type, detail] of [
      ['Ease, Bust', 'tt-go', { area: SHEETS[0]!.rows[0]!.area }], ['Mend: put 96 cm in B4', 'tt-mend-pin', { id: '1,8,1 a' }], ['Pin again', 'tt-pin-again', { id: '2,3,1 c' }],
    ] as const) {
      button(panel, text).focus();
      setTimeout(() => void sendKeys({ press: 'Enter' }));
      const event = await oneEvent(panel, type) as CustomEvent;
      expect(event.detail).to.deep.equal(detail);
    }
  });

  it('acknowledges with a note that is typed; Escape leaves it be', async () => {
    const panel = await open();
    button(panel, 'Acknowledge…').focus();
    setTimeout(() => void sendKeys({ press: 'Enter' }));
    expect((await oneEvent(panel, 'tt-ask-pin') as CustomEvent).detail).to.deep.equal({ id: '1,8,1 a' });
    panel.asking = '1,8,1 a';
    await panel.updateComplete;
    expect(panel.shadowRoot!.activeElement!.localName).to.equal('textarea');
    await expect(panel).to.be.accessible();
    await sendKeys({ type: ' a knit ' });
    setTimeout(() => void sendKeys({ press: 'Enter' }));
    expect((await oneEvent(panel, 'tt-acknowledge') as CustomEvent).detail).to.deep.equal({ id: '1,8,1 a', note: 'a knit' });
    setTimeout(() => void sendKeys({ press: 'Escape' }));
    expect((await oneEvent(panel, 'tt-ask-pin') as CustomEvent).detail).to.deep.equal({ id: null });
  });

  it('changes nothing where nothing can be changed', async () => {
    const panel = await open();
    panel.readonly = true;
    await panel.updateComplete;
    const open_ = [...panel.shadowRoot!.querySelectorAll('.do button')].filter((each) => !(each as HTMLButtonElement).disabled);
    expect(open_).to.have.lengthOf(0);
  });

  it('says when there is none', async () => {
    const panel = await fixture<PinsPanel>(html`<tt-pins></tt-pins>`);
    expect(panel.shadowRoot!.querySelector('[role=status]')!.textContent).to.match(/^No pins/);
  });
});
