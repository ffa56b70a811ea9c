import { expect, test, vi } from 'vitest';
import { claim } from '../../../src/keeping/index.ts';

// How real locks pass from tab to tab is tested in the browser; here is what only a failing browser shows.

test('a browser without locks leaves the workbook unguarded', async () => {
  const taken = vi.fn();
  const { mode, release } = await claim('a', taken, undefined);
  expect(mode).toBe('unguarded');
  await release();
  expect(taken).not.toHaveBeenCalled();
});

test('so does one that refuses to give any', async () => {
  const locks = { request: async () => { throw new DOMException('', 'SecurityError'); } } as unknown as LockManager;
  expect((await claim('a', () => undefined, locks)).mode).toBe('unguarded');
});
