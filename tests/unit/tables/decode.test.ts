import { describe, expect, it } from 'vitest';
import { decode } from '../../../src/tables/index.ts';

const bytes = (...all: (number | string)[]): Uint8Array => Uint8Array.from(all.flatMap((each) => (typeof each === 'number' ? [each] : [...each].map((c) => c.charCodeAt(0)))));
const utf16 = (text: string, little: boolean): number[] => [...text].flatMap((c) => {
  const code = c.charCodeAt(0);
  return little ? [code & 255, code >> 8] : [code >> 8, code & 255];
});
const TEXT = 'size;bust\n8;36½';

describe('decode', () => {
  it('reads UTF-8 without a mark', () => {
    expect(decode(new TextEncoder().encode(TEXT))).toMatchObject({ text: TEXT, encoding: { value: 'utf-8', by: 'file' } });
  });
  it('reads UTF-8 with a mark and takes the mark away', () => {
    expect(decode(Uint8Array.from([0xef, 0xbb, 0xbf, ...new TextEncoder().encode(TEXT)])).text).toBe(TEXT);
  });
  it.each([[true, 'utf-16le'], [false, 'utf-16be']] as const)('reads UTF-16 with a mark (little end first: %s)', (little, encoding) => {
    const mark = little ? [0xff, 0xfe] : [0xfe, 0xff];
    expect(decode(Uint8Array.from([...mark, ...utf16(TEXT, little)]))).toMatchObject({ text: TEXT, encoding: { value: encoding, by: 'file' } });
  });
  it.each([[true, 'utf-16le'], [false, 'utf-16be']] as const)('reads UTF-16 without a mark (little end first: %s)', (little, encoding) => {
    expect(decode(Uint8Array.from(utf16(TEXT, little)))).toMatchObject({ text: TEXT, encoding: { value: encoding } });
  });
  it('takes what is not valid UTF-8 for Windows-1252, as a guess', () => {
    // 0xBD is ½ and 0xDF is ß. (0x80 to 0x9F are tested in the browser: Node 20 decodes them as Latin-1.)
    expect(decode(bytes('Gr', 0xf6, 0xdf, 'e;36', 0xbd))).toMatchObject({ text: 'Größe;36½', encoding: { value: 'windows-1252', by: 'guess' } });
  });
  it('does as it is told', () => {
    expect(decode(bytes('a', 0xc3, 0xa4), 'windows-1252')).toMatchObject({ text: 'aÃ¤', encoding: { by: 'you' } });
    expect(decode(bytes('a', 0xe4), 'utf-8').text).toBe('a\uFFFD');
  });
  it('reads nothing from nothing', () => {
    expect(decode(new Uint8Array(0)).text).toBe('');
  });
});
