import { JIS_BUST, JIS_HIP_OF_9, JIS_STATURE, MISSES, SIZE_CHOICE } from './data/size-choice.ts';
import { checkAll } from './reckon.ts';

checkAll('size choice', SIZE_CHOICE, { misses: MISSES, jisBust: JIS_BUST, jisHip: JIS_HIP_OF_9, jisStature: JIS_STATURE });
