import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quantity, readQuantity, unitNamed, type Quantity, type Span, type UnitCode } from '../../../src/quantities/index.ts';
import { needsGuard, readRows, writeCsv, type CsvOptions, type OutCell } from '../../../src/tables/index.ts';

const q = (amount: number, unit: UnitCode): OutCell => ({ kind: 'quantity', quantity: quantity(amount, unit) });
const t = (text: string): OutCell => ({ kind: 'text', text });
const span = (low: number, high: number, unit: UnitCode): OutCell => ({ kind: 'span', span: { low: quantity(low, unit), high: quantity(high, unit) } });
const EXACT: CsvOptions = { numbers: 'exact', show: { system: 'own', inchStep: 8 }, unit: 'cells', separator: ',', decimalMark: '.', mark: false };
const write = (grid: OutCell[][], changes: Partial<CsvOptions> = {}) => writeCsv(grid, { ...EXACT, ...changes });

describe('fields', () => {
  it('are exact', () => {
    expect(write([[t('bust'), q(36.25, 'in'), q(92.075, 'cm'), q(1 / 3, ''), q(3, '%'), span(74, 82, 'cm')]]).text).toBe('bust,36.25 in,92.075 cm,0.3333333333333333,3%,74–82 cm\r\n');
  });
  it('are as shown, with signs that every keyboard has', () => {
    const grid = [[q(28.375, 'in'), q(-0.375, 'in'), q(92.04, 'cm'), q(40, 'yd'), span(34.5, 36, 'in')]];
    expect(write(grid, { numbers: 'shown' }).text).toBe('28 3/8 in,-3/8 in,92.0 cm,40 yd,34 1/2 to 36 in\r\n');
    expect(write([[q(25.4, 'cm'), q(3, '')]], { numbers: 'shown', show: { system: 'in', inchStep: 8 } }).text).toBe('10 in,3\r\n');
  });
  it('are truths, errors and nothing', () => {
    expect(write([[{ kind: 'truth', truth: true }, { kind: 'truth', truth: false }, { kind: 'error', sentence: '2 has no unit: write 2 in or 2 cm.' }, { kind: 'empty' }]]).text)
      .toBe('TRUE,FALSE,2 has no unit: write 2 in or 2 cm.,\r\n');
  });
  it('are quoted as RFC 4180 has it', () => {
    expect(write([[t('bust, "full"'), t('a\nb'), t('36"')]]).text).toBe('"bust, ""full""","a\nb","36"""\r\n');
  });
  it('have decimal commas, which never look like thousands', () => {
    expect(write([[q(84.5, 'cm'), q(84.125, 'cm'), q(0.125, 'cm'), span(1.5, 2.25, 'cm')]], { separator: ';', decimalMark: ',' }).text).toBe('84,5 cm;84,1250 cm;0,125 cm;1,5–2,25 cm\r\n');
    expect(write([[q(84.5, 'cm')]], { decimalMark: ',' }).text).toBe('"84,5 cm"\r\n');
  });
  it('begin with a mark if wanted', () => {
    expect(write([[t('a')]], { mark: true }).text).toBe('\uFEFFa\r\n');
    expect(write([]).text).toBe('');
  });
});

describe('the unit in the heading', () => {
  it('goes over columns that have one', () => {
    const grid = [[t('Size'), t('Bust'), t('Pleats'), t('Ease')], [t('8'), q(84, 'cm'), q(6, ''), q(3, '%')], [t('10'), q(88.5, 'cm'), q(8, ''), q(3.5, '%')]];
    expect(write(grid, { unit: 'heading' })).toEqual({ text: 'Size,Bust (cm),Pleats,Ease (%)\r\n8,84,6,3\r\n10,88.5,8,3.5\r\n', guarded: 0, unitsAt: 'columns', mixed: 0 });
  });
  it('goes beside rows where columns are mixed and rows are not', () => {
    const grid = [[t('Skirt'), q(16, ''), q(18, '')], [t('Waist'), q(72, 'cm'), q(76, 'cm')], [t('Pleats'), q(8, ''), q(8, '')], [t('Hem'), q(1.5, 'in'), q(1.5, 'in')]];
    expect(write(grid, { unit: 'heading' })).toMatchObject({ text: 'Skirt,16,18\r\nWaist (cm),72,76\r\nPleats,8,8\r\nHem (in),1.5,1.5\r\n', unitsAt: 'rows', mixed: 0 });
  });
  it('leaves mixed columns as they are and counts them', () => {
    const grid = [[t('Name'), t('One'), t('Two')], [t('a'), q(1, 'cm'), q(1, 'in')], [t('b'), q(1, 'in'), q(2, 'in')]];
    expect(write(grid, { unit: 'heading' })).toMatchObject({ text: 'Name,One,Two (in)\r\na,1 cm,1\r\nb,1 in,2\r\n', mixed: 1 });
  });
  it('keeps compound figures whole', () => {
    const grid = [[t('Cloth')], [q(40, 'in')], [q(1, 'yd')]];
    expect(write(grid, { unit: 'heading', numbers: 'shown', show: { system: 'own', inchStep: 8, unit: 'yd' } }).text).toBe('Cloth\r\n1 yd 4 in\r\n1 yd\r\n');
  });
  it('is told as it came out', () => {
    expect(write([[t('a'), t('b')], [q(1, ''), t('x')]], { unit: 'heading' }).unitsAt).toBe('cells');
  });
});

