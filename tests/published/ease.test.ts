import { EASE } from './data/fit.ts';
import { checkAll } from './reckon.ts';

checkAll('ease', EASE);
