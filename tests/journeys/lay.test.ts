/** How much cloth the demo garment needs, how to lay it, and what else comes out of it: with keys and the pointer. */
import { expect } from '@open-wc/testing';
import { sendKeys, sendMouse } from '@web/test-runner-commands';
import type { LayPanel } from '../../src/panels/index.ts';
import { App, press, soon, words } from './app.ts';

let app: App;

before(async function () {
  this.timeout(90_000);
  app = await App.open();
});
beforeEach(function () { this.timeout(90_000); });
afterEach(() => app.expectNoTrouble());
after(() => app.close());

const panel = (): LayPanel => app.part<LayPanel>('tt-lay');
const lay = (): ShadowRoot => panel().shadowRoot!;
const drawing = (): ShadowRoot => app.part('tt-lay-drawing', lay()).shadowRoot!;
const read = (selector: string): string => words(lay().querySelector(selector)?.textContent);
const all = (selector: string): string[] => [...lay().querySelectorAll(selector)].map((each) => words(each.textContent));
const pieces = (): SVGGElement[] => [...drawing().querySelectorAll<SVGGElement>('g.piece')];
const places = (): string[] => pieces().map((piece) => piece.getAttribute('aria-label')!);

async function open(): Promise<void> {
  await app.run('The lay: how to lay the pieces, and how much cloth');
  await soon(() => app.page.querySelector<LayPanel>('tt-lay')?.view, 'the lay does not open');
  await panel().updateComplete;
}

/** Goes to a list of choices, chooses by its first letters, and goes on. */
async function chooseIn(list: string, letters: string): Promise<void> {
  await app.tabTo(list);
  await sendKeys({ type: letters });
  await press('Tab');
  await panel().updateComplete;
}

async function pressButton(name: string): Promise<void> {
  await app.tabTo(name);
  await press('Enter');
  await app.page.querySelector<LayPanel>('tt-lay')?.updateComplete;
}

const find = async (): Promise<void> => {
  await pressButton('Find a layout');
  await soon(() => /^Found in/.test(read('[role=status].standing')), `no layout is found: ${all('.fault').join(' ')}`);
  await panel().updateComplete;
};

/** The cloth that is said to be cut, in mm. */
const said = (): number => Number(/^Cut ([\d.]+) cm/.exec(read('.headline'))?.[1]) * 10;

