/** Bytes to text: which encoding a file is in, told from its bytes. */
import type { Decision, Encoding } from './reading.ts';

export interface Decoded {
  readonly text: string;
  readonly encoding: Decision<Encoding>;
}

const MARKS: readonly { readonly bytes: readonly number[]; readonly encoding: Encoding }[] = [
  { bytes: [0xef, 0xbb, 0xbf], encoding: 'utf-8' },
  { bytes: [0xff, 0xfe], encoding: 'utf-16le' },
  { bytes: [0xfe, 0xff], encoding: 'utf-16be' },
];

/** The WHATWG Encoding Standard's decoders; `fatal` makes a malformed sequence an error instead of U+FFFD. */
function decodeAs(bytes: Uint8Array, encoding: Encoding, fatal: boolean): string | null {
  try {
    return new TextDecoder(encoding, { fatal }).decode(bytes);
  } catch {
    return null;
  }
}

/**
 * UTF-16 without a mark: the letters, digits and separators of a table are
 * below 256, so that every other byte is zero.
 */
function utf16ByZeroes(bytes: Uint8Array): Encoding | null {
  const end = Math.min(bytes.length - (bytes.length % 2), 4096);
  if (end < 4) return null;
  let even = 0;
  let odd = 0;
  for (let at = 0; at < end; at += 2) {
    if (bytes[at] === 0) even++;
    if (bytes[at + 1] === 0) odd++;
  }
  const pairs = end / 2;
  if (odd > pairs * 0.6 && even < pairs * 0.1) return 'utf-16le';
  if (even > pairs * 0.6 && odd < pairs * 0.1) return 'utf-16be';
  return null;
}

/** Never fails: what is not valid UTF-8 is read as Windows-1252, in which every byte is a character. */
export function decode(bytes: Uint8Array, chosen?: Encoding): Decoded {
  const understood = (encoding: Encoding, why: string, by: 'file' | 'guess' | 'you'): Decoded =>
    ({ text: decodeAs(bytes, encoding, false) ?? '', encoding: { value: encoding, why, by } });

  if (chosen) return understood(chosen, 'you chose it', 'you');
  const mark = MARKS.find((each) => each.bytes.every((byte, at) => bytes[at] === byte));
  if (mark) return understood(mark.encoding, 'the file begins with its mark', 'file');
  const wide = utf16ByZeroes(bytes);
  if (wide) return understood(wide, 'every other byte is empty', 'file');
  if (decodeAs(bytes, 'utf-8', true) !== null) return understood('utf-8', 'all of the file is valid in it', 'file');
  return understood('windows-1252', 'the file is not valid UTF-8; check its accented letters and fraction signs', 'guess');
}
