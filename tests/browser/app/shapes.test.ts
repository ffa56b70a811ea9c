/** Drawn shapes in the browser: real keys and pointer on the board, hostile drawing files, a photograph with a known piece on it. */
import { expect, fixture, html } from '@open-wc/testing';
import { sendMouse } from '@web/test-runner-commands';
import { Desk } from '../../../src/app/desk.ts';
import { readDrawing } from '../../../src/app/shape-file.ts';
import { panel } from '../../../src/app/shape.ts';
import type { ShapesPanel } from '../../../src/panels/index.ts';
import type { Board } from '../../../src/panels/board.ts';
import '../../../src/panels/shape.ts';
import { emptyBook, recordsOf, type Shape } from '../../../src/workbook/index.ts';
import { accessible, button, press } from '../panels/support.ts';

interface Open {
  readonly desk: Desk;
  readonly shown: ShapesPanel;
  readonly board: () => Board;
  shapes(): readonly Shape[];
}

async function open(): Promise<Open> {
  const desk = new Desk(emptyBook('test'));
  const place = await fixture<HTMLElement>(html`<div></div>`);
  place.style.width = '1200px';
  const { render } = await import('lit');
  const draw = (): void => { render(made.render(), place); };
  const made = panel({ desk, keep: {} as never, draw: () => draw(), close: () => undefined });
  desk.addEventListener('change', draw);
  draw();
  const shown = place.querySelector('tt-shapes')!;
  await shown.updateComplete;
  const board = (): Board => shown.renderRoot.querySelector<Board>('tt-board')!;
  return { desk, shown, board, shapes: () => recordsOf(desk.book, 'shape').map(({ data }) => data) };
}

async function settled({ shown, board }: Open): Promise<void> {
  await shown.updateComplete;
  await board()?.updateComplete;
  // The board measures itself and draws once more.
  await new Promise((done) => { requestAnimationFrame(() => requestAnimationFrame(done)); });
}

const spot = (open: Open, label: string): SVGGElement => {
  const found = [...open.board().renderRoot.querySelectorAll<SVGGElement>('g.spot')].find((each) => each.getAttribute('aria-label')!.startsWith(label));
  if (!found) throw new Error(`There is no ${label} on the board.`);
  return found;
};

const middleOf = (element: Element): [number, number] => {
  const { x, y, width, height } = element.getBoundingClientRect();
  return [Math.round(x + width / 2), Math.round(y + height / 2)];
};

async function drag(from: [number, number], to: [number, number]): Promise<void> {
  await sendMouse({ type: 'move', position: from });
  await sendMouse({ type: 'down' });
  await sendMouse({ type: 'move', position: [Math.round((from[0] + to[0]) / 2), Math.round((from[1] + to[1]) / 2)] });
  await sendMouse({ type: 'move', position: to });
  await sendMouse({ type: 'up' });
}

const drawing = (inside: string, size = 'width="200mm" height="100mm" viewBox="0 0 200 100"'): File => new File([`<svg xmlns="http://www.w3.org/2000/svg" ${size}>${inside}</svg>`], 'pieces.svg');
const round = (given: { readonly x: number; readonly y: number }): readonly [number, number] => [Math.round(given.x * 100) / 100, Math.round(given.y * 100) / 100];

