/**
 * The random tests draw the same figures on every run, so that a red run can be
 * trusted and repeated. `npm run test:fresh` draws new ones; a run that finds
 * something prints the seed for `SEED=… npm run test:unit`.
 */
import fc from 'fast-check';

const wanted = process.env['SEED'];
fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: wanted === undefined ? 20261125 : wanted === 'fresh' ? Date.now() | 0 : Number(wanted) });
