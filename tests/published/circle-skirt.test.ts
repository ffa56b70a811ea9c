import { CIRCLE_SKIRT } from './data/circle-skirt.ts';
import { checkAll } from './reckon.ts';

checkAll('circle skirt', CIRCLE_SKIRT);
