/** The steps at the cutting table: in order, with the ticket's figures, ticked for the figures of now. */
import { describe, expect, it } from 'vitest';
import { tableSteps } from '../../../src/app/at-the-table-steps.ts';
import { demoBook } from '../../../src/app/demo.ts';
import { tickEdit } from '../../../src/app/ticks.ts';
import { WHOLE_TICKET, ticketOf, ticketParts } from '../../../src/app/ticket.ts';
import { TICKET, ticketRecord } from '../../../src/app/ticket-choice.ts';
import type { ShowAs } from '../../../src/quantities/index.ts';
import { Results } from '../../../src/reckoning/index.ts';
import { apply, recordsOf, sheetNamed, type Book, type Lay } from '../../../src/workbook/index.ts';
import { Engine } from '../../../workers/reckon/engine.ts';

const OWN: ShowAs = { system: 'own', inchStep: 8 };
const HEAD = { title: '', person: '', date: '' };
const resultsOf = (book: Book): Results => {
  const results = new Results();
  results.apply(new Engine().open(1, book));
  return results;
};
const stepsOf = (book: Book) => tableSteps(book, resultsOf(book), OWN);
const titles = (book: Book): string[] => stepsOf(book).map(({ part, title }) => `${part}: ${title}`);

/** Without the pieces of a lay, which have a test of their own. */
const demo = apply({ do: 'many', label: 'x', edits: recordsOf(demoBook('demo'), 'lay').map(({ id }) => ({ do: 'setRecord', kind: 'lay', id, data: null })) }, demoBook('demo')).book;
const whole = apply({ do: 'setRecord', kind: 'ticket', id: TICKET, data: { leftOut: [], pictures: [] } }, demo).book;

describe('steps at the table', () => {
  it('begin with what to look at, then care, sizes and seams, then sheet by sheet', () => {
    expect(titles(demo).slice(0, 4)).toEqual(['Before you begin: Look at this before you cut', 'Before you begin: Take care', 'Sizes by level: Size to cut', 'Seam by seam: Each seam edge moves by']);
    const [look, care] = stepsOf(demo);
    expect(look!.cautions.some((text) => text.startsWith('Fit B13'))).toBe(true);
    expect(care!.words.map((text) => text.split(':')[0])).toEqual(['Blade', 'Iron', 'Fire', 'Children']);
    expect([look!.tick, care!.tick]).toEqual([null, null]);
  });

  it('are the rows of the ticket, with its figures in both systems', () => {
    const results = resultsOf(whole);
    const rows = ticketOf(whole, results, WHOLE_TICKET, OWN, HEAD).parts.flatMap((part) => part.rows);
    const steps = stepsOf(whole).filter(({ tick }) => tick !== null);
    expect(steps.map(({ figures }) => figures)).toEqual(rows.map(({ figures }) => figures));
    expect(steps.find(({ title }) => title === 'Flat width to cut')).toMatchObject({ tick: 'Cut', part: 'Skirt', figures: [{ main: '295.9 cm', also: '116 ½ in' }], remark: 'with the seam allowances of every panel' });
    const skirt = steps.find(({ title }) => title === 'Room of the closed waist over the hip')!;
    expect(skirt.cautions).toEqual(['Closed, it will not pass: it needs an opening, or to measure at least 101.0 cm (39 ⅞ in).']);
  });

  it('leave out what the ticket leaves out', () => {
    const parts = ticketParts(demo, resultsOf(demo), OWN);
    const out = parts.flatMap((part) => part.rows).filter(({ label }) => label !== 'Size to cut').map(({ key }) => key);
    const book = apply({ do: 'setRecord', kind: 'ticket', id: TICKET, data: ticketRecord(demo, parts, { out, pictures: [] }) }, demo).book;
    expect(titles(book)).toEqual(['Before you begin: Look at this before you cut', 'Before you begin: Take care', 'Sizes by level: Size to cut']);
  });

  it('are ticked for the figures of now, and say when they are others', () => {
    const step = stepsOf(demo).find(({ title }) => title === 'Flat width to cut')!;
    const ticked = apply(tickEdit(demo, 'table', [step.tickAt!].map(({ cell, now }) => ({ cell, now }))), demo).book;
    const again = (book: Book) => stepsOf(book).find(({ title }) => title === 'Flat width to cut')!.state;
    expect(again(ticked)).toEqual({ state: 'yes' });
    const skirt = sheetNamed(ticked, 'Skirt')!.id;
    const wider = apply({ do: 'setCells', sheet: skirt, cells: [{ row: 9, col: 1, cell: { raw: '6 cm', input: true } }] }, ticked).book;
    expect(again(wider)).toEqual({ state: 'changed', was: '295.88 cm' });
    expect(again(apply({ do: 'insertRows', sheet: skirt, at: 0, count: 1 }, ticked).book)).toEqual({ state: 'yes' });
  });

  it('have the pieces of a lay, each to be cut', () => {
    const sheet = { id: demo.nextSheetId, name: 'Cut out', rows: [], widths: {} };
    const rows = [['Piece', 'How many', 'Length'], ['Front', '2', '60 cm'], ['', '', ''], ['Back', '1', '24 in']];
    let book = apply({ do: 'addSheet', sheet, at: 0 }, demo).book;
    book = apply({ do: 'setCells', sheet: sheet.id, cells: rows.flatMap((texts, row) => texts.flatMap((raw, col) => (raw === '' ? [] : [{ row, col, cell: { raw } }]))) }, book).book;
    const lay: Lay = {
      name: 'Main cloth', pieces: "='Cut out'!A1:C9", second: '', aim: 'least length', leftWidth: '', price: '', shop: '', offers: [], kept: null,
      cloth: { which: '', width: '140 cm', length: '', gap: '', shrinkAlong: '', shrinkAcross: '', repeatAlong: '', repeatAcross: '', fold: 'open', foldAt: '', oneWay: false, alike: true, remnant: [], flaws: [] },
    };
    book = apply({ do: 'setRecord', kind: 'lay', id: '1', data: lay }, book).book;
    const pieces = stepsOf(book).filter(({ part }) => part === 'Pieces of Main cloth');
    expect(pieces.map(({ title, tick, figures }) => [title, tick, ...figures.map(({ head, main, also }) => `${head} ${main}${also ? ` ${also}` : ''}`)])).toEqual([
      ['Front', 'Cut', 'How many 2', 'Length 60.0 cm 23 ⅝ in'], ['Back', 'Cut', 'How many 1', 'Length 24 in 61.0 cm'],
    ]);
  });
});
