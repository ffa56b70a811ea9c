/** Real key presses, to whatever has the focus in the window in front. */
import { sendKeys } from '@web/test-runner-commands';

/** Presses one key after another; "Control+Shift+z" holds what comes first. */
export async function press(...keys: string[]): Promise<void> {
  for (const key of keys) {
    const parts = key === '+' ? ['+'] : key.split('+');
    const last = parts.pop()!;
    for (const part of parts) await sendKeys({ down: part });
    await sendKeys({ press: last });
    for (const part of parts.reverse()) await sendKeys({ up: part });
  }
}
