/** The real engine, with the settings that `toEngine` writes for. */
import { HyperFormula } from 'hyperformula';
import { quantity, UNIT_CODES } from '../../../src/quantities/index.ts';
import { MAX_COLUMNS, MAX_ROWS } from '../../../src/formula/index.ts';

export function newEngine(): HyperFormula {
  return HyperFormula.buildEmpty({
    licenseKey: 'gpl-v3',
    functionArgSeparator: ',', decimalSeparator: '.', arrayColumnSeparator: ';', arrayRowSeparator: '|',
    maxRows: MAX_ROWS, maxColumns: MAX_COLUMNS, dateFormats: ['YYYY-MM-DD'], timeFormats: [],
  });
}

/** An engine text with the internal calls replaced by their base values, for an engine that knows no units. */
export function withoutUnits(text: string): string {
  return text.replace(/TT\.QUANTITY\(([^,]+),(\d+)\)/g, (_, amount: string, unit: string) => (
    String(quantity(Number(amount), UNIT_CODES[Number(unit)] ?? '').value)));
}
