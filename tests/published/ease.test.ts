import { EASE, EASE_FROM_MEMORY, EASE_USUAL } from './data/fit.ts';
import { USUAL_TABLES } from './data/usual-tables.ts';
import { checkAll, reportAll } from './reckon.ts';

checkAll('ease', EASE);
checkAll('usual ease, from the table that ships', EASE_USUAL, USUAL_TABLES);
reportAll('usual ease', EASE_FROM_MEMORY, USUAL_TABLES);
