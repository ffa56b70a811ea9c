/** The same workbook in two tabs of one browser. */
import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { App, press, soon } from './app.ts';

beforeEach(function () { this.currentTest!.timeout(90_000); });

it('one tab writes; the other reads, says so, and goes on when the first is closed', async () => {
  const first = await App.open();
  await first.openSheet('Measures');
  await first.put('B3', '96 cm');
  await first.kept();

  const second = await App.openTab();
  expect(second.header).to.contain('only to be read here: open in another tab');
  await second.openSheet('Measures');
  expect(second.shown('B3'), 'what the first tab kept').to.equal('96.0 cm');
  const before = second.texts();

  // Nothing that would change the workbook does, and the first try says why.
  await second.go('B3');
  await sendKeys({ type: '99cm' });
  await press('Enter', 'F2', 'Delete', 'Alt+Insert', 'Alt+i', 'Control+v', 'Control+Home');
  await second.settled();
  expect(second.texts()).to.deep.equal(before);
  expect(second.said).to.equal('This tab is only reading, because the workbook is open in another tab; change it there, or close that tab and this one goes on.');
  // Looking, copying and saving are free.
  await second.run('Save this sheet as CSV…');
  await second.tabTo('Save the file');
  expect((await second.nextFile(() => press('Enter'))).name).to.match(/Measures\.csv$/);
  second.expectNoTrouble();

  first.frame.style.zIndex = '1';
  await first.click('B4');
  await first.type('91 cm');
  await first.kept();
  first.expectNoTrouble();
  first.close();

  await soon(() => second.said.startsWith('The other tab was closed'), 'the second tab does not take over');
  await second.settled();
  expect(second.header).to.match(/^kept (at .* )?on this device/);
  expect([second.shown('B3'), second.shown('B4')], 'with the last that was typed in the first').to.deep.equal(['96.0 cm', '91.0 cm']);
  await second.click('B3');
  await second.type('97 cm');
  expect(second.shown('B3')).to.equal('97.0 cm');
  await second.kept();
  await second.reload();
  await second.openSheet('Measures');
  expect([second.shown('B3'), second.shown('B4')]).to.deep.equal(['97.0 cm', '91.0 cm']);
  second.expectNoTrouble();
  second.close();
});
