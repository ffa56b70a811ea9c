/** The garment that opens at first start: an invented person's dress, made of the shipped templates and chart. */
import linden from '../../sheets/demo.json';
import { readArea } from '../formula/index.ts';
import { apply, cellAt, emptyBook, sheetFromTemplate, type Area, type Book, type Edit } from '../workbook/index.ts';
import { chartEdit } from './chart-edit.ts';
import { shippedTemplate } from './shipped.ts';

interface DemoSheet {
  readonly template: string;
  readonly name: string;
  readonly about: string;
  /** Raw texts by cell, over what the template has. */
  readonly fill: Readonly<Record<string, string>>;
}

export function demoBook(id: string): Book {
  let book = apply({ do: 'setTitle', title: linden.title, person: linden.person }, emptyBook(id)).book;
  const blank = book.sheets[0]!.id;
  const perform = (edit: Edit) => { book = apply(edit, book).book; };
  perform(chartEdit(linden.chart.lines.join('\n'), { sheet: linden.chart.sheet, name: linden.chart.name, about: linden.chart.about }, book).edit);
  // Typed by the schema here, not by what this file happens to fill in.
  for (const each of linden.sheets as unknown as readonly DemoSheet[]) {
    const { edit, sheet } = sheetFromTemplate(shippedTemplate(each.template), book);
    perform(edit);
    const named = book.sheets.find(({ id: sheetId }) => sheetId === sheet)?.name;
    if (named !== each.name) perform({ do: 'renameSheet', sheet, name: each.name });
    perform({ do: 'setAbout', sheet, about: each.about });
    const page = book.sheets.find(({ id: sheetId }) => sheetId === sheet)!;
    const cells = Object.entries(each.fill).map(([place, raw]) => {
      const area = readArea(place);
      if (!area) throw new Error(`${place} is no cell in the demo’s ${each.name}.`);
      const { top: row, left: col } = area;
      return { row, col, cell: { ...cellAt(page, row, col), raw } };
    });
    if (cells.length) perform({ do: 'setCells', sheet, cells });
  }
  perform({ do: 'removeSheet', sheet: blank });
  linden.marks.forEach((mark, at) => perform({ do: 'setRecord', kind: 'mark', id: String(at), data: mark }));
  return book;
}

/** What is selected at first: a result, so that its working shows. */
export function demoOpens(demo: Book): Area {
  const { sheet: name, ...box } = readArea(linden.open)!;
  return { ...box, sheet: demo.sheets.find((sheet) => sheet.name === name)!.id };
}
