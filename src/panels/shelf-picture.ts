/** A workbook's first rows as a small page: rule lines and the beginning of each text, enough to know it by. */
import { svg, type TemplateResult } from 'lit';

const WIDTH = 132;
const ROW = 14;
const ROWS = 6;
/** Where the columns begin, and how many characters fit. */
const COLUMNS = [{ x: 4, fits: 11 }, { x: 68, fits: 6 }, { x: 104, fits: 4 }] as const;

const shortened = (text: string, most: number): string => {
  const characters = [...text];
  return characters.length > most ? `${characters.slice(0, most - 1).join('')}…` : text;
};

/** For `<svg>` children: the caller gives the frame and says that it is only a picture. */
export function shelfPicture(rows: readonly (readonly string[])[]): TemplateResult[] {
  return Array.from({ length: ROWS }, (_, at) => svg`
    <line x1="0" x2=${WIDTH} y1=${(at + 1) * ROW} y2=${(at + 1) * ROW}></line>
    ${COLUMNS.map(({ x, fits }, column) => {
      const text = rows[at]?.[column] ?? '';
      return text === '' ? null : svg`<text class=${column === 0 ? 'label' : text.startsWith('=') ? 'sum' : 'figure'} x=${x} y=${(at + 1) * ROW - 4}>${shortened(text, fits)}</text>`;
    })}`);
}

export const PICTURE_BOX = `0 0 ${WIDTH} ${ROWS * ROW + 1}`;
