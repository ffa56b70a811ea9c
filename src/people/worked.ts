/** What worked: kept from a garment, and offered for the next. */
import { cellAt, type AtLevel, type Book, type Person, type Sheet, type Worked } from '../workbook/index.ts';

/** The garment that worked last. */
export const latestWorked = ({ worked }: Pick<Person, 'worked'>): Worked | undefined => worked.at(-1);

/**
 * What the workbook's sheets say of the garment, to begin with: the rows that
 * the templates call "Size to cut", "Ease on this body" and "Finished length",
 * by their columns' headings.
 *
 * @param shown what a cell shows; empty when nothing, or an error
 */
export function workedFrom(book: Book, shown: (sheet: Sheet, row: number, col: number) => string): Pick<Worked, 'sizes' | 'ease' | 'length'> {
  const found: { sizes: AtLevel[]; ease: AtLevel[]; length: string } = { sizes: [], ease: [], length: '' };
  for (const sheet of book.sheets) {
    sheet.rows.forEach((row, at) => {
      const label = row?.[0]?.raw.trim().toLowerCase();
      if (label === 'size to cut' && found.sizes.length === 0) found.sizes = levelsOf(sheet, at, shown);
      else if (label === 'ease on this body' && found.ease.length === 0) found.ease = levelsOf(sheet, at, shown);
      else if (label === 'finished length' && found.length === '') found.length = shown(sheet, at, 1);
    });
  }
  return found;
}

function levelsOf(sheet: Sheet, row: number, shown: (sheet: Sheet, row: number, col: number) => string): AtLevel[] {
  const width = sheet.rows[row]?.length ?? 0;
  return Array.from({ length: Math.min(width, 12) }, (_, col) => col).slice(1).flatMap((col) => {
    const [level, raw] = [headingOf(sheet, row, col), shown(sheet, row, col)];
    return level !== '' && raw !== '' ? [{ level: level.toLowerCase(), raw: raw.slice(0, 200) }] : [];
  });
}

/** The nearest heading above that says something. */
function headingOf(sheet: Sheet, row: number, col: number): string {
  for (let above = row - 1; above >= 0; above--) {
    const cell = cellAt(sheet, above, col);
    if (cell?.look?.heading && cell.raw !== '' && !cell.raw.startsWith('=')) return cell.raw.slice(0, 200);
  }
  return '';
}
