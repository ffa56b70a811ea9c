import { NESTED, SEAM } from './data/seam.ts';
import { checkAll } from './reckon.ts';

checkAll('seam', SEAM, { nested: NESTED });
