/** What the page of the benchmark can do; run.mjs asks for it and prints what comes of it. */
import { tokens } from '../../../src/look/index.ts';
import { COLUMNS, Cells, ROWS } from './cells.ts';
import { Bare, Library, Ours, type Contender } from './contenders.ts';

document.adoptedStyleSheets.push(tokens.styleSheet!);
const cells = new Cells();
const COPIED = 100_000;
const frame = (): Promise<number> => new Promise(requestAnimationFrame);
const boxes = new Map<string, HTMLElement>();
const made = (): Contender[] => [new Ours(cells), new Bare(), new Library()];

async function drawn(contender: Contender): Promise<number> {
  document.querySelector(`[data-of="${contender.name}"]`)?.remove();
  const box = document.createElement('div');
  box.className = 'box';
  box.dataset['of'] = contender.name;
  document.body.append(box);
  boxes.set(contender.name, box);
  const from = performance.now();
  await contender.draw(box);
  contender.layout();
  return performance.now() - from;
}

/** In turns, another first each time, so that what else the machine does weighs on all. */
async function inTurns(contenders: readonly Contender[], rounds: number, one: (contender: Contender, round: number) => Promise<number>): Promise<Record<string, number[]>> {
  const times: Record<string, number[]> = Object.fromEntries(contenders.map(({ name }) => [name, []]));
  for (let round = 0; round < rounds; round++) {
    for (let i = 0; i < contenders.length; i++) {
      const contender = contenders[(round + i) % contenders.length]!;
      times[contender.name]!.push(await one(contender, round));
      await frame();
    }
  }
  return times;
}

let contenders: readonly Contender[] = [];

const bench = {
  /** Milliseconds of the first drawing. */
  async firstDraw(rounds: number): Promise<Record<string, number[]>> {
    const times: Record<string, number[]> = {};
    for (let round = 0; round < rounds; round++) {
      contenders = made();
      for (const contender of contenders) {
        (times[contender.name] ??= []).push(await drawn(contender));
        await frame();
        await frame();
      }
    }
    return times;
  },

  /** Milliseconds of script and layout of one scroll step: mostly on by four rows, at times far off, and back. */
  scroll(rounds: number): Promise<Record<string, number[]>> {
    return inTurns(contenders, rounds, async (contender, round) => {
      const scroller = contender.scroller();
      scroller.scrollTop += round % 40 < 30 ? 120 : round % 40 === 39 ? 30_000 : -360;
      const from = performance.now();
      await contender.scrolled();
      contender.layout();
      return performance.now() - from;
    });
  },

  /** Milliseconds of script and layout until another figure of one cell is drawn. */
  async edit(rounds: number): Promise<Record<string, number[]>> {
    for (const contender of contenders) {
      contender.scroller().scrollTop = 0;
      await contender.scrolled();
    }
    await frame();
    return inTurns(contenders, rounds, async (contender, round) => {
      const from = performance.now();
      await contender.change(3 + (round % 5), 2, 100 + round);
      contender.layout();
      return performance.now() - from;
    });
  },

  /** Only our own grid stays. */
  async alone(): Promise<void> {
    for (const box of boxes.values()) box.remove();
    contenders = [new Ours(cells)];
    await drawn(contenders[0]!);
    await frame();
  },

  get grid() {
    return (contenders[0] as Ours).grid;
  },

  /** Scrolls, selects and moves about for so many milliseconds. */
  async use(time: number): Promise<void> {
    const { grid } = bench;
    grid.focus();
    const until = performance.now() + time;
    for (let step = 0; performance.now() < until; step++) {
      const [row, col] = [(step * 7919) % 90_000, (step * 31) % 26];
      if (step % 5 === 0) grid.select({ anchor: { row, col }, focus: { row: row + (step % 20), col: col + (step % 4) } });
      else if (step % 7 === 0) grid.view = cells.view();
      else grid.scroller.scrollBy(step % 11 === 0 ? 300 : 0, step % 13 === 0 ? -4000 : 170);
      await frame();
    }
    grid.select({ anchor: { row: 0, col: 0 }, focus: { row: 0, col: 0 } });
    await frame();
    await frame();
  },

  elements(): number {
    return bench.grid.renderRoot.querySelectorAll('*').length;
  },

  rows(): number {
    return bench.grid.renderRoot.querySelectorAll('.body [role=row]').length;
  },

  /** Selects all, then copies the first 100,000 cells, as the keys do. Milliseconds until they are on the clipboard. */
  async copy(): Promise<{ readonly took: number; readonly cells: number; readonly size: number }> {
    const { grid } = bench;
    grid.focus();
    const text = new Promise<string>((done, failed) => grid.addEventListener('tt-copy', ({ detail }) => void Promise.resolve(detail.text).then(done, failed), { once: true }));
    await frame();
    performance.mark('copy begins');
    const from = performance.now();
    grid.select({ anchor: { row: ROWS - 1, col: COLUMNS - 1 }, focus: { row: 0, col: 0 } }, false);
    await frame();
    const bottom = Math.ceil(COPIED / COLUMNS) - 1;
    grid.select({ anchor: { row: bottom, col: COLUMNS - 1 }, focus: { row: 0, col: 0 } }, false);
    grid.copy();
    const whole = await text;
    const took = performance.now() - from;
    performance.mark('copy ends');
    return { took, cells: (bottom + 1) * COLUMNS, size: whole.length };
  },
};

declare global {
  interface Window { bench: typeof bench }
}
window.bench = bench;
document.documentElement.dataset['ready'] = '';
