/**
 * Which key asks for what while the grid is in hand (not while a cell is being
 * edited). A key that is not here is left alone, for the application's own.
 *
 * Tab. The grid pattern of WAI-ARIA gives Tab to the page; a ledger gives it to
 * the next cell. Both hold here: coming by Tab, the next Tab goes on through
 * the page; once the user has moved, typed or clicked, Tab goes to the next
 * cell; Escape gives Tab back to the page, and so does the row's last cell.
 */
import type { Reach, Way } from './select.ts';

export type Press = Pick<KeyboardEvent, 'key' | 'shiftKey' | 'ctrlKey' | 'metaKey' | 'altKey'>;

export type Intent =
  | { readonly do: 'step'; readonly way: Way; readonly reach: Reach; readonly extend: boolean }
  | { readonly do: 'rowStart' | 'rowEnd' | 'first' | 'last'; readonly extend: boolean }
  | { readonly do: 'tab'; readonly way: 'left' | 'right' }
  | { readonly do: 'edit' | 'clear' | 'all' | 'row' | 'column' | 'leave' };

/** By what the user went on after entering something: a run of Tabs is remembered, so that Enter returns to its column. */
export type GoneBy = 'tab' | 'enter' | 'arrow';

const ARROWS: Record<string, Way> = { ArrowUp: 'up', ArrowDown: 'down', ArrowLeft: 'left', ArrowRight: 'right' };

export const arrowOf = (key: string): Way | undefined => ARROWS[key];

export function intentOf(press: Press): Intent | null {
  const { key, shiftKey: extend, altKey } = press;
  const ctrl = press.ctrlKey || press.metaKey;
  if (altKey) return null;
  const way = ARROWS[key];
  if (way) return { do: 'step', way, reach: ctrl ? 'block' : 'one', extend };
  switch (key) {
    case 'Home': return { do: ctrl ? 'first' : 'rowStart', extend };
    case 'End': return { do: ctrl ? 'last' : 'rowEnd', extend };
    case 'PageUp': return ctrl ? null : { do: 'step', way: 'up', reach: 'page', extend };
    case 'PageDown': return ctrl ? null : { do: 'step', way: 'down', reach: 'page', extend };
    case 'Tab': return ctrl ? null : { do: 'tab', way: extend ? 'left' : 'right' };
    case ' ': return ctrl === extend ? null : { do: ctrl ? 'column' : 'row' };
    case 'a': case 'A': return ctrl && !extend ? { do: 'all' } : null;
    case 'F2': return ctrl || extend ? null : { do: 'edit' };
    case 'Enter': return ctrl ? null : extend ? { do: 'step', way: 'up', reach: 'one', extend: false } : { do: 'edit' };
    case 'Delete': case 'Backspace': return ctrl || extend ? null : { do: 'clear' };
    case 'Escape': return { do: 'leave' };
    default: return null;
  }
}

/** The keys of the grid, for a list that people read. `Ctrl` is also the Command key. */
export const keys: readonly { readonly keys: string; readonly does: string }[] = [
  { keys: 'Arrow keys', does: 'Go to the next cell that way' },
  { keys: 'Ctrl + arrow keys', does: 'Go to the end of the filled block' },
  { keys: 'Home, End', does: 'Go to the first cell, the last filled cell of the row' },
  { keys: 'Ctrl + Home, Ctrl + End', does: 'Go to the first cell, the last used cell of the sheet' },
  { keys: 'Page Up, Page Down', does: 'Go one screen up or down' },
  { keys: 'Shift with any of these', does: 'Select everything on the way' },
  { keys: 'Shift + Space, Ctrl + Space', does: 'Select the row, the column' },
  { keys: 'Ctrl + A', does: 'Select all cells' },
  { keys: 'Any letter, figure or =', does: 'Type anew over the cell' },
  { keys: 'F2 or Enter', does: 'Edit what is in the cell' },
  { keys: 'Enter, Shift + Enter', does: 'While editing: keep it and go down, up' },
  { keys: 'Tab, Shift + Tab', does: 'Keep it and go right, left; Enter then goes to the start of the next row' },
  { keys: 'Arrow keys', does: 'While typing anew: keep it and go that way; in a formula, after a sign, point at a cell' },
  { keys: 'Alt + Enter', does: 'While editing: a new line in the cell' },
  { keys: 'Escape', does: 'While editing: leave the cell as it was' },
  { keys: 'Escape, then Tab', does: 'Leave the grid' },
  { keys: 'Delete or Backspace', does: 'Empty the selected cells' },
  { keys: 'Ctrl + C, Ctrl + X, Ctrl + V', does: 'Copy, cut, paste' },
];
