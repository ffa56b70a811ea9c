import { openApp } from '/work/main/tests/paper/open.mjs';
import { writeFile } from 'node:fs/promises';
const app = await openApp();
try {
  for (const scheme of process.argv.slice(2)) {
  const { page, troubles } = await app.page(scheme);
  await writeFile(`/tmp/pdf/sheet-${scheme}.pdf`, await page.pdf({ format: 'A4' }));
  await page.keyboard.press('Alt+Shift+KeyT');
  await page.waitForTimeout(500);
  await page.screenshot({ path: `/tmp/pdf/dialog-${scheme}.png` });
  const pick = async (what, paper) => { await page.locator(`input[value=${what}]`).check(); await page.locator(`input[value=${paper}]`).check(); await page.waitForTimeout(300); };
  const print = async (name) => { await page.locator('button.main', { hasText: 'Print' }).click(); await writeFile(`/tmp/pdf/${name}-${scheme}.pdf`, await page.pdf({ preferCSSPageSize: true })); await page.keyboard.press('Alt+Shift+KeyT'); await page.waitForTimeout(300); };
  await pick('book','Letter'); await print('book');
  await pick('ticket','A4'); await page.screenshot({ path: `/tmp/pdf/dialog2-${scheme}.png` }); await print('ticket');
  await pick('ticket','A4'); const pics = page.locator('[data-picture]'); console.log('pics', await pics.count()); await pics.nth(0).check(); await pics.nth(4).check(); await page.waitForTimeout(500); await print('ticketpic');
  await pick('curve','A4'); await page.screenshot({ path: `/tmp/pdf/dialog3-${scheme}.png` }); await print('curve');
  await pick('curve','Letter'); await page.locator('input[name=radius]').fill('45 cm'); await page.keyboard.press('Tab'); await page.waitForTimeout(300); await print('curve45');
  console.log(scheme, troubles);
  }
} finally { await app.stop(); }
