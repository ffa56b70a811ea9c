/**
 * CRC-32 as in RFC 1952, section 8: tells a file that was damaged or changed
 * by hand from one that is as it was saved. It is no protection against intent.
 */
const TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let rest = byte;
  for (let bit = 0; bit < 8; bit++) rest = rest & 1 ? 0xedb88320 ^ (rest >>> 1) : rest >>> 1;
  return rest;
});

/** Of the text's UTF-8 bytes, as eight hexadecimal digits. */
export function crc32(text: string): string {
  let sum = 0xffffffff;
  for (const byte of new TextEncoder().encode(text)) sum = TABLE[(sum ^ byte) & 0xff]! ^ (sum >>> 8);
  return ((sum ^ 0xffffffff) >>> 0).toString(16).padStart(8, '0');
}
