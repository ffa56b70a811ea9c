import { SAFETY } from './data/fit.ts';
import { checkAll } from './reckon.ts';

checkAll('safety', SAFETY);