describe('the board', () => {
  it('is drawn on with the keys: a step, ten steps, a bend, one point more and one less, each undone by one undo', async () => {
    const all = await open();
    button(all.shown, 'Draw on the board').click();
    await settled(all);
    expect(all.shapes()[0]!.points.map(round)).to.deep.equal([[0, 0], [200, 0], [200, 300], [0, 300]]);
    spot(all, 'Point 2').focus();
    await press('ArrowRight', 'Shift+ArrowUp');
    await settled(all);
    expect(all.shapes()[0]!.points.map(round)[1]).to.deep.equal([205, -50]);
    spot(all, 'Edge after point 3').focus();
    await press('ArrowDown', 'ArrowDown');
    expect(round(all.shapes()[0]!.points[2]!.through!)).to.deep.equal([100, 310]);
    spot(all, 'Point 1').focus();
    await press('Insert');
    await settled(all);
    expect(all.shapes()[0]!.points).to.have.length(5);
    spot(all, 'Point 2').focus();
    await press('Delete');
    await settled(all);
    expect(all.shapes()[0]!.points).to.have.length(4);
    for (let i = 0; i < 6; i++) all.desk.undo();
    expect(all.shapes()[0]!.points.map(round)).to.deep.equal([[0, 0], [200, 0], [200, 300], [0, 300]]);
    await accessible(all.shown);
  });

  it('is drawn on with the pointer, snapping to the squares, one edit for one drag', async () => {
    const all = await open();
    button(all.shown, 'Draw on the board').click();
    await settled(all);
    const steps = all.desk.history.done.length;
    const [x, y] = middleOf(spot(all, 'Point 3').querySelector('.hit')!);
    await drag([x, y], [x - 41, y - 22]);
    await settled(all);
    const [px, py] = round(all.shapes()[0]!.points[2]!);
    expect([px % 5, py % 5]).to.deep.equal([0, 0]);
    expect(px).to.be.lessThan(200);
    expect(py).to.be.lessThan(300);
    expect(all.desk.history.done.length).to.equal(steps + 1);
  });

  it('takes typed figures in any unit, and says what is none', async () => {
    const all = await open();
    button(all.shown, 'Draw on the board').click();
    await settled(all);
    const field = (name: string): HTMLInputElement => all.shown.renderRoot.querySelector<HTMLInputElement>(`input[aria-label="${name}"]`)!;
    const type = async (name: string, text: string): Promise<void> => {
      field(name).value = text;
      field(name).dispatchEvent(new Event('change'));
      await settled(all);
    };
    await type('Point 2, across', '8 in');
    await type('Point 2, how far its edge bends out', '1.5 cm');
    expect(all.shapes()[0]!.points[1]!.x).to.equal(203.2);
    expect(field('Point 2, how far its edge bends out').value).to.equal('1.5 cm');
    await type('Point 1, down', 'low');
    expect(all.shown.renderRoot.querySelector('.note')!.textContent).to.contain('“low” is no length');
    const name = all.shown.renderRoot.querySelector<HTMLInputElement>('input[name="name"]')!;
    name.value = 'gore';
    name.dispatchEvent(new Event('change'));
    await settled(all);
    expect(all.shown.renderRoot.querySelector('.note')!.textContent).to.contain('“gore” is a word for a shape already');
    expect(all.shapes()[0]!.name).to.equal('Shape');
  });
});

