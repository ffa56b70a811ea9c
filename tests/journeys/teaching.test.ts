/** Errors that teach: a key mends them, a jump leads to where they began, and nothing that breaks others is removed without a word. */
import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { App, press, soon, words } from './app.ts';

beforeEach(function () { this.currentTest!.timeout(90_000); });

const working = (app: App): string => app.read('tt-working');
/** What was said of an error to those who listen. */
const aloud = (app: App): string => words(app.page.querySelectorAll('.aloud')[1]!.textContent);
const untilWorking = (app: App, text: string): Promise<void> => soon(() => working(app).includes(text), `the working does not say “${text}”`);

async function blank(): Promise<App> {
  const app = await App.open();
  await app.run('Add a blank sheet');
  return app;
}

it('a figure that lacks its unit is mended by one key, undone by one, and by a button', async () => {
  const app = await blank();
  await app.fill('A1', [['10 in'], ['=A1+2']]);
  await soon(() => aloud(app) === 'A2 has no result. 2 has no unit: write 2 in or 2 cm.', 'what is wrong is not said');
  await app.go('A2');
  await untilWorking(app, 'Read it as 2 in');
  expect(app.remark).to.equal('2 has no unit: write 2 in or 2 cm. Read it as 2 in: Alt + Shift + E.');
  await soon(() => aloud(app) === 'Read it as 2 in: Alt + Shift + E. Read it as 2 cm: Alt + Shift + O.', 'the keys are not said');
  await app.press('Alt+Shift+e');
  expect([app.typed, app.shown('A2')]).to.deep.equal(['=A1+2 in', '12 in']);
  await app.press('Control+z');
  expect(app.typed).to.equal('=A1+2');
  await untilWorking(app, 'Read it as 2 cm');
  await app.press('Alt+Shift+o');
  expect(app.typed).to.equal('=A1+2 cm');
  await app.press('Control+z');
  await untilWorking(app, 'Read it as 2 in');
  await press('Escape');
  await app.tabTo('Read it as 2 in');
  await app.press('Enter');
  expect([app.typed, app.focusInCells]).to.deep.equal(['=A1+2 in', true]);
  app.expectNoTrouble();
  app.close();
});

it('a chain of errors leads to its first cause, and a circle to each of its cells', async () => {
  const app = await blank();
  await app.fill('B1', [['=B9+1 in'], ['=B1*2'], ['=B2'], ['=B3'], ['=B4'], ['=B5'], ['=B6'], ['=B7']]);
  await app.go('B8');
  await untilWorking(app, 'It begins in B9.');
  expect(working(app)).to.contain('B9 has no value yet.');
  await app.press('Alt+Shift+c');
  expect(app.active).to.equal('B9');
  await app.fill('D1', [['=E2'], ['=D1']]);
  await app.put('E2', '=D2');
  await app.go('D1');
  await untilWorking(app, 'The circle, each cell needing the next:');
  expect(words(app.part('.circle', app.inside('tt-working')).textContent)).to.equal('D1 → E2 → D2 → D1');
  await press('Escape');
  await app.tabTo('E2');
  await app.press('Enter');
  expect(app.active).to.equal('E2');
  app.expectNoTrouble();
  app.close();
});

it('a mistyped function, name or bracket is put right by the same key', async () => {
  const app = await blank();
  await app.fill('A1', [['10 in'], ['=EASY(A1; 8 in)'], ['=full bost + 2 in'], ['=SUM(A1; 2 in']]);
  await app.go('A1');
  await app.run('Names…');
  await app.tabTo('Name for New sheet A1');
  await sendKeys({ type: 'full bust' });
  await press('Enter', 'Escape');
  await app.settled();
  for (const [place, mended] of [['A2', '=EASE(A1; 8 in)'], ['A3', '=full bust + 2 in'], ['A4', '=SUM(A1; 2 in)']] as const) {
    await app.go(place);
    await soon(() => app.remark.includes('Alt + Shift + E'), `nothing is offered in ${place}`);
    await app.press('Alt+Shift+e');
    expect(app.typed).to.equal(mended);
  }
  expect(app.errors()).to.deep.equal({});
  app.expectNoTrouble();
  app.close();
});

