/** Pins as the panel lists them, what mends them, and acknowledging. */
import { describe, expect, it } from 'vitest';
import { Desk } from '../../../src/app/desk.ts';
import { mendOf } from '../../../src/app/pin-mend.ts';
import { Pins } from '../../../src/app/pins.ts';
import { sheetView } from '../../../src/app/sheet-view.ts';
import { readArea } from '../../../src/formula/index.ts';
import { apply, emptyBook, type CellChange, type Edit } from '../../../src/workbook/index.ts';
import { Engine } from '../../../workers/reckon/engine.ts';

const typing = (cells: Readonly<Record<string, string>>): Edit => ({
  do: 'setCells', sheet: 1,
  cells: Object.entries(cells).map(([cell, raw]): CellChange => ({ row: readArea(cell)!.top, col: readArea(cell)!.left, cell: { raw } })),
});

/** A desk whose results follow when they are asked to. */
function deskOf(cells: Readonly<Record<string, string>>): { desk: Desk; pins: Pins; follow: () => void } {
  const desk = new Desk(apply(typing(cells), emptyBook('test')).book);
  let revision = 0;
  const follow = (): void => void desk.results.apply(new Engine().open(++revision, desk.book));
  follow();
  return { desk, pins: new Pins(() => desk), follow };
}

const rows = (pins: Pins) => pins.listed.sheets.flatMap((sheet) => sheet.rows);

describe('pins', () => {
  const cells = { A1: 'Finished', B1: '90 cm', A2: 'Bust', B2: '94 cm', A3: 'Ease', B3: '=EASE(B1, B2)' };

  it('are listed by sheet with their words, their figure, and what would be typed where', () => {
    const { pins } = deskOf(cells);
    expect(rows(pins)).toEqual([expect.objectContaining({
      place: 'B3', label: 'Ease', note: null, mend: { to: '94 cm', place: 'B1', label: 'Finished' },
      sentence: 'The garment is smaller than the body here: right only for cloth that stretches. In cloth that does not, it needs at least 94.0 cm.',
    })]);
    expect([...pins.counts]).toEqual([[1, 1]]);
  });

  it.each([
    ['own', 'at least 94.1 cm.'], ['in', 'at least 37 ⅛ in.'], ['both', 'at least 94.1 cm (37 ⅛ in).'],
  ] as const)('show the figure so that it mends when it is typed as shown: %s', (show, words) => {
    const { desk, pins } = deskOf({ ...cells, B2: '94.03 cm' });
    desk.do({ do: 'setSettings', settings: { ...desk.book.settings, show } });
    expect(rows(pins)[0]!.sentence).toContain(words);
  });

  it('are mended by one edit, which can be undone', () => {
    const { desk, pins, follow } = deskOf(cells);
    pins.mend(pins.all[0]);
    expect(desk.sheet.rows[0]?.[1]?.raw).toBe('94 cm');
    expect(desk.history.done.at(-1)?.label).toBe('mend the pin on B3 of Sheet 1: 94 cm in B1');
    follow();
    expect(rows(pins)).toEqual([]);
    desk.undo();
    expect(desk.sheet.rows[0]?.[1]?.raw).toBe('90 cm');
  });

  it('acknowledged, are told apart and shown so in the cell; they come back when a figure changes', () => {
    const { desk, pins, follow } = deskOf(cells);
    const view = () => sheetView(desk.sheet, desk.results, desk.showAs, false).cell(2, 1)!;
    expect(view()).toMatchObject({ caution: expect.stringContaining('94.0 cm') });
    pins.acknowledge(pins.all[0], 'a knit');
    follow();
    expect(rows(pins)[0]).toMatchObject({ note: 'a knit' });
    expect(pins.counts.size).toBe(0);
    expect(view()).toMatchObject({ acknowledged: expect.stringMatching(/94\.0 cm\. a knit$/) });
    expect(view().caution).toBeUndefined();
    desk.do(typing({ B1: '89 cm' }));
    follow();
    expect(rows(pins)[0]).toMatchObject({ note: null });
    desk.undo();
    follow();
    expect(rows(pins)[0]).toMatchObject({ note: 'a knit' });
    pins.pinAgain(pins.all[0]);
    expect(rows(pins)[0]).toMatchObject({ note: null });
  });

  it('are gone through one after another, over the sheets and round', () => {
    const { desk, pins } = deskOf({ ...cells, D9: '=EASE(B1, B2)' });
    const at = () => { pins.next(); return desk.selection.focus; };
    expect([at(), at(), at()]).toEqual([{ row: 2, col: 1 }, { row: 8, col: 3 }, { row: 2, col: 1 }]);
    expect(desk.said).toMatch(/^Pin: The garment is smaller/);
  });

  it.each([
    // Rounded the way that keeps the pin away: up for at least, down for at most.
    [{ A1: '87.03 cm', A2: '94.03 cm', B1: '=EASE(A1, A2)' }, '94.1 cm'],
    [{ A1: '34 in', A2: '94.03 cm', B1: '=EASE(A1, A2)' }, '37 1/8 in'],
    [{ A1: '0.9 m', A2: '94.03 cm', B1: '=EASE(A1, A2)' }, '0.941 m'],
    [{ A1: '60 mm', B1: '=PLEAT.CLOTH(92 cm, 17, A1, "knife")' }, '54 mm'],
    [{ A1: '3 in', B1: '=PLEAT.CLOTH(92 cm, 17, A1, "knife")' }, '2 1/8 in'],
    [{ A1: '60 %', B1: '=STRETCH.GARMENT(100 cm, A1, 33.37 %)' }, '33.3 %'],
    [{ A1: '8', B1: '=DART.INTAKE(104 cm, 72 cm, A1, 3 cm)' }, '11'],
    [{ A1: '=80 cm + 7 cm', B1: '=EASE(A1, 94 cm)' }, null],
    [{ B1: '=EASE(87 cm, 94 cm)' }, null],
    [{ B1: '=CLOTH.BUY(2 m)' }, null],
  ])('%o are mended with %s', (given, raw) => {
    const { desk, pins, follow } = deskOf(given as Record<string, string>);
    const mend = mendOf(pins.all[0]!.caution, desk.book);
    expect(mend?.raw ?? null).toBe(raw);
    if (!mend) return;
    pins.mend(pins.all[0]);
    follow();
    expect(pins.all).toEqual([]);
  });
});
