import { App } from './app.ts';
it('probe', async function () {
  this.timeout(60000);
  const t0 = performance.now();
  const app = await App.open();
  console.log('open ms', Math.round(performance.now() - t0), app.header, app.said, JSON.stringify(app.sheetNames), app.openSheetName);
  console.log(JSON.stringify(app.texts()));
  const t1 = performance.now();
  await app.go('B2');
  console.log('go', Math.round(performance.now() - t1));
  await app.run('Add a blank sheet');
  console.log(app.sheetNames.join(), app.openSheetName, app.focusInCells);
  await app.fill('A1', [['Bust', '37 in'], ['Waist', '31 in'], ['sum', '=B1 + 2 in']]);
  console.log(JSON.stringify(app.texts()));
  console.log(performance.now() - t1, JSON.stringify(app.troubles));
  console.log(app.window.performance.getEntriesByType('resource').length);
});
