import { describe, expect, it } from 'vitest';
import { readTable, understand } from '../../../src/tables/index.ts';
import { figure, fixture, read } from './support.ts';

describe('a published chart: ASTM D5585-11e1, Table 1, as published on the publisher’s catalogue page', () => {
  const reading = read(fixture('astm-d5585-11e1-misses-in-fractions.csv'));
  it('is understood without a guess', () => {
    expect(reading).toMatchObject({
      separator: { value: ',', by: 'file' }, encoding: { value: 'utf-8', by: 'file' }, decimalMark: { value: '.', by: 'file' },
      unit: { value: 'in', by: 'file' }, sizes: { value: 'across', by: 'file' }, headerRow: { value: 0, by: 'file' }, firstColumn: { value: 0, by: 'file' },
      unreadable: [], doubts: [],
    });
  });
  it('has its sizes and measures', () => {
    expect(reading.sizeLabels.map(({ label }) => label)).toEqual(['00', '0', '2', '4', '6', '8', '10', '12', '14', '16', '18', '20']);
    expect(reading.measures.map(({ name }) => name)).toEqual([
      'head girth', 'neck base girth', 'mid neck girth', 'shoulder girth', 'bust girth', 'under bust girth', 'upper chest girth', 'waist girth curvy', 'waist girth straight',
    ]);
  });
  it('has its fractions, to the last eighth', () => {
    expect(figure(reading, 'bust girth', '8')).toBe('36 1/4 in');
    expect(figure(reading, 'neck base girth', '20')).toBe('16 3/8 in');
    expect(figure(reading, 'waist girth straight', '10')).toBe('30 1/2 in');
    expect(reading.cells[4]!.map((cell) => cell.kind === 'figure' && 'value' in cell.value && cell.value.value)).toEqual(
      [31.125, 31.75, 33, 34.125, 35.25, 36.25, 37.25, 38.75, 40.375, 42.125, 44, 46].map((inches) => expect.closeTo(inches * 25.4, 9)),
    );
  });
});

describe('where the table stands', () => {
  it('is found among titles, notes, empty rows and headings over groups', () => {
    const reading = read(fixture('titles-and-notes-cm.csv'));
    expect(reading).toMatchObject({ headerRow: { value: 3 }, unit: { value: 'cm', by: 'file' }, sizes: { value: 'across' }, unreadable: [] });
    expect(reading.measures.map(({ name, kind }) => `${name}: ${kind}`)).toEqual([
      'Upper body: heading', 'Bust: lengths', 'Waist: lengths', 'Lower body: heading', 'High hip: lengths', 'Hip: lengths',
    ]);
    expect(reading.table).toEqual({ top: 3, left: 0, bottom: 10, right: 5 });
    expect(figure(reading, 'Hip', 'XL')).toBe('106 cm');
  });
  it('is found away from the edge', () => {
    const reading = read(fixture('sizes-down-letters-offset.csv'));
    expect(reading).toMatchObject({ headerRow: { value: 2 }, firstColumn: { value: 1 }, sizes: { value: 'down' }, unit: { value: 'mm' } });
    expect(figure(reading, 'Back waist length', 'S/M')).toBe('407.5 mm');
  });
  it('has both heading rows', () => {
    const reading = read(fixture('two-heading-rows.csv'));
    expect(reading).toMatchObject({ headerRow: { value: 1 }, unit: { value: 'in', by: 'file' }, unreadable: [] });
    expect(figure(reading, 'Hip', '14')).toBe('38–41 in');
  });
  it('is the one with the most figures, and the other is told of', () => {
    const reading = read(fixture('two-tables.csv'));
    expect(reading.measures.map(({ name }) => name)).toEqual(['Bust', 'Shoulder', 'Sleeve']);
    expect(reading.remarks.join()).toContain('Rows 9 to 10');
    const other = read(fixture('two-tables.csv'), { headerRow: 8 });
    expect(figure(other, 'Hip', '10')).toBe('94 cm');
  });
  it('may be chosen', () => {
    const rows = [['US', '8', '10'], ['EU', '38', '40'], ['Bust (cm)', '84', '88']];
    const wrong = understand(rows);
    expect('sentence' in wrong ? wrong : wrong.headerRow).toMatchObject({ value: 0, by: 'guess' });
    const reading = understand(rows, { headerRow: 1 });
    if ('sentence' in reading) throw new Error(reading.sentence);
    expect(reading.headerRow.by).toBe('you');
    expect(figure(reading, 'Bust', '38')).toBe('84 cm');
  });
  it('is not there', () => {
    expect(readTable('dear reader,\nthis is a letter, not a chart')).toMatchObject({ sentence: expect.stringContaining('No table of figures') });
    expect(readTable('size,bust\n8,84', { headerRow: 1 })).toMatchObject({ sentence: expect.stringContaining('no figure below row 2') });
  });
  it('does not lose a last row that cannot be read', () => {
    expect(read('size,bust_cm\n8,84\n10,88\n12,9O').unreadable).toMatchObject([{ row: 3, col: 1, text: '9O' }]);
  });
});

