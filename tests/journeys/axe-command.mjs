/**
 * A command for journeys: axe looks through the app's own page, in its frame
 * and as it stands. Put there by the browser's protocol, since the page's
 * policy rightly lets no test code in.
 */
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';

const source = createRequire(import.meta.url).resolve('axe-core/axe.min.js');

const WCAG = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22a', 'wcag22aa'];

export function axeCommand() {
  let code;
  return {
    name: 'axe-command',
    async executeCommand({ command, session }) {
      if (command !== 'axe') return undefined;
      const page = session.browser.getPage(session.id);
      const frame = page.frames().find((each) => each !== page.mainFrame() && new URL(each.url()).pathname === '/src/');
      code ??= await readFile(source, 'utf8');
      if (await frame.evaluate('typeof axe') === 'undefined') await frame.evaluate(`${code};0`);
      const found = await frame.evaluate(`axe.run(document, { resultTypes: ["violations"], runOnly: ${JSON.stringify(WCAG)} })`);
      // The words offered while a formula is typed scroll along with the arrow keys; the focus stays in the text.
      const byArrows = ({ id, target }) => id === 'scrollable-region-focusable' && JSON.stringify(target).includes('.helper');
      return found.violations.flatMap(({ id, help, nodes }) => nodes.filter(({ target }) => !byArrows({ id, target })).map(({ target, failureSummary }) => `${id}: ${help}: ${JSON.stringify(target)} ${failureSummary.replace(/\s+/g, ' ').slice(0, 300)}`));
    },
  };
}
