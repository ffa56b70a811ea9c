/** Cells to another document and from one, by the browser's own clipboard and real keys: tables with set fractions and line breaks, and plain text. */
import { expect } from '@open-wc/testing';
import { executeServerCommand } from '@web/test-runner-commands';
import { App, press } from './app.ts';

let app: App;
let page: HTMLElement;

/** Another document: all that is in it is selected, as a person would before she copies. */
function show(html: string): void {
  page.innerHTML = html;
  page.focus();
  getSelection()!.selectAllChildren(page);
}

describe('the clipboard between documents', function () {
  this.timeout(90_000);

  before(async () => {
    await executeServerCommand('devtools', { method: 'Browser.grantPermissions', params: { permissions: ['clipboardReadWrite', 'clipboardSanitizedWrite'] } });
    app = await App.open();
    await app.run('Add a blank sheet');
    page = document.createElement('div');
    page.contentEditable = 'true';
    document.body.append(page);
  });
  after(() => {
    page.remove();
    app.close();
  });
  afterEach(() => app.expectNoTrouble());

  it('brings a table with raised and lowered fractions and a line break into its cells', async () => {
    show('<table><tr><td>Waist</td><td>28 <sup>1</sup>/<sub>2</sub> in</td></tr><tr><td>Hip<br>fullest part</td><td>98 cm</td></tr></table>');
    await press('Control+c');
    await app.click('A1');
    await app.press('Control+v');
    expect(app.shown('B1')).to.equal('28 ½ in');
    await app.go('B1');
    expect(app.typed).to.equal('28 1/2 in');
    await app.go('A2');
    expect(app.typed).to.equal('Hip\nfullest part');
    expect(app.shown('B2')).to.equal('98.0 cm');
    await app.press('Control+z');
    expect(app.texts(), 'one paste is one step').to.deep.equal({});
  });

  it('gives another document a table, and takes back from it what it gave', async () => {
    await app.fill('A1', [['Waist', '70 cm'], ['Hip', '98 cm']]);
    await app.go('A1:B2');
    await app.press('Control+c');
    show('');
    await press('Control+v');
    expect([...page.querySelectorAll('td')].map((each) => each.textContent)).to.deep.equal(['Waist', '70.0 cm', 'Hip', '98.0 cm']);
    page.querySelectorAll('td')[1]!.textContent = '71 cm';
    getSelection()!.selectAllChildren(page);
    await press('Control+c');
    await app.click('D1');
    await app.press('Control+v');
    expect(['D1', 'E1', 'D2', 'E2'].map((place) => app.shown(place))).to.deep.equal(['Waist', '71.0 cm', 'Hip', '98.0 cm']);
  });
});