describe('which way the sizes run', () => {
  it.each([
    ['letters across', ',XS,S,M\nbust (cm),80,84,88', 'across'],
    ['letters down', ',bust (cm),waist (cm)\nXS,80,62\nS,84,66', 'down'],
    ['codes down', 'code,bust_cm,hip_cm\n9AR,83,91\n11AR,86,93', 'down'],
    ['stature and bust down', 'size,bust_cm\n160/84A,84\n165/88A,88', 'down'],
    ['double sizes across', 'Size,10/12,14/16\nbust (in),34,36\nwaist (in),26,28', 'across'],
    ['months across', 'Age,6–9 months,9–12 months\nHeight (cm),74,80\nChest (cm),47,49', 'across'],
    ['words across', 'Measure,small,medium,large\nBust (cm),84,90,98', 'across'],
    ['ranges as sizes across', 'Size,36-38,40-42\nBust (cm),84,92\nWaist (cm),68,76', 'across'],
    ['prefixed sizes down', 'Size,Bust (cm)\nEU 38,88\nEU 40,92', 'down'],
  ] as const)('%s', (_, text, run) => {
    expect(read(text).sizes).toMatchObject({ value: run, by: 'file' });
  });
  it('is a guess where headings do not tell, and may be chosen', () => {
    const text = ',1,2\n3,84,88\n4,66,70';
    expect(read(text).sizes.by).toBe('guess');
    expect(read(text, { sizes: 'across' })).toMatchObject({ sizes: { value: 'across', by: 'you' }, sizeLabels: [{ label: '1' }, { label: '2' }] });
  });
});

describe('the unit', () => {
  it.each([
    ['in brackets', 'size,Bust (cm)\n8,84', 'cm', 'Bust'],
    ['in words', 'size,Hip in inches\n8,36', 'in', 'Hip'],
    ['with an underscore', 'size,bust_in\n8,34', 'in', 'bust'],
    ['after a comma', 'size;bust, cm\n8;84', 'cm', 'bust'],
    ['as a mark', 'size;Bust "\n8;34', 'in', 'Bust'],
    ['in square brackets', 'size,Bust [mm]\n8,840', 'mm', 'Bust'],
    ['in the corner', 'measurement_in,8,10\nbust,34,35', 'in', 'bust'],
    ['in the corner, in brackets', 'Size (cm),8,10\nbust,84,88', 'cm', 'bust'],
    ['in a line above', 'Finished measures in cm\nsize,bust\n8,84', 'cm', 'bust'],
    ['in a line below', 'size,bust\n8,84\n\nall measures are inches', 'in', 'bust'],
    ['beside the measure', 'measure,unit,8,10\nbust,cm,84,88', 'cm', 'bust'],
    ['under the heading', 'size,bust,waist\n,cm,cm\n8,84,68', 'cm', 'bust'],
    ['in the cells', 'size,bust\n8,34 in\n10,"35 1/2"""', 'in', 'bust'],
    ['in most cells', 'size,bust,waist\n8,34 in,26\n10,36 in,28 in', 'in', 'waist'],
    ['by size', 'measure,8 (cm),10 (cm)\nbust,84,88', 'cm', 'bust'],
  ] as const)('stands %s', (_, text, unit, measure) => {
    const reading = read(text);
    expect(reading.unit).toMatchObject({ value: unit, by: 'file' });
    expect(reading.measures.map(({ name }) => name)).toContain(measure);
    for (const cell of reading.cells.flat()) if (cell.kind === 'figure') expect('unit' in cell.value && cell.value.unit).toBe(unit);
  });
  it.each([
    ['inches from a bust', 'no-unit-inches.csv', 'in'],
    ['centimetres from a bust', 'no-unit-centimetres.csv', 'cm'],
  ])('is guessed: %s', (_, name, unit) => {
    expect(read(fixture(name)).unit).toMatchObject({ value: unit, by: 'guess' });
  });
  it('is guessed from fractions, from millimetres, from a lone stature', () => {
    expect(read('size,sleeve\n8,23 1/4').unit).toMatchObject({ value: 'in', by: 'guess' });
    expect(read('size,chest\n8,840').unit).toMatchObject({ value: 'mm', by: 'guess' });
    expect(read('size,stature\n8,164').unit).toMatchObject({ value: 'cm', by: 'guess' });
  });
  it('is no guess only because a note names two', () => {
    expect(read('cm / inches\nsize,bust\n8,84').unit).toMatchObject({ value: 'cm', by: 'guess' });
  });
  it('can differ by measure', () => {
    const reading = read(fixture('unit-column.csv'));
    expect(reading.unit.value).toBe('mixed');
    expect([figure(reading, 'Bust', '8'), figure(reading, 'Skirt length', '10'), figure(reading, 'Weight', '14')]).toEqual(['92 cm', '26 1/4 in', '72']);
  });
  it('can be there twice', () => {
    const reading = read(fixture('both-units-side-by-side.csv'));
    expect([figure(reading, 'Bust', '34'), figure(reading, 'Bust (2)', '34')]).toEqual(['80 cm', '31 1/2 in']);
  });
  it('may be chosen; figures with a unit keep theirs', () => {
    const reading = read('size,bust_cm,waist\n8,34,26\n10,36 in,28', { unit: 'in' });
    expect(reading.unit).toMatchObject({ value: 'in', by: 'you' });
    expect(figure(reading, 'bust', '8')).toBe('34 in');
    expect(read('size,bust\n8,34 in\n10,36', { unit: 'cm' }).unit).toMatchObject({ value: 'mixed', by: 'you' });
  });
  it('is none for ages and weights', () => {
    const reading = read(fixture('children.csv'));
    expect(reading.unit).toMatchObject({ value: 'cm', by: 'file' });
    expect(figure(reading, 'Weight (kg)', '6–9 months')).toBe('9.5');
    expect(reading.measures.find(({ name }) => name === 'EU size')?.kind).toBe('sizes');
  });
});

