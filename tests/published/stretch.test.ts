import { ELASTIC, STRETCH } from './data/fit.ts';
import { checkAll } from './reckon.ts';

checkAll('stretch', STRETCH);
checkAll('elastic', ELASTIC);
