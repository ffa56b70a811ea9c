import { CLOTH } from './data/cloth.ts';
import { checkAll } from './reckon.ts';

checkAll('cloth', CLOTH);
