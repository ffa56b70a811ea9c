import { describe, expect, it } from 'vitest';
import { intentOf, type Press } from '../../../src/grid/keys.ts';

const press = (text: string): Press => {
  const parts = text.split('+');
  return { key: parts.at(-1)! || '+', shiftKey: parts.includes('Shift'), ctrlKey: parts.includes('Ctrl'), metaKey: parts.includes('Meta'), altKey: parts.includes('Alt') };
};

describe('keys on the grid', () => {
  it.each([
    ['ArrowDown', { do: 'step', way: 'down', reach: 'one', extend: false }],
    ['Shift+ArrowLeft', { do: 'step', way: 'left', reach: 'one', extend: true }],
    ['Ctrl+ArrowRight', { do: 'step', way: 'right', reach: 'block', extend: false }],
    ['Meta+Shift+ArrowUp', { do: 'step', way: 'up', reach: 'block', extend: true }],
    ['PageDown', { do: 'step', way: 'down', reach: 'page', extend: false }],
    ['Home', { do: 'rowStart', extend: false }],
    ['Shift+End', { do: 'rowEnd', extend: true }],
    ['Ctrl+Home', { do: 'first', extend: false }],
    ['Ctrl+Shift+End', { do: 'last', extend: true }],
    ['Tab', { do: 'tab', way: 'right' }],
    ['Shift+Tab', { do: 'tab', way: 'left' }],
    ['Shift+ ', { do: 'row' }],
    ['Ctrl+ ', { do: 'column' }],
    ['Ctrl+a', { do: 'all' }],
    ['F2', { do: 'edit' }],
    ['Enter', { do: 'edit' }],
    ['Shift+Enter', { do: 'step', way: 'up', reach: 'one', extend: false }],
    ['Delete', { do: 'clear' }],
    ['Escape', { do: 'leave' }],
  ])('%s', (text, intent) => {
    expect(intentOf(press(text))).toEqual(intent);
  });

  it.each(['a', '=', ' ', 'Ctrl+z', 'Ctrl+c', 'Alt+ArrowDown', 'F5', 'Ctrl+Tab', 'Ctrl+PageDown', 'Ctrl+Enter', 'Shift+Delete', 'Shift'])('leaves %s alone', (text) => {
    expect(intentOf(press(text))).toBeNull();
  });
});
