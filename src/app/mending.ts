/** What would mend the selected cell: figures that lack their unit, words that are not known, formulas that can be read in two ways. */
import { cellName, withUnits, wordMends, type WordMend, type Words } from '../formula/index.ts';
import { UNITS, readQuantity } from '../quantities/index.ts';
import type { UnitMend, Working } from '../reckoning/index.ts';
import type { Mend } from '../panels/index.ts';
import { cellAt, sheetById, type Book, type CellAddress } from '../workbook/index.ts';
import { sheetInFormula } from '../formula/index.ts';

type Found = Omit<Mend, 'keys'>;

/** In the order in which they are likely. */
export function mendsFor(book: Book, cell: CellAddress, raw: string, working: Working | null, functions: readonly string[]): readonly Found[] {
  const units = (working?.fault?.mends ?? []).flatMap((mend) => unitMend(book, cell, raw, mend) ?? []);
  // An error that began elsewhere is not mended here.
  if (units.length > 0 || working?.fault?.cause || !raw.startsWith('=')) return inOwnOrder(book, working, units);
  const words: Words = { names: book.names.map(({ name }) => name), functions, sheets: book.sheets.map(({ name }) => name) };
  return wordMends(raw, words).map((mend) => ({ ...inWords(mend), cell, raw: mend.formula }));
}

/** Where no other figure says which unit is meant, the workbook's comes first. */
function inOwnOrder(book: Book, working: Working | null, mends: readonly Found[]): readonly Found[] {
  const guessed = working?.fault?.mends.some((each) => each.guessed) ?? false;
  if (!guessed || book.settings.show !== 'in') return mends;
  return [...mends].sort((a, b) => Number(/ in$/.test(b.label)) - Number(/ in$/.test(a.label)));
}

function unitMend(book: Book, own: CellAddress, raw: string, { cell, figures, values, fraction, unit }: UnitMend): Found | undefined {
  const { sign } = UNITS[unit];
  const gap = unit === 'deg' ? '' : ' ';
  if (figures.length > 0) {
    const mended = withUnits(raw, figures, values, unit, book.names.map(({ name }) => name));
    if (mended === null) return undefined;
    const written = fraction ? [fraction] : mended.written;
    const wrong = written.length === 1 ? `${written[0]} has no unit.` : `${written.join(' and ')} have no unit.`;
    return { wrong, label: `Read ${written.length === 1 ? 'it' : 'them'} as ${written.map((figure) => `${figure}${gap}${sign}`).join(' and ')}`, cell: own, raw: mended.formula };
  }
  const sheet = sheetById(book, cell.sheet);
  const typed = sheet && cellAt(sheet, cell.row, cell.col)?.raw.trim();
  const reading = typed === undefined ? undefined : readQuantity(typed);
  if (!sheet || typed === undefined || reading?.kind !== 'quantity' || reading.quantity.unit !== '' || reading.quantity.value !== values[0]) return undefined;
  const place = `${cell.sheet === own.sheet ? '' : `${sheetInFormula(sheet.name)}!`}${cellName(cell.row, cell.col)}`;
  const figure = `${typed}${gap}${sign}`;
  return { wrong: `${place} is ${typed} and has no unit.`, label: `Write ${figure} in ${place}`, cell: { sheet: cell.sheet, row: cell.row, col: cell.col }, raw: figure };
}

function inWords({ kind, wrong, right }: WordMend): Pick<Found, 'wrong' | 'label'> {
  switch (kind) {
    case 'function': return { wrong: `There is no function ${wrong.toUpperCase()}.`, label: `Write ${right}` };
    case 'name': return { wrong: `There is no name ‘${wrong}’.`, label: `Write ${right}` };
    case 'sheet': return { wrong: `There is no sheet ${wrong}.`, label: `Write ${right}` };
    case 'bracket': return { wrong: 'A bracket is not closed.', label: `Put ${right} at the end` };
    default: return { wrong: `${wrong} is not clear.`, label: `Write ${right}` };
  }
}
