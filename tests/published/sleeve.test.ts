import { SLEEVE, SLEEVE_FROM_MEMORY } from './data/fit.ts';
import { USUAL_TABLES } from './data/usual-tables.ts';
import { checkAll, reportAll } from './reckon.ts';

checkAll('sleeve', SLEEVE);
reportAll('sleeve', SLEEVE_FROM_MEMORY, USUAL_TABLES);
