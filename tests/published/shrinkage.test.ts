import { SHRINKAGE } from './data/cloth.ts';
import { checkAll } from './reckon.ts';

checkAll('shrinkage', SHRINKAGE);
