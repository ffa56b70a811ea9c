import { GATHERS } from './data/cloth.ts';
import { checkAll } from './reckon.ts';

checkAll('gathers', GATHERS);
