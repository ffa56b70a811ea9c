import { HEM, HEM_SWEEP } from './data/circle-skirt.ts';
import { checkAll } from './reckon.ts';

checkAll('hem sweep', HEM_SWEEP);
checkAll('hem', HEM);
