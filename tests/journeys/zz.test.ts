import { sendKeys } from '@web/test-runner-commands';
import { App, press } from './app.ts';
it('probe', async function () {
  this.timeout(60000);
  const app = await App.open();
  const f = () => (app.focused?.localName + '#' + (app.focused?.id) + ' ' + app.focused?.getAttribute('aria-label') + ' ' + app.focused?.textContent?.slice(0, 30));
  await app.run('Add a blank sheet');
  await app.put('B1', '3 cm');
  await app.go('B1');
  for (const key of ['Escape', 'Shift+Tab', 'Shift+Tab', 'Enter', 'Escape']) { await press(key); console.log(key, f()); }
  await press('Enter'); console.log(f());
  const line = app.inside('tt-entry-line');
  line.addEventListener('focusin', (e) => console.log('in', (e.target as Element).localName), true);
  line.addEventListener('focusout', (e) => console.log('out', (e.target as Element).localName, (e as FocusEvent).relatedTarget), true);
  line.addEventListener('submit', (e) => console.log('submit'), true);
  await sendKeys({ type: 'skirt waist' }); console.log(f());
  for (const key of ['Enter']) { await press(key); console.log(key, f()); await app.settled(); console.log(key, f()); }
});
