/** Where it matters, a template's sheet pins what goes wrong: nothing with its own figures; with one beyond, the cell that it shows in. */
import { describe, expect, it } from 'vitest';
import { chartEdit } from '../../../src/app/chart-edit.ts';
import { shippedTemplate } from '../../../src/app/shipped.ts';
import { cellName, readArea } from '../../../src/formula/index.ts';
import { Results } from '../../../src/reckoning/index.ts';
import { apply, cellAt, emptyBook, sheetFromTemplate, type Book, type CellChange } from '../../../src/workbook/index.ts';
import { Engine } from '../../../workers/reckon/engine.ts';

const CHART = 'cm,10,12,14,16,18\nBust,88,92,97,102,107\nWaist,70,74,79,84,89\nHip,95,99,104,109,114';

function started(id: string): Book {
  const withChart = apply(chartEdit(CHART, { sheet: 'Chart', name: 'chart' }, emptyBook('test')).edit, emptyBook('test')).book;
  return apply(sheetFromTemplate(shippedTemplate(id), withChart).edit, withChart).book;
}

/** "B9 BUTTON.OFF" for every pin of the template's sheet, some inputs typed anew. */
function pins(id: string, typed: Readonly<Record<string, string>> = {}): string[] {
  const book = started(id);
  const sheet = book.sheets.at(-1)!;
  const cells = Object.entries(typed).map(([cell, raw]): CellChange => {
    const { top: row, left: col } = readArea(cell)!;
    const before = cellAt(sheet, row, col);
    if (!before?.input) throw new Error(`${cell} of ${id} is no input`);
    return { row, col, cell: { ...before, raw } };
  });
  const results = new Results();
  results.apply(new Engine().open(1, apply({ do: 'setCells', sheet: sheet.id, cells }, book).book));
  return results.pins.of(sheet.id).flatMap(({ row, col, cautions }) => cautions.map(({ by }) => `${cellName(row, col)} ${by}`));
}

describe('pins on the sheets of templates', () => {
  it.each<[string, Record<string, string>, string]>([
    ['fit', { B11: '1 cm' }, 'B13 EASE'],
    ['fit', { B17: '12 cm', B21: '1 cm' }, 'B20 SEAM.SHIFT'],
    ['alterations', { D9: '1 cm' }, 'F9 SEAM.LEFT'],
    ['alterations', { B24: '4 cm' }, 'B30 HEM.LEFT'],
    ['pleated-skirt', { B10: '30 cm' }, 'B15 PLEAT.CLOTH'],
    ['pleated-skirt', { B10: '30 cm' }, 'B16 PLEAT.DEPTH'],
    ['circle-skirt', { B8: '140 cm' }, 'B10 CIRCLE.OUTER'],
    ['circle-skirt', { B9: '8 cm' }, 'B12 HEM.EASED'],
    ['front-fastening', { B4: '5' }, 'B9 BUTTON.OFF'],
    ['contrast-band', { B24: '40 cm' }, 'B25 INTERFACING.SPARE'],
    ['bodice-and-sleeve', { B17: '1 cm' }, 'B18 DART.INTAKE'],
    ['bodice-and-sleeve', { B25: '30 cm' }, 'B28 CAP.EASE'],
    ['knit-top', { B8: '90 %' }, 'B9 STRETCH.GARMENT'],
    ['knit-top', { B11: '40 cm' }, 'B12 STRETCH.WORN'],
    ['child-notes', { B8: 'hood' }, 'B11 CORD.PLACE'],
    ['child-notes', { B13: '90 cm' }, 'B14 CORD.FREE'],
    ['child-notes', { B19: 'yes' }, 'B21 NIGHTWEAR.OVER'],
    ['child-notes', { B24: '66 cm' }, 'B25 NIGHTWEAR.INFANT'],
    ['child-notes', { B4: '2' }, 'B32 SMALL.PART'],
  ])('%s with %o', (id, typed, pin) => {
    expect(pins(id)).not.toContain(pin);
    expect(pins(id, typed)).toContain(pin);
  });

  it('say of a skirt that its closed waist does not pass the hip, until it does', () => {
    expect(pins('circle-skirt')).toContain('B23 OPENING.ROOM');
    expect(pins('circle-skirt', { B22: '70 cm' })).not.toContain('B23 OPENING.ROOM');
  });
});
