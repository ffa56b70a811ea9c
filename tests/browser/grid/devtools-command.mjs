/** A command for browser tests: one call of the browser's own protocol, for what no key or mouse can do (touch, input methods, clipboard keys). */
const ALLOWED = new Set(['Input.imeSetComposition', 'Input.insertText', 'Input.dispatchTouchEvent', 'Input.dispatchKeyEvent', 'Input.synthesizeScrollGesture', 'Emulation.setTouchEmulationEnabled', 'Emulation.setEmulatedMedia', 'Browser.grantPermissions']);

export function devtoolsCommand() {
  const clients = new Map();
  return {
    name: 'devtools-command',
    async executeCommand({ command, payload, session }) {
      if (command !== 'devtools') return undefined;
      if (!ALLOWED.has(payload.method)) throw new Error(`${payload.method} is not among the calls that tests may make.`);
      const page = session.browser.getPage(session.id);
      if (!clients.has(page)) clients.set(page, await page.createCDPSession());
      return (await clients.get(page).send(payload.method, payload.params)) ?? true;
    },
  };
}