describe('the guard against formulas', () => {
  it.each(['=1+1', '+44 1', '-2+3', '@SUM(A1)', '\t=1', '\r=1', "=cmd|' /C calc'!A0", '-3/8 in and more', '+'.padEnd(3, '+')])('%j gets an apostrophe', (text) => {
    expect(needsGuard(text)).toBe(true);
    expect(write([[t(text)]])).toMatchObject({ guarded: 1, text: expect.stringContaining(`'${text.replaceAll('"', '""')}`) });
  });
  it.each(['-3/8 in', '-2.5', '+2 cm', '-', '–', '−5 cm', "'=1", 'a=1', '10-12', ''])('%j is left alone', (text) => {
    expect(needsGuard(text)).toBe(false);
    expect(write([[t(text), q(-2.5, ''), q(-3 / 8, 'in')]])).toMatchObject({ guarded: 0 });
  });
  it('guards errors and headings too', () => {
    const grid = [[t('-Bust')], [q(84, 'cm')], [{ kind: 'error', sentence: '=B2 has no value.' } as OutCell]];
    expect(write(grid, { unit: 'heading' })).toMatchObject({ guarded: 2, text: "'-Bust (cm)\r\n84\r\n'=B2 has no value.\r\n" });
  });
});

describe('a file written exactly and read back', () => {
  const units: UnitCode[] = ['', '%', 'mm', 'cm', 'm', 'in', 'ft', 'yd', 'cm2', 'in2', 'deg'];
  const amounts = fc.oneof(
    fc.integer({ min: -8_000, max: 80_000 }).map((n) => n / 8),
    fc.integer({ min: -100_000, max: 1_000_000 }).map((n) => n / 1_000),
    fc.double({ min: -1e6, max: 1e6, noNaN: true }),
  );
  const quantities = fc.tuple(amounts, fc.constantFrom(...units)).map(([amount, unit]) => quantity(amount, unit));
  const spans = fc.tuple(fc.integer({ min: 1, max: 800 }), fc.integer({ min: 1, max: 80 }), fc.constantFrom<UnitCode>('cm', 'in', 'mm'))
    .map(([low, wide, unit]): Span => ({ low: quantity(low / 8, unit), high: quantity((low + wide) / 8, unit) }));
  const texts = fc.string({ maxLength: 12, unit: 'grapheme-ascii' }).map((text) => text.trim());
  const cells = fc.oneof(
    quantities.map((quantity): OutCell => ({ kind: 'quantity', quantity })),
    spans.map((each): OutCell => ({ kind: 'span', span: each })),
    texts.map(t),
    fc.constant<OutCell>({ kind: 'empty' }),
  );
  const options = fc.constantFrom<Partial<CsvOptions>>({}, { separator: ';' }, { separator: ';', decimalMark: ',' }, { decimalMark: ',', mark: true });
  const readBack = (text: string, separator: ',' | ';'): readonly (readonly string[])[] => {
    const table = readRows(text, { separator });
    if ('sentence' in table) throw new Error(table.sentence);
    expect(table.remarks).toEqual([]);
    return table.rows;
  };
  const figureIn = (text: string): Quantity | Span | null => {
    const found = readQuantity(text);
    return found.kind === 'quantity' ? found.quantity : found.kind === 'span' ? found.span : null;
  };

  it('has the same values and texts', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 5 }).chain((width) => fc.array(fc.array(cells, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 6 })), options, (body, changes) => {
      // A first cell with text, so that no line of the file is empty.
      const grid = body.map((row) => [t('x'), ...row]);
      const rows = readBack(write(grid, changes).text, changes.separator ?? ',');
      expect(rows).toHaveLength(grid.length);
      grid.forEach((row, r) => row.forEach((cell, c) => {
        const text = rows[r]![c]!;
        if (cell.kind === 'quantity') expect(figureIn(text), text).toEqual(cell.quantity);
        else if (cell.kind === 'span') expect(figureIn(text), text).toEqual(cell.span);
        else if (cell.kind === 'text') expect(needsGuard(cell.text) ? text.slice(1) : text).toBe(cell.text);
        else expect(text).toBe('');
      }));
    }), { numRuns: 2_000 });
  });

  it('has the same values with units in the headings', () => {
    const columns = fc.array(fc.constantFrom(...units), { minLength: 1, maxLength: 5 });
    fc.assert(fc.property(columns, fc.array(fc.array(amounts, { minLength: 5, maxLength: 5 }), { minLength: 1, maxLength: 6 }), options, (codes, body, changes) => {
      const grid = [[t('name'), ...codes.map((_, c) => t(`m${c}`))], ...body.map((row, r) => [t(`r${r}`), ...codes.map((unit, c) => q(row[c]!, unit))])];
      const [heads, ...rows] = readBack(write(grid, { ...changes, unit: 'heading' }).text, changes.separator ?? ',');
      grid.slice(1).forEach((row, r) => codes.forEach((unit, c) => {
        const sign = /\(([^)]*)\)$/.exec(heads![c + 1]!)?.[1] ?? /\(([^)]*)\)$/.exec(rows[r]![0]!)?.[1] ?? '';
        expect(unitNamed(sign) ?? '').toBe(unit);
        const cell = row[c + 1]!;
        expect(figureIn(`${rows[r]![c + 1]!} ${sign}`)).toEqual(cell.kind === 'quantity' ? cell.quantity : null);
      }));
    }), { numRuns: 1_000 });
  });
});
