/**
 * How wide a text will be, without a browser, so that labels can be laid out
 * by pure functions. Widths are those of DejaVu Sans, the first face of the
 * app, measured in thousandths of its size; the faces that stand in for it are
 * narrower, so a layout made for it fits them too. A browser test compares.
 */

export const TEXT_SIZE = 11;
/** From the top of the tallest letter to the line, and below it, in picture units. */
export const ASCENT = 10.3;
export const DESCENT = 2.7;
/** From one line of text to the next. */
export const LINE = 14;

const BY_WIDTH: Readonly<Record<number, string>> = {
  167: '⁄', 227: '′', 275: "'", 278: 'ijlìíîï', 295: 'IJÌÍÎÏ', 318: ' ,.·‘’', 337: '/:;|\\', 352: 'f', 361: '-', 374: '″', 390: '()[]',
  392: 't', 401: '!²³', 411: 'r', 460: '"', 500: '°–*_', 518: '“”', 521: 'sš', 525: 'zž', 531: '?', 550: 'cç', 557: 'L', 575: 'F', 579: 'k',
  592: 'vxyýÿ', 602: 'π', 603: 'P', 611: 'TYÝ', 612: 'oòóôõöø', 613: 'aàáâãäå', 615: 'eèéêë', 630: 'ß', 632: 'EÈÉÊË', 634: 'hnuñùúûü',
  635: 'Sbdgpq', 636: '0123456789$', 637: '√', 656: 'K', 684: 'AVÀÁÂÃÄÅ', 685: 'XZ', 686: 'B', 695: 'R', 698: 'CÇ', 732: 'UÙÚÛÜ', 748: 'NÑ',
  752: 'H', 770: 'D', 775: 'G', 780: '&', 787: 'OQÒÓÔÕÖØ', 818: 'w', 838: '+−×÷=<>→', 863: 'M', 950: '%', 969: '¼½¾⅛⅜⅝⅞', 974: 'm', 989: 'W', 1000: '…—',
};
const WIDTHS = new Map(Object.entries(BY_WIDTH).flatMap(([width, letters]) => [...letters].map((letter) => [letter, Number(width)] as const)));
/** As wide as any letter of a script that the table does not know. */
const OTHER = 1000;

export function textWidth(text: string): number {
  let thousandths = 0;
  for (const letter of text) thousandths += WIDTHS.get(letter) ?? OTHER;
  return (thousandths * TEXT_SIZE) / 1000;
}

/** The text, or as much of it as fits with "…" after it. */
export function shortened(text: string, width: number): string {
  if (textWidth(text) <= width) return text;
  const letters = [...text];
  while (letters.length > 0 && textWidth(`${letters.join('')}…`) > width) letters.pop();
  return `${letters.join('').trimEnd()}…`;
}

/** The text in lines of at most this width; a word that is wider by itself is cut. */
export function wrapped(text: string, width: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && textWidth(`${last} ${word}`) <= width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(shortened(word, width));
  }
  return lines;
}
