import fc from 'fast-check';
import { expect, test } from 'vitest';
import { SHIPPED_IDS, shippedTemplate } from '../../../src/app/shipped.ts';
import { EditRefused, apply, readBook, readTemplate, sheetFromTemplate, writeBook } from '../../../src/workbook/index.ts';
import { bookOf } from '../workbook/help.ts';
import { NO_FIGURE, TIME, damage, damaged, fuzz } from './cases.ts';

const shipped = SHIPPED_IDS.map((id) => JSON.parse(JSON.stringify(shippedTemplate(id))) as unknown);

test('templates', () => {
  const book = bookOf([['Waist', '74 cm']]);
  const before = JSON.stringify(book);
  fuzz('templates', fc.tuple(fc.nat(shipped.length - 1), damage), ([which, changes]) => {
    const { template, problems } = readTemplate(damaged(shipped[which], changes));
    for (const problem of problems) expect(problem).not.toMatch(/undefined|\[object/);
    if (!template) {
      expect(problems.length).toBeGreaterThan(0);
      return;
    }
    try {
      const made = apply(sheetFromTemplate(template, book).edit, book).book;
      expect(readBook(writeBook(made))).toStrictEqual({ book: made, problems: [] });
      expect(made.sheets.slice(0, 2)).toStrictEqual(book.sheets);
    } catch (error) {
      if (!(error instanceof EditRefused)) throw error;
      expect(error.sentence).not.toMatch(NO_FIGURE);
    }
    expect(JSON.stringify(book)).toBe(before);
  });
}, TIME);
