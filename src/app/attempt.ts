/** Edits that may be refused while they are made. */
import { EditRefused, type Edit } from '../workbook/index.ts';
import type { Desk } from './desk.ts';

/** Makes an edit and does it; false, with a sentence said, when either is refused. */
export function attempt(desk: Desk, make: () => Edit): boolean {
  try {
    return desk.do(make());
  } catch (error) {
    if (!(error instanceof EditRefused)) throw error;
    desk.say(error.sentence);
    return false;
  }
}
