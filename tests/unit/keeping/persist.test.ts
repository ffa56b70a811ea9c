import { beforeEach, expect, test, vi } from 'vitest';

beforeEach(() => vi.resetModules());

const asking = async () => (await import('../../../src/keeping/persist.ts')).askToPersist;
const storage = (persisted: boolean, persist: () => Promise<boolean>) => ({ persisted: async () => persisted, persist: vi.fn(persist) }) as unknown as StorageManager;

test('asks once, however often it is called', async () => {
  const askToPersist = await asking();
  const one = storage(false, async () => true);
  expect(await Promise.all([askToPersist(one), askToPersist(one)])).toEqual(['granted', 'granted']);
  expect(one.persist).toHaveBeenCalledTimes(1);
});

test('does not ask for what it has', async () => {
  const has = storage(true, async () => false);
  expect(await (await asking())(has)).toBe('granted');
  expect(has.persist).not.toHaveBeenCalled();
});

test.each([
  ['refused', storage(false, async () => false)],
  ['unknown', storage(false, async () => { throw new TypeError('not here'); })],
  ['unknown', undefined],
  ['unknown', {} as StorageManager],
] as const)('%s', async (answer, manager) => {
  expect(await (await asking())(manager)).toBe(answer);
});
