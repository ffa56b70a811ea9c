/**
 * People: what can be measured on a body and how, reading what was measured,
 * comparing sets, joining what two workbooks know of a person, and putting
 * measures into a sheet. Pure: people are records of the workbook
 * (`src/workbook/records/person.ts`), and what is done to them is an edit made
 * here. May import quantities, formula, workbook.
 */
export { MEASURES, MEASURE_GROUPS, measureCalled, nameOfMeasure } from './measures.ts';
export type { BodyMeasure, MeasureGroup } from './measures.ts';
export { readMeasure, withUnit } from './reading.ts';
export type { MeasureReading } from './reading.ts';
export { NOBODY, courseOf, lengthOf, measuredOf, newestOf, spellingFault } from './sets.ts';
export type { Moment, NewestMeasure } from './sets.ts';
export { joined, sameSet } from './joining.ts';
export type { Clash, ClashChoice, Joined } from './joining.ts';
export { measuresInCells, peopleIn } from './from-book.ts';
export type { FoundPerson } from './from-book.ts';
export { putEdit, putRows, standing, useEdit } from './putting.ts';
export type { PutRow, PutWish, Standing } from './putting.ts';
export { latestWorked, workedFrom } from './worked.ts';