describe('figures', () => {
  it('have decimal commas, half signs and accents of Windows-1252', () => {
    const reading = read(fixture('semicolon-decimal-comma-windows-1252.csv'));
    expect(reading).toMatchObject({ encoding: { value: 'windows-1252', by: 'guess' }, separator: { value: ';' }, decimalMark: { value: ',', by: 'file' }, unreadable: [] });
    expect([figure(reading, 'Hüfte', '40'), figure(reading, 'Hüfte', '38'), figure(reading, 'Oberweite', '36'), figure(reading, 'Rückenlänge', '42')])
      .toEqual(['99.25 cm', '95½ cm', '84.5 cm', '(none)']);
  });
  it('have units of their own', () => {
    const reading = read(fixture('units-in-cells.csv'));
    expect(reading.unit).toMatchObject({ value: 'mixed', by: 'file' });
    expect(reading.cells.flat().map((cell) => (cell.kind === 'figure' && 'value' in cell.value ? Math.round(cell.value.value * 1000) / 1000 : cell)))
      .toEqual([920.75, 984.25, 1028.7, 711.2, 774.7, 838.2, 50, 55, 60]);
  });
  it('are ranges', () => {
    const reading = read(fixture('ranges-no-heading-unit.csv'));
    expect(reading.unreadable).toEqual([]);
    const ends = reading.cells.flat().map((cell) => (cell.kind === 'figure' && 'low' in cell.value ? [cell.value.low.value / 25.4, cell.value.high.value / 25.4].map((n) => Math.round(n * 1000) / 1000) : cell));
    expect(ends).toEqual([[32, 34], [34.5, 36], [36.5, 39], [24, 26], [26.5, 28], [28.5, 31]]);
  });
  it('are ranges in UTF-16 with tabs, and fractions in UTF-16 without a mark', () => {
    expect(figure(read(fixture('tabs-utf16le-mark.csv')), 'hip', 'M')).toBe('98–102 cm');
    const other = read(fixture('semicolon-utf16be-no-mark.csv'));
    expect([figure(other, 'bust', '8'), figure(other, 'bust', '10'), figure(other, 'bust', '12')]).toEqual(['36 ¼ in', '37¼ in', '38 3/4 in']);
  });
  it('are ends of one range only when all of them are', () => {
    const whole = read('code,bust_from_cm,bust_to_cm\nS,82,90\nM,90,98\nL,-,n/a');
    expect([whole.measures.map(({ name }) => name), figure(whole, 'bust', 'S'), figure(whole, 'bust', 'L')]).toEqual([['bust'], '82–90 cm', '(none)']);
    expect(whole.remarks.join()).toContain('ranges of “bust”');
    const half = read('code,bust_from_cm,bust_to_cm\nS,-,90\nM,90,98');
    expect(half.measures.map(({ name }) => name)).toEqual(['bust from', 'bust to']);
    const turned = read('code,bust_from_cm,bust_to_cm\nS,90,82\nM,90,98');
    expect(turned.measures).toHaveLength(2);
    const beside = read('size,bust_cm,bust_from_cm,bust_to_cm\n8,84,82,86');
    expect(beside.measures.map(({ name }) => name)).toEqual(['bust', 'bust from', 'bust to']);
  });
  it('of a first column that names the sizes too are not lost', () => {
    const reading = read('bust_cm,waist_cm\n76,60\n80,64');
    expect(reading.firstColumnHolds).toMatchObject({ value: 'figures', by: 'file' });
    expect([figure(reading, 'bust', '76'), figure(reading, 'waist', '80')]).toEqual(['76 cm', '64 cm']);
    expect(read('bust_cm,waist_cm\n76,60', { firstColumnHolds: 'names' }).measures.map(({ name }) => name)).toEqual(['waist']);
  });
  it('that cannot be read are listed with their place in the file, kept as text, and never 0', () => {
    const reading = read(fixture('unreadable.csv'));
    expect(reading.unreadable.map(({ row, col, text }) => [row + 1, col + 1, text])).toEqual([
      [3, 4, '9G'], [4, 4, '1,234'], [4, 5, 'ask'], [5, 6, '2 5/4'], [6, 2, '8 buttons'], [6, 3, '8 buttons'], [6, 4, '9 buttons'],
    ]);
    for (const { sentence } of reading.unreadable) expect(sentence).toMatch(/^[“A-Z].*\.$/);
    expect([figure(reading, 'Bust', '16'), figure(reading, 'Hip', '10'), figure(reading, 'Buttons', '14'), figure(reading, 'Buttons', '16')]).toEqual(['(none)', '(none)', '(none)', '(none)']);
  });
  it('before three others are decimal only where most are', () => {
    expect(read('size;bust (cm);waist (cm)\n8;84,125;68,250').decimalMark).toMatchObject({ value: ',', by: 'guess' });
    expect(read('size;bust (cm)\n8;84,5\n10;86,5\n12;88.125').unreadable).toMatchObject([{ row: 3, col: 1 }]);
    expect(read('size;bust (cm)\n8;84,125\n10;88;', { decimalMark: '.' }).unreadable).toMatchObject([{ text: '84,125' }]);
  });
  it('that are words are no mistakes', () => {
    const reading = read('size,bust_cm,how_obtained\n8,84,read from a leaflet of 2012-01-26\n10,88,measured');
    expect(reading.unreadable).toEqual([]);
    expect(reading.measures[1]).toMatchObject({ name: 'how obtained', kind: 'words' });
  });
  it('are never formulas', () => {
    const reading = read(fixture('formulas.csv'));
    expect(reading.unreadable.map(({ text }) => text)).toEqual(['=1+1', '@SUM(A1)']);
  });
});