it('the working of a plain formula is a tree with its values, and leads to its cells', async () => {
  const app = await blank();
  await app.fill('A1', [['10 in'], ['3 cm'], ['=(A1+A2)/3'], ['=IF(A1>5 in; EASE(A1+2 in; A1); 0 in)*2']]);
  await app.go('A3');
  await untilWorking(app, 'How it is put together');
  const rows = (): string[] => [...app.inside('tt-working').querySelectorAll('.part')].map((part) => words(part.textContent));
  expect(rows()).to.deep.equal(['(A1 + A2) ÷ 3 3 ¾ in (9.5 cm)', 'A1 + A2 11 ⅛ in (28.4 cm)', 'A1 ↗ 10 in (25.4 cm)', 'A2 ↗ 3.0 cm (1 ⅛ in)']);
  expect(working(app)).to.contain('Shown to the nearest 1/8 in; exact 3.7270 in. Nothing is rounded in the sum.');
  await press('Escape');
  await app.tabTo('A2 ↗');
  await app.press('Enter');
  expect(app.active).to.equal('A2');
  await app.go('A4');
  await untilWorking(app, 'EASE(A1 + 2 in; A1)');
  expect(rows().at(-1)).to.equal('0 in not used');
  expect(working(app)).to.contain('finished measure minus body measure');
  app.expectNoTrouble();
  app.close();
});

it('with a decimal comma she types and sees commas; what can be read in two ways is asked', async () => {
  const app = await blank();
  await app.put('A1', '=ROUND(2,5;1)');
  await app.go('A1');
  expect([app.typed, app.shown('A1')]).to.deep.equal(['=ROUND(2.5;1)', '2.5']);
  await app.run('Write decimals with a comma: 2,5');
  expect([app.typed, app.shown('A1')]).to.deep.equal(['=ROUND(2,5;1)', '2,5']);
  await app.put('A2', '=2,5 cm*1,5');
  await app.go('A2');
  expect([app.typed, app.shown('A2')]).to.deep.equal(['=2,5 cm*1,5', '3,8 cm']);
  await app.go('A3');
  await sendKeys({ type: '=SUM(1,2)' });
  await press('Enter');
  const dialog = () => app.part<HTMLDialogElement>('dialog', app.inside('tt-two-readings'));
  await soon(() => dialog().open, 'nothing is asked');
  expect(words(dialog().textContent)).to.contain('“1,2” can be read in two ways').and.to.contain('meant in New sheet A3?');
  // A key that was on its way to the next cell chooses nothing.
  await press('Enter');
  expect(dialog().open).to.equal(true);
  await app.tabTo('=SUM(1;2)');
  await app.press('Enter');
  await app.go('A3');
  expect([app.typed, app.shown('A3')]).to.deep.equal(['=SUM(1;2)', '3']);
  await app.go('A4');
  await sendKeys({ type: '=SUM(1,2)' });
  await press('Enter', 'Escape');
  await app.settled();
  expect(app.shown('A4')).to.equal('=SUM(1,2)');
  await app.run('Write decimals with a point: 2.5');
  await app.go('A1');
  expect(app.typed).to.equal('=ROUND(2.5;1)');
  app.expectNoTrouble();
  app.close();
});

it('before cells go that a name stands for, it is said what would break; undo brings all back', async () => {
  const app = await blank();
  await app.fill('A1', [['10 in'], ['=girth*2'], ['=girth+A2']]);
  await app.go('A1');
  await app.run('Names…');
  await app.tabTo('Name for New sheet A1');
  await sendKeys({ type: 'girth' });
  await press('Enter', 'Escape');
  await app.settled();
  const dialog = () => app.part<HTMLDialogElement>('dialog', app.inside('tt-losses'));
  await press('Alt+Delete');
  await soon(() => dialog().open, 'nothing is asked');
  expect(words(dialog().textContent)).to.contain('2 formulas would have no result any more.').and.to.contain('girth');
  await app.press('Escape');
  expect([dialog().open, app.shown('A2'), app.focusInCells]).to.deep.equal([false, '20 in', true]);
  await press('Alt+Delete');
  await soon(() => dialog().open, 'nothing is asked');
  await app.tabTo('Remove all the same');
  await app.press('Enter');
  expect(app.shown('A1')).to.contain('The cells that ‘girth’ stood for were removed.');
  await app.press('Control+z');
  expect([app.shown('A1'), app.shown('A2'), app.shown('A3')]).to.deep.equal(['10 in', '20 in', '30 in']);
  app.expectNoTrouble();
  app.close();
});
