import { PLEATS } from './data/pleats.ts';
import { checkAll } from './reckon.ts';

checkAll('pleats', PLEATS);