/** The same by the drawing: how far the furthest piece reaches, by the scale of the cloth's own width. */
function drawn(width: number): number {
  const spots = (path: Element): [number, number][] => [...path.getAttribute('d')!.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
  const scale = Math.max(...spots(drawing().querySelector('.lay-cloth')!).map(([, y]) => y)) / width;
  return Math.max(...[...drawing().querySelectorAll('.lay-piece')].flatMap(spots).map(([x]) => x)) / scale;
}

/** A patch 80 mm long and 60 mm wide, drawn elsewhere. */
const PATCH = '<svg xmlns="http://www.w3.org/2000/svg" width="60mm" height="80mm" viewBox="0 0 60 80"><path id="patch" d="M0 0H60V70L50 80H0Z"/></svg>';

describe('the lay of the demo garment', () => {
  it('has a piece of its own from an SVG drawing beside those that functions give', async () => {
    await app.run('Drawn shapes: draw, bring in or trace a piece');
    await soon(() => app.page.querySelector('tt-shapes')?.shadowRoot?.querySelector('input[type=file]'), 'the shapes do not open');
    await app.choose('tt-shapes', PATCH, 'patch.svg');
    await soon(() => app.read('tt-shapes').includes('Brought in from patch.svg: patch.'), `the drawing is not read: ${app.read('tt-shapes').slice(0, 300)}`);
    await pressButton('Back to the cells');
    await app.openSheet('Pieces');
    await app.put('A15', 'Patch');
    await app.put('B15', 'patch');
    await app.put('F15', '1');
    await app.put('G15', 'single');
    await app.put('H15', 'main');
    await app.put('K15', 'included');
  });

  it('takes its pieces from the sheet, by functions, and finds a layout on cloth 140 cm wide', async () => {
    await open();
    expect(read('[name=pieces]')).to.contain('Sheet Pieces');
    await chooseIn('Pieces of which cloth', 'main');
    expect(panel().view!.choice.cloth.which).to.equal('main');
    expect(all('.rows li').join()).to.contain('Skirt panel');
    expect(all('.rows li').join()).to.contain('Patch');
    expect(all('.choices .faults li')).to.deep.equal([]);
    await chooseIn('Look', 'briefly');
    await find();
    expect(said()).to.be.greaterThan(500);
    expect(drawn(1400)).to.be.closeTo(said(), 1.5);
    expect(read('.remark')).to.match(/^The pieces cover \d\d\.\d % of it\.$/);
  });

  it('tells what is wrong with a row and with the cloth, and takes nothing typed away', async () => {
    await app.tabTo('Usable width');
    await press('Control+a');
    await sendKeys({ type: '140' });
    await press('Tab');
    const cloth = app.part('tt-lay-cloth', lay()).shadowRoot!;
    await soon(() => words(cloth.querySelector('.fault')?.textContent).includes('140 has no unit: type 140 cm or 140 in.'), 'the width is not refused');
    expect(cloth.querySelector<HTMLInputElement>('[name=width]')!.value).to.equal('140');
    expect(lay().querySelector<HTMLButtonElement>('.search button')!.disabled).to.equal(true);
    await app.tabTo('Usable width', { back: true });
    await press('Control+a');
    await sendKeys({ type: '140 cm' });
    await press('Tab');
    await soon(() => !cloth.querySelector('.fault'), 'the width is not understood');
  });

  it('is compared flat, folded and one way in one table, of which one is chosen', async () => {
    await pressButton('Compare');
    await pressButton('Compare');
    await soon(() => panel().view!.compared.length === 4 && !panel().view!.comparing, 'the comparison does not end');
    await panel().updateComplete;
    const rows = panel().view!.compared;
    expect(rows.map(({ name }) => name)).to.deep.equal(['140.0 cm wide, flat', '140.0 cm wide, flat, one way', '140.0 cm wide, folded lengthwise', '140.0 cm wide, folded lengthwise, one way']);
    expect(rows.filter(({ least }) => least).length).to.be.greaterThan(0);
    const chosen = rows.findIndex(({ length }, at) => at > 0 && length !== '');
    await pressButton(`Choose: ${rows[chosen]!.name}`);
    expect(read('.headline')).to.equal(`Cut ${rows[chosen]!.length} of cloth 140.0 cm (55 ⅛ in) wide.`);
    expect(panel().view!.choice.cloth.oneWay).to.equal(rows[chosen]!.name.includes('one way'));
    expect(drawn(rows[chosen]!.name.includes('folded') ? 700 : 1400)).to.be.closeTo(said(), 1.5);
  });

  it('is moved by keys and by the pointer; what overlaps is said at once, and undone', async () => {
    const before = places();
    pieces()[1]!.focus();
    for (let times = 0; times < 6; times++) await press('ArrowLeft');
    await panel().updateComplete;
    expect(places()).not.to.deep.equal(before);
    const { left, top, width, height } = pieces()[0]!.getBoundingClientRect();
    const at: [number, number] = [Math.round(left + width / 2), Math.round(top + height / 2)];
    await sendMouse({ type: 'move', position: at });
    await sendMouse({ type: 'down' });
    await sendMouse({ type: 'move', position: [at[0] - 60, at[1] + 90] });
    await sendMouse({ type: 'up' });
    await panel().updateComplete;
    expect(read('.headline')).to.equal('Moved by hand: it cannot be cut like this.');
    expect(all('.layout .faults li').join(' ')).to.match(/overlap|sticks out/);
    expect(drawing().querySelectorAll('[fill="url(#lay-wrong)"]').length).to.be.greaterThan(0);
    expect([...lay().querySelectorAll('button')].find((each) => words(each.textContent) === 'Keep this layout')!.disabled).to.equal(true);
    for (let times = 0; times < 7; times++) await press('Control+z');
    await panel().updateComplete;
    expect(places()).to.deep.equal(before);
    expect(all('.layout .faults li')).to.deep.equal([]);
  });

  it('is settled from where it was moved to', async () => {
    pieces()[1]!.focus();
    await press('Shift+ArrowLeft');
    await pressButton('Settle from here');
    await soon(() => /^Found in/.test(read('[role=status].standing')), 'it does not settle');
    await panel().updateComplete;
    expect(read('.headline')).to.match(/^Cut /);
    expect(all('.layout .faults li')).to.deep.equal([]);
  });

  it('is kept under a name, and is told to be older once a piece has changed', async () => {
    await pressButton('Keep this layout');
    expect(app.said).to.match(/^Kept as “Linden tea dress/);
    expect(all('.kept li').length).to.equal(1);
    expect(all('.kept .note')).to.deep.equal([]);
    await pressButton('Back to the cells');
    await app.openSheet('Pieces');
    await app.put('C3', '25 cm');
    await open();
    expect(all('.kept .note').join()).to.contain('Older than its pieces');
    await app.press('Escape');
    await app.press('Control+z');
    await open();
    expect(all('.kept .note')).to.deep.equal([]);
  });

  it('has room for a second list, which is drawn with a pattern of its own', async () => {
    await pressButton('Back to the cells');
    await app.run('Add a blank sheet');
    await app.fill('A1', [['Piece', 'Shape', 'Length', 'Width', 'How many'], ['Camisole front', 'rectangle', '40 cm', '44 cm', '1'], ['Camisole back', 'rectangle', '36 cm', '44 cm', '1']]);
    await open();
    await app.tabTo('Length at hand');
    await press('Control+a');
    await sendKeys({ type: '6 m' });
    await press('Tab');
    await chooseIn('Look for', 'room');
    await chooseIn('The second list', 'sheet n');
    await find();
    expect(all('.remark')).to.include('Both lists fit in the length at hand.');
    expect(drawing().querySelectorAll('[fill="url(#lay-second)"]').length).to.equal(2);
    expect(places().filter((place) => place.includes('Camisole')).length).to.equal(2);
  });

  it('is printed as a plan by which every piece can be laid with a tape', async () => {
    let printed = '';
    app.window.print = () => {
      app.window.dispatchEvent(new Event('beforeprint'));
      const paper = app.window.document.querySelector('body > tt-paper')!.shadowRoot!;
      printed = words(paper.textContent);
      expect(paper.querySelectorAll('.plan tbody tr').length).to.equal(pieces().length);
      app.window.dispatchEvent(new Event('afterprint'));
    };
    await pressButton('Print a plan to lay by');
    await soon(() => printed !== '', 'nothing is printed');
    expect(printed).to.contain(read('.headline'));
    expect(printed).to.contain('A: from the cut end');
  });

  it('is saved as SVG in mm of cloth', async () => {
    const { name, blob } = await app.nextFile(() => pressButton('Save as SVG'));
    expect(name).to.match(/\.svg$/);
    const svg = new DOMParser().parseFromString(await blob.text(), 'image/svg+xml').documentElement;
    expect(svg.querySelector('parsererror') === null).to.equal(true);
    expect(svg.getAttribute('width')).to.match(/^\d+(\.\d+)?mm$/);
    expect(svg.querySelectorAll('g').length).to.equal(pieces().length);
  });
});
