/** The engine library alone: the demo's cells as it can read them, built once. */
import { HyperFormula } from 'hyperformula';

self.onmessage = ({ data }: MessageEvent<Record<string, string[][]>>) => {
  const engine = HyperFormula.buildFromSheets(data, { licenseKey: 'gpl-v3' });
  const results = Object.keys(data).map((name) => engine.getSheetValues(engine.getSheetId(name)!));
  self.postMessage(results.length);
};
self.postMessage('up');
