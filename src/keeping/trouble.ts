/** Why something could not be kept, in words for the person. */

export type Why = 'full' | 'unavailable' | 'newer' | 'blocked' | 'elsewhere' | 'slow' | 'failed' | 'gone';

const REASONS: Readonly<Record<Why, string>> = {
  full: 'This device has no room left for this page.',
  unavailable: 'This browser does not let the page keep anything; perhaps this is a private window.',
  newer: 'A newer version of this page is open in another tab.',
  blocked: 'An older version of this page is open in another tab.',
  elsewhere: 'This workbook was changed in another tab meanwhile.',
  slow: 'The device takes long to keep it.',
  failed: 'The browser could not write it down.',
  gone: 'This workbook is not on this device any more.',
};

const TO_DO: Readonly<Record<Why, string>> = {
  full: 'Free some space and leave this tab open: it tries again by itself.',
  unavailable: 'What you type is lost when this tab closes: save what you need as a file.',
  newer: 'Save what you typed last as a file, then load this page again.',
  blocked: 'Close the other tabs of this page; then it goes on by itself.',
  elsewhere: 'Leave this tab open and choose Try again: what you typed here is put on top of it.',
  slow: 'Leave this tab open until it is done.',
  failed: 'Leave this tab open: it tries again by itself.',
  gone: 'Look for it in a copy that was saved as a file.',
};

/** `message` is the reason alone; `sentence` also says what to do about what was typed. */
export class KeepingTrouble extends Error {
  override readonly name = 'KeepingTrouble';
  readonly sentence: string;

  constructor(readonly why: Why, options?: ErrorOptions) {
    super(REASONS[why], options);
    this.sentence = `${REASONS[why]} ${TO_DO[why]}`;
  }
}

export function troubleFrom(error: unknown): KeepingTrouble {
  if (error instanceof KeepingTrouble) return error;
  return new KeepingTrouble(whyOf(error), { cause: error });
}

function whyOf(error: unknown): Why {
  switch ((error as { name?: unknown } | null)?.name) {
    case 'QuotaExceededError': return 'full';
    case 'VersionError': return 'newer';
    case 'SecurityError': case 'ReferenceError': return 'unavailable';
    default: return 'failed';
  }
}
