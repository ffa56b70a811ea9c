import { expect, test, vi, afterEach } from 'vitest';

afterEach(() => {
  vi.unstubAllGlobals();
  vi.resetModules();
});

test('only the addresses of our own workers pass the policy', async () => {
  const policies: { name: string; createScriptURL: (url: string) => string }[] = [];
  vi.stubGlobal('trustedTypes', {
    createPolicy: (name: string, { createScriptURL }: { createScriptURL: (url: string) => string }) => {
      policies.push({ name, createScriptURL });
      return { createScriptURL: (url: string) => ({ trusted: createScriptURL(url) }) };
    },
  });
  const made: unknown[][] = [];
  vi.stubGlobal('Worker', class { constructor(...given: unknown[]) { made.push(given); } });
  const { layWorkerUrl, reckonWorkerUrl, startLayWorker, startReckonWorker } = await import('../../../src/reckoning/worker-url.ts');
  startReckonWorker();
  startLayWorker();
  expect(policies.map(({ name }) => name)).toEqual(['tt-worker']);
  expect(made).toEqual([
    [{ trusted: reckonWorkerUrl.href }, { type: 'module', name: 'reckon' }],
    [{ trusted: layWorkerUrl.href }, { type: 'module', name: 'lay' }],
  ]);
  for (const url of ['https://example.com/x.js', `${reckonWorkerUrl.href}?x`, 'data:text/javascript,0', '']) {
    expect(() => policies[0]!.createScriptURL(url)).toThrow(TypeError);
  }
});

test('a browser without Trusted Types starts it by its plain address', async () => {
  const made: unknown[][] = [];
  vi.stubGlobal('Worker', class { constructor(...given: unknown[]) { made.push(given); } });
  const { reckonWorkerUrl, startReckonWorker } = await import('../../../src/reckoning/worker-url.ts');
  startReckonWorker();
  expect(made[0]![0]).toBe(reckonWorkerUrl.href);
});
