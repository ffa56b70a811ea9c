import { DARTS } from './data/fit.ts';
import { checkAll } from './reckon.ts';

checkAll('darts', DARTS);