describe('a drawing file', () => {
  it('gives its pieces in real units, with transforms, viewBox, curves and grain lines', async () => {
    const { shapes, sentences } = await readDrawing(drawing(
      '<g transform="translate(1 2)"><path id="Front" d="M0 0h5q2 4 0 8h-5z"/><path class="grain line" d="M2 2v5"/></g><rect id="Cuff" x="10" y="1" width="4" height="6" transform="rotate(90 10 1)"/><line x1="6" y1="2" x2="9" y2="2"/>',
      'width="10in" height="5in" viewBox="0 0 20 10"'));
    expect(sentences).to.deep.equal([]);
    const [front, cuff] = shapes;
    expect(front!.name).to.equal('Front');
    expect(front!.points.map(round)).to.deep.equal([[12.7, 25.4], [76.2, 25.4], [76.2, 127], [12.7, 127]]);
    expect(round(front!.points[1]!.through!)).to.deep.equal([88.9, 76.2]);
    expect(front!.grain.map(round)).to.deep.equal([[38.1, 50.8], [38.1, 114.3]]);
    expect(cuff!.points.map(round)).to.deep.equal([[127, 12.7], [127, 63.5], [50.8, 63.5], [50.8, 12.7]]);
    expect(cuff!.grain.map(round)).to.deep.equal([[76.2, 25.4], [114.3, 25.4]]);
  });

  it('says one sentence for each thing that is left out or taken for granted', async () => {
    const { shapes, sentences } = await readDrawing(drawing(
      '<rect id="Yoke" width="100" height="80"/><rect id="seam" x="5" y="5" width="90" height="70"/><text>Yoke</text><text>cut 2</text><use href="#Yoke"/><path d="M0 0L9 9L0 9"/><path id="odd" d="M0 0 L nonsense"/><rect display="none" width="50" height="50"/>', 'viewBox="0 0 200 100"'));
    expect(shapes.map(({ name }) => name)).to.deep.equal(['Yoke']);
    expect(sentences).to.deep.equal([
      'The drawing says its size in no unit of length, so it was taken as 96 to the inch: measure a piece before you cut.',
      '“odd” cannot be read, and was left out.', 'Left out 2 times: a text.', 'Left out: a copy of another part.', 'Left out: a part that is hidden.', 'Left out: a line that is not closed.',
      '“seam” lies within “Yoke”, and was left out: the outermost line is taken.',
      '“Yoke” has no grain line in it, so it was taken to be upright: turn it on the board if it is not.',
    ]);
  });

  it('that is hostile does nothing: no script, no picture, no entity, no endless figure', async () => {
    const before = performance.getEntriesByType('resource').length;
    const { shapes } = await readDrawing(drawing(
      '<script>window.hurt = true</script><image href="https://example.invalid/a.png"/><style>@import "https://example.invalid/b.css"</style><rect onload="window.hurt = true" width="90" height="60" style="background: url(https://example.invalid/c.png)"/><path d="M0 0 1e300 0 0 1e300z"/><foreignObject><body xmlns="http://www.w3.org/1999/xhtml"><img src="x" onerror="window.hurt = true"/></body></foreignObject>'));
    await new Promise((done) => { setTimeout(done, 50); });
    expect(shapes).to.have.length(1);
    expect('hurt' in window).to.equal(false);
    expect(performance.getEntriesByType('resource').slice(before).filter(({ name }) => name.includes('example.invalid'))).to.deep.equal([]);
    expect((await readDrawing(new File(['<!DOCTYPE svg [<!ENTITY a "b">]><svg/>'], 'a.svg'))).sentences[0]).to.contain('entities');
    expect((await readDrawing(new File(['<svg'], 'a.svg'))).sentences[0]).to.contain('cannot be read');
    expect((await readDrawing(new File(['<html xmlns="http://www.w3.org/1999/xhtml"/>'], 'a.svg'))).sentences).to.deep.equal(['This file is no SVG drawing.']);
    expect((await readDrawing(drawing('<g>'.repeat(20_100) + '</g>'.repeat(20_100)))).shapes).to.deep.equal([]);
  });

  it('comes back as it went out: a drawn shape written as path data and read again', async () => {
    const points = [{ x: 10, y: 12 }, { x: 150.25, y: 20, through: { x: 171, y: 51.5 } }, { x: 140, y: 90 }, { x: 12, y: 80 }];
    const path = points.map(({ x, y, through }, i) => {
      const next = points[(i + 1) % points.length]!;
      return through ? `Q${2 * through.x - (x + next.x) / 2} ${2 * through.y - (y + next.y) / 2} ${next.x} ${next.y}` : `L${next.x} ${next.y}`;
    });
    const { shapes } = await readDrawing(drawing(`<path d="M10 12${path.join('')}Z"/><line x1="50" y1="30" x2="50" y2="70"/>`));
    expect(shapes[0]!.points).to.deep.equal(points);
  });

  it('is brought in as one edit', async () => {
    const all = await open();
    const field = all.shown.renderRoot.querySelector<HTMLInputElement>('input[accept^=".svg"]')!;
    const files = new DataTransfer();
    files.items.add(drawing('<rect id="Yoke" width="60" height="80"/><rect id="sleeve" x="100" width="60" height="80"/>'));
    field.files = files.files;
    field.dispatchEvent(new Event('change'));
    for (let i = 0; i < 50 && all.shapes().length === 0; i++) await new Promise((done) => { setTimeout(done, 20); });
    // “sleeve” is a word for a shape, and would never be found under Shape.
    expect(all.shapes().map(({ name }) => name)).to.deep.equal(['Yoke', 'sleeve 2']);
    all.desk.undo();
    expect(all.shapes()).to.deep.equal([]);
  });
});

