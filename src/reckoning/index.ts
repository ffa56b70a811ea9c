/**
 * The page's end of the engine. Lives here: the protocol, the store of results
 * that the grid and the panels read, and the supervisor that owns the worker.
 * Nothing is worked out here, and nothing here is kept: all of it can be had
 * again from the workbook. May import quantities, formula and workbook.
 */
export * from './protocol.ts';
export { readLast } from './last-results.ts';
export { Results } from './results.ts';
export type { PinnedCell } from './pins.ts';
export { Supervisor, StateEvent, ChangesEvent, USUAL_LIMITS, type Limits, type SupervisorState } from './supervisor.ts';
export { WorkerLost } from './worker-lost.ts';
export { startLayWorker, startReckonWorker } from './worker-url.ts';