describe('doubts', () => {
  it('tell of a slipped figure, a unit that makes a giant, a size there twice', () => {
    expect(read(fixture('slipped-figure.csv')).doubts).toEqual([
      'waist falls from 70 cm at size 12 to 47 cm at size 14: check both figures.',
      'hip 88 in at size 10 would be 224 cm: is the unit right?',
      'Size 16 stands there twice, in the rows 5 and 6 of the file: give one of them another name in the sheet.',
    ]);
  });
  it('tell of one figure that nobody has', () => {
    expect(read('size,bust_cm\n8,84\n10,88\n12,920\n14,96').doubts[0]).toBe('bust 920 cm at size 12 is nobody’s measure: check that figure.');
  });
  it('tell of figures without a size', () => {
    expect(read('measure,8,,12\nbust (cm),84,88,92').doubts[0]).toContain('column 3');
  });
  it('are silent about drops and lengths that fall by nature', () => {
    expect(read('size,bust_cm,drop_cm,hip_depth_cm\n8,84,20,20\n10,88,19,20\n12,92,18,20').doubts).toEqual([]);
  });
});

describe('hostile files', () => {
  it.each([
    ['a long heading', `size,${'bust '.repeat(6_000)}\n8,84`],
    ['a long run of digits', `size,bust_cm\n8,${'1'.repeat(30_000)}`],
    ['a long run of spaces in a figure', `size,bust_cm\n8,84${' '.repeat(30_000)}x`],
    ['a long note', `${'in '.repeat(10_000)}\nsize,bust\n8,84`],
    ['many rows', `size,bust_cm\n${'8,84\n'.repeat(90_000)}`],
    ['many different figures', `size,bust_cm,waist_cm\n${Array.from({ length: 20_000 }, (_, i) => `s${i},${i}.5,${i} 1/4`).join('\n')}`],
  ])('are read quickly: %s', (_, text) => {
    // The processor's time, not the clock's: other tests run beside this one.
    const start = process.cpuUsage();
    readTable(text);
    expect(process.cpuUsage(start).user / 1_000).toBeLessThan(3_000);
  });
  it('keep keys of objects plain text', () => {
    const reading = read('size,__proto__,constructor\n8,84 cm,88 cm');
    expect(reading.measures.map(({ name }) => name)).toEqual(['proto', 'constructor']);
  });
});
