import { SLEEVE } from './data/fit.ts';
import { checkAll } from './reckon.ts';

checkAll('sleeve', SLEEVE);
