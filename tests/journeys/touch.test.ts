/** The page in one hand: taps, a finger held, handles, and the keyboard on the screen, at the width of a phone. */
import { expect, waitUntil } from '@open-wc/testing';
import { executeServerCommand, sendKeys, setViewport } from '@web/test-runner-commands';
import { App } from './app.ts';
import { words } from './words.ts';

const PHONE = { width: 390, height: 844 };
type Point = readonly [x: number, y: number];

let app: App;

const devtools = (method: string, params: object): Promise<unknown> => executeServerCommand('devtools', { method, params });
const finger = (type: 'touchStart' | 'touchMove' | 'touchEnd', ...points: Point[]): Promise<unknown> =>
  devtools('Input.dispatchTouchEvent', { type, touchPoints: points.map(([x, y]) => ({ x, y })) });
const pause = (time: number): Promise<void> => new Promise((done) => setTimeout(done, time));

function middle(element: Element): Point {
  const { left, top, width, height } = element.getBoundingClientRect();
  return [Math.round(left + width / 2), Math.round(top + height / 2)];
}

const cell = (place: string): Element => app.cell(place)!;

async function tap(element: Element): Promise<void> {
  await finger('touchStart', middle(element));
  await finger('touchEnd');
  await app.settled();
}

async function drag(from: Point, to: Point): Promise<void> {
  await finger('touchStart', from);
  for (let step = 1; step <= 6; step++) await finger('touchMove', [Math.round(from[0] + (to[0] - from[0]) * step / 6), Math.round(from[1] + (to[1] - from[1]) * step / 6)]);
  await finger('touchEnd');
  await app.settled();
}

/** What glides on after a finger has come to rest: a press would only stop it. */
async function still(): Promise<void> {
  const scroller = app.part<HTMLElement>('.scroller', app.inside('tt-grid'));
  let before = '';
  await waitUntil(async () => {
    const now = `${scroller.scrollLeft} ${scroller.scrollTop}`;
    const same = now === before;
    before = now;
    return same;
  }, 'the cells glide on', { interval: 150, timeout: 10_000 });
}

describe('on a phone', function () {
  this.timeout(90_000);

  before(async () => {
    app = await App.open();
    await setViewport(PHONE);
    await app.run('Add a blank sheet');
    await app.fill('A1', [['Waist', '70 cm'], ['Hip', '98 cm'], ['Half', '=B1/2']]);
  });
  afterEach(() => app.expectNoTrouble());
  after(() => app.close());

  it('a tap selects, the second one edits, and the entry line shows the same', async () => {
    await tap(cell('B2'));
    expect(app.active).to.equal('B2');
    expect(app.part<HTMLTextAreaElement>('textarea', app.inside('tt-grid')).inputMode, 'no keyboard comes up').to.equal('none');
    await tap(cell('B2'));
    expect(app.part<HTMLTextAreaElement>('textarea', app.inside('tt-grid')).inputMode).to.equal('text');
    await sendKeys({ type: '.5' });
    // What she sees above the keyboard.
    expect(app.typed).to.equal('98 cm.5');
    await app.press('Backspace', 'Backspace', 'Enter');
    expect(app.shown('B2')).to.equal('98.0 cm');
  });

  it('scrolling selects nothing, and the label column stays', async () => {
    const before = app.active;
    const labels = cell('A1').getBoundingClientRect();
    await drag([340, 500], [120, 500]);
    await still();
    expect(app.active).to.equal(before);
    expect(app.part<HTMLElement>('.scroller', app.inside('tt-grid')).scrollLeft).to.be.greaterThan(50);
    expect(cell('A1').getBoundingClientRect().left).to.equal(labels.left);
    await drag([150, 500], [380, 500]);
    await still();
    expect(app.active).to.equal(before);
  });

  it('a finger held on a cell brings its commands, each large enough, all within the window', async () => {
    await app.go('B1');
    await still();
    await finger('touchStart', middle(cell('B1')));
    await pause(900);
    await finger('touchEnd');
    const menu = app.inside('tt-cell-menu');
    await waitUntil(() => menu.querySelector('.menu:popover-open'), 'no menu');
    const buttons = [...menu.querySelectorAll('button')];
    expect(buttons.map((each) => words(each.querySelector('span')!.textContent))).to.include.members(['Copy', 'Paste', 'Insert rows above', 'Show what uses this cell']);
    for (const each of buttons) expect(each.getBoundingClientRect().height).to.be.at.least(24);
    const box = menu.querySelector('.menu')!.getBoundingClientRect();
    expect(box.left).to.be.at.least(0);
    expect(box.right).to.be.at.most(PHONE.width);
    expect(box.bottom).to.be.at.most(PHONE.height);
    const insert = buttons.find((each) => words(each.textContent).startsWith('Insert rows above'))!;
    insert.scrollIntoView({ block: 'nearest' });
    await tap(insert);
    expect([app.shown('A2'), app.shown('B2')]).to.deep.equal(['Waist', '70.0 cm']);
    expect(app.focusInCells).to.equal(true);
    await app.press('Control+z');
  });

  it('buttons at the corners select more, the spool fills', async () => {
    await app.go('A1');
    await still();
    await tap(cell('B1'));
    const handle = (kind: string): Element => app.part(`.handle.${kind}`, app.inside('tt-grid'));
    for (const kind of ['start', 'end', 'fill']) expect(Math.min(handle(kind).getBoundingClientRect().width, handle(kind).getBoundingClientRect().height)).to.be.at.least(24);
    await drag(middle(handle('end')), middle(cell('B2')));
    await drag(middle(handle('fill')), middle(cell('B6')));
    expect(['B3', 'B4', 'B5', 'B6'].map((place) => app.shown(place))).to.deep.equal(['126.0 cm', '154.0 cm', '182.0 cm', '210.0 cm']);
    await app.press('Control+z');
    expect(app.shown('B3')).to.equal('35.0 cm');
  });

  it('above an on-screen keyboard there are the cells, and right over it the entry line', async () => {
    await app.go('B3');
    const page = app.window.document.querySelector('tt-app')!;
    // As the page does it when the visual viewport shrinks: see tests/browser/app.
    page.toggleAttribute('data-keyboard', true);
    page.style.height = '480px';
    await pause(60);
    const line = app.part('tt-entry-line').getBoundingClientRect();
    const grid = app.part('tt-grid').getBoundingClientRect();
    expect(line.bottom).to.be.closeTo(480, 1);
    expect(grid.bottom).to.be.at.most(line.top + 1);
    expect(grid.height).to.be.greaterThan(250);
    page.toggleAttribute('data-keyboard', false);
    page.style.height = '';
  });
});
