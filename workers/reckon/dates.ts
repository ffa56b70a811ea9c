/** Dates, which the engine keeps as days since 30 December 1899 (OpenFormula, section 4.3.3), as people write them. */
import { DateTimeNumber, TimeNumber } from './internals.ts';
import type { DateNumber } from './internals.ts';

const EPOCH = Date.UTC(1899, 11, 30);
const DAY = 86_400_000;

/** `2026-11-03`, `14:30:00`, or both. */
export function dateText(value: DateNumber | TimeNumber | DateTimeNumber): string {
  const seconds = Math.round(value.val * 86_400);
  const moment = new Date(EPOCH + seconds * 1000);
  if (Number.isNaN(moment.getTime()) || Math.abs(value.val) * DAY > 8e15) return String(value.val);
  const [date = '', time = ''] = moment.toISOString().split('T');
  const clock = time.slice(0, 8);
  if (value instanceof TimeNumber) return clock;
  return value instanceof DateTimeNumber ? `${date} ${clock}` : date;
}
