/**
 * Keeping: the workbook on this device, in IndexedDB. Each edit is journaled as
 * it is made and called kept only when the browser has said that it is on the
 * disk; now and then a snapshot takes the journal's place. Nothing here knows
 * the screen or the engine. May import workbook.
 */
export { Database } from './database.ts';
export type { SetAside } from './database.ts';
export { Keeper } from './keeper.ts';
export type { AsideFound, KeepState, Loaded } from './keeper.ts';
export { Shelf, daysLeft, newBookId } from './shelf.ts';
export type { ShelfBook } from './shelf.ts';
export { putBack } from './put-back.ts';
export type { PutBack } from './put-back.ts';
export { ResultStore } from './result-store.ts';
export type { BookAt } from './result-store.ts';
export { TemplateStore } from './template-store.ts';
export type { OwnTemplate } from './template-store.ts';
export { KeepingTrouble } from './trouble.ts';
export type { Why } from './trouble.ts';
export { claim } from './lock.ts';
export type { Claim } from './lock.ts';
export { askToPersist } from './persist.ts';
export type { Persistence } from './persist.ts';
