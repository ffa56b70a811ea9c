/** The contact sheet against its references: in light, in dark, and in print, which must not depend on the theme. */
import { expect, fixture, nextFrame } from '@open-wc/testing';
import { emulateMedia, setViewport } from '@web/test-runner-commands';
import { visualDiff } from '@web/test-runner-visual-regression';
import { textWidth } from '../../../src/pictures/index.ts';
import { familySheet, sheetStyles } from './contact-sheet.ts';
import { FAMILIES } from './sheet-entries.ts';

/** References show the text of one face; on a machine without it every text would differ. */
function hasFace(): boolean {
  const pen = document.createElement('canvas').getContext('2d')!;
  pen.font = '110px "DejaVu Sans", monospace';
  const text = 'Hamburgefonts 12.5 cm';
  return Math.abs(pen.measureText(text).width / 10 - textWidth(text)) < 1;
}

const MODES = [
  { name: 'light', theme: 'light', media: 'screen', reference: 'light' },
  { name: 'dark', theme: 'dark', media: 'screen', reference: 'dark' },
  { name: 'print', theme: 'light', media: 'print', reference: 'print' },
  { name: 'print from the dark theme', theme: 'dark', media: 'print', reference: 'print' },
] as const;

describe('the contact sheet', () => {
  const { adoptedStyleSheets } = document;

  before(async () => {
    document.adoptedStyleSheets = sheetStyles;
    await setViewport({ width: 1400, height: 900 });
  });
  after(async () => {
    document.adoptedStyleSheets = adoptedStyleSheets;
    delete document.documentElement.dataset.theme;
    await emulateMedia({ media: 'screen' });
    await setViewport({ width: 800, height: 600 });
  });

  for (const { name, theme, media, reference } of MODES) {
    describe(`in ${name}`, () => {
      before(async () => {
        document.documentElement.dataset.theme = theme;
        await emulateMedia({ media });
      });

      for (const family of FAMILIES) {
        it(`shows ${family.name} as the reference does`, async function () {
          if (!hasFace()) this.skip();
          const sheet = await fixture<HTMLElement>(familySheet(family));
          await nextFrame();
          await visualDiff(sheet, `${family.name}-${reference}`);
        });
      }
    });
  }

  for (const family of FAMILIES) {
    it(`gives every picture of ${family.name} a name, and breaks no policy`, async () => {
      const sheet = await fixture<HTMLElement>(familySheet(family));
      const pictures = [...sheet.querySelectorAll('svg')];
      expect(pictures).to.have.lengthOf(family.entries.length);
      pictures.forEach((picture, i) => {
        expect(picture.getAttribute('role')).to.equal('img');
        expect(picture.getAttribute('aria-label')).to.equal(family.entries[i]!.picture.alt);
      });
      expect(sheet.querySelector('[style], [id]:not(.family), script')).to.equal(null);
      await expect(sheet).to.be.accessible();
    });
  }
});
