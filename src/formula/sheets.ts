import { looksLikeCell } from './address.ts';
import { startsWord, wordEnd } from './characters.ts';

/** The name that the engine knows a sheet by, whatever it is called: `S3`. */
export function engineSheet(id: number): string {
  return `S${id}`;
}

/** Turns `engineSheet` round; `undefined` for any other text. */
export function sheetFromEngine(name: string): number | undefined {
  return /^S\d+$/i.test(name) ? Number(name.slice(1)) : undefined;
}

/** A sheet's name as it stands before the `!`, in quotes when it needs them: `Hem`, `'My sheet'`. */
export function sheetInFormula(name: string): string {
  const plain = startsWord(name, 0) && wordEnd(name, 0) === name.length && !looksLikeCell(name);
  return plain ? name : `'${name.replaceAll("'", "''")}'`;
}
