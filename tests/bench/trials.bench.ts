/** Trials and a search beside plain edits of the same sheet in the same engine: 500 formulas, each needing the one before. */
import type { Book } from '../../src/workbook/types.ts';
import { Engine } from '../../workers/reckon/engine.ts';
import { race, report } from './measure.ts';

const FORMULAS = 500;
const TRIALS = 500;

function sheet(): Book {
  const rows = Array.from({ length: FORMULAS }, (_, i) => [i === 0 ? { raw: '10 cm' } : undefined, { raw: i === 0 ? '=A1*2' : `=B${i}+A$1/${i + 1}` }]);
  return { id: 'bench', title: 'Bench', person: '', settings: { show: 'own', inchStep: 8 }, names: [], nextSheetId: 2, sheets: [{ id: 1, name: 'Sheet 1', widths: {}, rows }] };
}

const raws = Array.from({ length: TRIALS }, (_, n) => `${11 + n / 10} cm`);
const input = { sheet: 1, row: 0, col: 0 };
const last = { sheet: 1, row: FORMULAS - 1, col: 1 };

export function run(only: string): void {
  if (!'trials'.includes(only)) return;
  const engine = new Engine();
  engine.open(1, sheet());
  let revision = 1;
  const edits = (): void => {
    for (const raw of raws) engine.apply(++revision, [{ do: 'cells', sheet: 1, cells: [{ row: 0, col: 0, raw }] }]);
  };
  const [tried, withPins, edited] = race([
    { name: 'trials', run: () => engine.tryOut(raws.map((raw) => ({ label: raw, values: [{ cell: input, raw }] })), [last]) },
    { name: 'trials with pins', run: () => engine.tryOut(raws.map((raw) => ({ label: raw, values: [{ cell: input, raw }] })), [last], { pins: true }) },
    { name: 'edits', run: edits },
  ], 7) as [number[], number[], number[]];
  report(`${TRIALS} trials over ${FORMULAS} formulas, beside as many edits`, tried, edited, '< 3');
  report('  the same with the pins of each', withPins, edited, '< 3');
}
