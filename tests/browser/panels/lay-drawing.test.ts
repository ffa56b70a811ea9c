import { expect, fixture, html } from '@open-wc/testing';
import { resetMouse, sendMouse } from '@web/test-runner-commands';
import type { DrawnLay, LaidPiece } from '../../../src/pictures/index.ts';
import '../../../src/panels/lay-drawing.ts';
import type { LayDrawing } from '../../../src/panels/lay-drawing.ts';
import { accessible, button, find, press, texts } from './support.ts';

const piece = (id: number, at: number, more: Partial<LaidPiece> = {}): LaidPiece =>
  ({ id, order: id + 1, name: `Piece ${id + 1}`, count: 'cut 1', outline: [[at, 0], [at + 500, 0], [at + 500, 400], [at, 400]], grain: 0, second: false, wrong: '', ...more });
const LAY: DrawnLay = {
  width: 800, length: 1200, cutAt: 1100, edges: { low: 'selvedge', high: 'selvedge', start: 'cut edge' }, foldAt: null, oneWay: false, remnant: null, flaws: [], left: null,
  pieces: [piece(0, 0), piece(1, 600, { wrong: 'overlaps', second: true })],
};

interface Said { readonly type: string; readonly id?: number; readonly by?: readonly [number, number] }

async function drawing(lay = LAY): Promise<{ made: LayDrawing; said: Said[] }> {
  const said: Said[] = [];
  const box = await fixture<HTMLElement>(html`<div><tt-lay-drawing .lay=${lay} .spoken=${['1: Piece 1, cut 1', '2: Piece 2, cut 1. It overlaps.']} .turns=${[true, false]} movable canUndo></tt-lay-drawing></div>`);
  const made = box.querySelector('tt-lay-drawing')!;
  Object.assign(made.style, { width: '700px', height: '480px' });
  for (const type of ['tt-lay-select', 'tt-lay-begin', 'tt-lay-move', 'tt-lay-end', 'tt-lay-turn', 'tt-lay-undo']) box.addEventListener(type, (event) => said.push({ type, ...(event as CustomEvent<object>).detail }));
  for (let frames = 0; frames < 5; frames++) await new Promise((done) => { requestAnimationFrame(done); });
  await made.updateComplete;
  return { made, said };
}

const pieces = (made: LayDrawing): SVGGElement[] => [...made.renderRoot.querySelectorAll<SVGGElement>('g.piece')];
const middle = (element: Element): [number, number] => {
  const { left, top, width, height } = element.getBoundingClientRect();
  return [Math.round(left + width / 2), Math.round(top + height / 2)];
};

describe('a layout on the screen', () => {
  afterEach(() => resetMouse());

  it('is told apart by patterns and words, and is accessible', async () => {
    const { made } = await drawing();
    expect(texts(made, '.lay-name, .lay-strong')).to.deep.equal(['1 Piece 1', 'cut 1', '2 Piece 2', 'overlaps']);
    expect([...made.renderRoot.querySelectorAll('path[fill]')].map((path) => path.getAttribute('fill'))).to.deep.equal(['url(#lay-second)', 'url(#lay-wrong)']);
    await accessible(made);
  });

  it('moves a chosen piece by 1 cm with an arrow, by 1 mm with Shift, and turns it by R where it may', async () => {
    const { made, said } = await drawing();
    pieces(made)[0]!.focus();
    await press('ArrowRight', 'Shift+ArrowUp', 'r');
    expect(said.filter(({ type }) => type !== 'tt-lay-begin' && type !== 'tt-lay-end')).to.deep.equal([
      { type: 'tt-lay-select', id: 0 }, { type: 'tt-lay-move', id: 0, by: [10, 0] }, { type: 'tt-lay-move', id: 0, by: [0, 1] }, { type: 'tt-lay-turn', id: 0 },
    ]);
    said.length = 0;
    await press('Tab', 'r', 'Control+z');
    expect(said).to.deep.equal([{ type: 'tt-lay-select', id: 1 }, { type: 'tt-lay-undo' }]);
    expect(button(made, 'Turn the piece').disabled).to.equal(true);
  });

  it('moves a piece under the pointer by as many mm as it goes, to scale', async () => {
    const { made, said } = await drawing();
    const at = middle(pieces(made)[0]!);
    const scale = pieces(made)[0]!.querySelector('.lay-piece')!.getBoundingClientRect().width / 500;
    await sendMouse({ type: 'move', position: at });
    await sendMouse({ type: 'down' });
    await sendMouse({ type: 'move', position: [at[0] + 30, at[1] - 20] });
    await sendMouse({ type: 'up' });
    const moves = said.filter(({ type }) => type === 'tt-lay-move');
    const sum = (axis: 0 | 1): number => moves.reduce((total, { by }) => total + by![axis], 0);
    expect(sum(0)).to.be.closeTo(30 / scale, 3);
    expect(sum(1)).to.be.closeTo(20 / scale, 3);
    expect([said[0]!.type, said[1]!.type, said.at(-1)!.type]).to.deep.equal(['tt-lay-select', 'tt-lay-begin', 'tt-lay-end']);
  });

  it('comes closer by keys and buttons, and goes back to all of it', async () => {
    const { made } = await drawing();
    const width = (): number => find(made, 'svg.cloth' as never).getBoundingClientRect().width;
    const all = width();
    expect(all).to.be.lessThan(701);
    find(made, '.scroll').focus();
    await press('=');
    await made.updateComplete;
    expect(width()).to.be.greaterThan(all * 1.3);
    button(made, 'All of it').click();
    await made.updateComplete;
    expect(width()).to.be.closeTo(all, 0.5);
  });
});
