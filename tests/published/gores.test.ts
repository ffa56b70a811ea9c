import { GODETS, GORES } from './data/cloth.ts';
import { checkAll } from './reckon.ts';

checkAll('gores', GORES);
checkAll('godets', GODETS);
