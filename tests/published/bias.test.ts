import { BIAS } from './data/cloth.ts';
import { checkAll } from './reckon.ts';

checkAll('bias', BIAS);
