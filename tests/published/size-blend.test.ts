import { SIZE_BLEND } from './data/size-choice.ts';
import { checkAll } from './reckon.ts';

checkAll('size blend', SIZE_BLEND);
