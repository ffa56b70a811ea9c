import { BUTTONS } from './data/cloth.ts';
import { checkAll } from './reckon.ts';

checkAll('buttons', BUTTONS);
