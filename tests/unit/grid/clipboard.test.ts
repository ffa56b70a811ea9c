import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { fromClipboard, toHtml, toTsv } from '../../../src/grid/clipboard.ts';

describe('cells as text', () => {
  it('are lines with tabs', () => {
    expect(toTsv([['Waist', '72.0 cm'], ['Hip', '38 ⅝ in']])).toBe('Waist\t72.0 cm\nHip\t38 ⅝ in');
  });

  it('come back as they went, with tabs, quotes and line breaks in them', () => {
    const table = [['2 1/4"', 'say "cut"', 'two\nlines'], ['a\tb', '', '"']];
    expect(fromClipboard(toTsv(table))).toEqual(table);
  });

  it('come back as they went, whatever is in them', () => {
    // A carriage return is a line break like another, and a last empty line is the end of the text.
    const text = fc.string({ unit: fc.constantFrom('a', '"', '\t', '\n', ' ', '=', '½', "'", ',') });
    const table = fc.integer({ min: 1, max: 4 }).chain((width) => fc.array(fc.array(text, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 4 }));
    fc.assert(fc.property(table, (cells) => {
      fc.pre(cells.at(-1)!.some((each) => each !== '') && !(cells.some((row) => row.length === 1 && row[0] === '')));
      expect(fromClipboard(toTsv(cells))).toEqual(cells);
    }));
  });
});

describe('text from elsewhere', () => {
  it('is cut at tabs and line ends of any kind', () => {
    expect(fromClipboard('a\tb\r\nc\td\r\n')).toEqual([['a', 'b'], ['c', 'd']]);
    expect(fromClipboard('')).toEqual([['']]);
    expect(fromClipboard('one')).toEqual([['one']]);
  });

  it('keeps inch marks and unpaired quotes as they stand', () => {
    expect(fromClipboard('2 1/4"\t3"\n"about 2" long')).toEqual([['2 1/4"', '3"'], ['"about 2" long']]);
    expect(fromClipboard('"Cut on the fold\nonce')).toEqual([['"Cut on the fold'], ['once']]);
  });

  it('reads a quoted field with a line break in it', () => {
    expect(fromClipboard('"front\nfacing"\t2')).toEqual([['front\nfacing', '2']]);
  });
});

describe('cells as HTML', () => {
  it('hide nothing that HTML would read', () => {
    expect(toHtml([['<b>&"', 'a\nb']])).toBe('<table><tr><td>&lt;b&gt;&amp;&quot;</td><td>a<br>b</td></tr></table>');
  });
});
