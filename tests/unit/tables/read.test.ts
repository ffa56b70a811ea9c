import { describe, expect, it } from 'vitest';
import { LIMITS, readRows, type ChartChoices } from '../../../src/tables/index.ts';

function table(input: Uint8Array | string, choices?: ChartChoices) {
  const rows = readRows(input, choices);
  if ('sentence' in rows) throw new Error(rows.sentence);
  return rows;
}
function refusal(input: string): string {
  const rows = readRows(input);
  if (!('sentence' in rows)) throw new Error('was read');
  return rows.sentence;
}

describe('separator', () => {
  it.each([
    ['comma', 'size,bust,waist\n8,84,68\n10,88,72', ','],
    ['semicolon with decimal commas', 'size;bust;waist\n8;84,5;68,5\n10;88,5;72,5', ';'],
    ['semicolon, decimal commas everywhere', 'Größe;84,5\n8,5;88,5', ';'],
    ['tab with commas in the names', 'size\tbust, full\twaist, natural\n8\t84\t68', '\t'],
    ['comma with a semicolon in a note', '"a; b"\nsize,bust\n8,84\n10,88\n12,92', ','],
    ['comma with quoted decimal commas', 'size,bust\n8,"84,5"\n10,"88,5"', ','],
  ] as const)('%s', (_, text, separator) => {
    expect(table(text).separator).toMatchObject({ value: separator, by: 'file' });
  });
  it('is a guess where none stands in the text', () => {
    expect(table('size 8')).toMatchObject({ separator: { by: 'guess' }, rows: [['size 8']] });
  });
  it('may be chosen', () => {
    expect(table('a;b,c', { separator: ';' })).toMatchObject({ rows: [['a', 'b,c']], separator: { by: 'you' } });
  });
});

describe('rows', () => {
  it('keep every field as text and their places', () => {
    expect(table('a,00,1e5\n\n"b ""x""\ny",  =1+1 ,TRUE\n\n').rows).toEqual([['a', '00', '1e5'], [''], ['b "x"\ny', '=1+1', 'TRUE']]);
  });
  it.each(['\n', '\r\n', '\r'])('end with %j', (end) => {
    expect(table(`a,b${end}c,d${end}`).rows).toEqual([['a', 'b'], ['c', 'd']]);
  });
  it('survive an inch mark that looks like an open quotation mark', () => {
    const read = table('measure,8\nbust,"36\nwaist,"28\n');
    expect(read.rows).toEqual([['measure', '8'], ['bust', '"36'], ['waist', '"28']]);
    expect(read.remarks[0]).toContain('row 2');
  });
  it('keep inch marks after figures', () => {
    expect(table('bust,36 1/4",37"\nwaist,"28 1/2""",29"').rows).toEqual([['bust', '36 1/4"', '37"'], ['waist', '28 1/2"', '29"']]);
  });
});

describe('refusals say what is wrong and what to do', () => {
  it('nothing there', () => expect(refusal(' \n\t\n')).toContain('nothing'));
  it('too many bytes', () => expect(refusal('x'.repeat(LIMITS.bytes + 1))).toContain('20 MB'));
  it('too many cells', () => expect(refusal('1,2,3,4,5,6,7,8,9,10\n'.repeat(20_001))).toContain('200,000 cells'));
  it('as many cells as are allowed are read', () => expect(table('1,2,3,4,5,6,7,8,9,10\n'.repeat(20_000)).rows).toHaveLength(20_000));
  it('too many columns', () => expect(refusal(`a,b\n${','.repeat(1_000)}`)).toContain('Row 2 has 1,001 columns'));
  it('too long a field', () => expect(refusal(`a,b\nc,${'d'.repeat(40_000)}`)).toContain('row 2, column 2'));
});