describe('a photograph', () => {
  /** A mat of 60 × 45 cm seen aslant, with a piece on it whose corners are known. */
  const H = [2, 0.25, 180, 0.05, 1.75, 120, 0.0001, 0.0004] as const;
  const look = (x: number, y: number): [number, number] => {
    const w = H[6] * x + H[7] * y + 1;
    return [(H[0] * x + H[1] * y + H[2]) / w, (H[3] * x + H[4] * y + H[5]) / w];
  };
  const PIECE = [[150, 80], [420, 100], [460, 360], [180, 380]] as const;

  async function photo(): Promise<File> {
    const canvas = document.createElement('canvas');
    [canvas.width, canvas.height] = [1600, 1100];
    const pen = canvas.getContext('2d')!;
    const fill = (places: readonly (readonly [number, number])[], colour: string): void => {
      pen.fillStyle = colour;
      pen.beginPath();
      for (const [x, y] of places) pen.lineTo(...look(x, y));
      pen.fill();
    };
    fill([[0, 0], [600, 0], [600, 450], [0, 450]], '#2c5b4d');
    fill(PIECE, '#f4ead0');
    return new File([await new Promise<Blob>((done) => { canvas.toBlob((blob) => done(blob!)); })], 'mat.png', { type: 'image/png' });
  }

  it('is straightened by four corners, and a piece traced on it has its true size within the error that is said', async () => {
    const all = await open();
    const field = all.shown.renderRoot.querySelector<HTMLInputElement>('input[accept^="image"]')!;
    const files = new DataTransfer();
    files.items.add(await photo());
    field.files = files.files;
    field.dispatchEvent(new Event('change'));
    for (let i = 0; i < 50 && !all.shown.renderRoot.querySelector('tt-trace'); i++) await new Promise((done) => { setTimeout(done, 20); });
    await settled(all);
    const svg = (): SVGSVGElement => all.board().renderRoot.querySelector('svg')!;
    const onScreen = ([x, y]: readonly [number, number]): [number, number] => {
      const at = new DOMPoint(x, y).matrixTransform(svg().getScreenCTM()!);
      return [Math.round(at.x), Math.round(at.y)];
    };
    svg().scrollIntoView({ block: 'center' });
    const corners: readonly (readonly [number, number])[] = [[0, 0], [600, 0], [600, 450], [0, 450]];
    for (const [i, name] of ['left upper', 'right upper', 'right lower', 'left lower'].entries()) {
      await drag(middleOf(spot(all, `Corner of the rectangle, ${name}`).querySelector('.hit')!), onScreen(look(...corners[i]!)));
      await settled(all);
    }
    const trace = all.shown.renderRoot.querySelector('tt-trace')!;
    button(trace, 'Straighten').click();
    await settled(all);
    expect(all.shapes()[0]).to.include({ from: 'photograph', file: 'mat.png' });
    for (const [i, [x, y]] of PIECE.entries()) {
      await drag(middleOf(spot(all, `Point ${i + 1}`).querySelector('.hit')!), onScreen(look(x, y)));
      await settled(all);
    }
    const [shape] = all.shapes();
    // A pixel of the screen is about two of the photograph, so a hand on whole pixels is as near as this.
    for (const [i, [x, y]] of PIECE.entries()) expect(Math.hypot(shape!.points[i]!.x - x, shape!.points[i]!.y - y)).to.be.lessThan(2 * shape!.error);
    expect(shape!.error).to.be.greaterThan(0.5);
    expect(shape!.error).to.be.lessThan(4);
    expect(trace.renderRoot.querySelector('[role=status]')!.textContent).to.match(/^A pixel is at most 0\.\d mm/);
    await accessible(all.shown);
    button(trace, 'Done with the photograph').click();
    await settled(all);
    expect(JSON.stringify(all.desk.book).length).to.be.lessThan(3_000);
  });
});
