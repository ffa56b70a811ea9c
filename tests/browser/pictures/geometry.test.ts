/** What the browser makes of the pictures: how large texts really are, and what lies where. */
import { expect, fixture, html } from '@open-wc/testing';
import { emulateMedia } from '@web/test-runner-commands';
import fc from 'fast-check';
import { drawn, PICTURED, pictureFor, textWidth, type Picture } from '../../../src/pictures/index.ts';
import { callsOf, SHOWN } from '../../unit/pictures/calls.ts';
import { sheetStyles } from './contact-sheet.ts';
import { FAMILIES } from './sheet-entries.ts';

/** A stroke's width, and the rounding of coordinates. */
const SLACK = 0.6;

interface Part {
  readonly what: string;
  readonly box: DOMRect;
}

const parts = (picture: SVGElement, selector: string): Part[] =>
  [...picture.querySelectorAll<SVGGraphicsElement>(selector)].map((part) => ({ what: part.textContent || part.getAttribute('class')!, box: part.getBBox() }));

/** The first thing that is wrong, in words; an empty text when nothing is. */
function wrong(svg: SVGElement, { width, height }: Picture): string {
  for (const attribute of [...svg.querySelectorAll('*')].flatMap((each) => [...each.attributes])) {
    if (/NaN|undefined|Infinity|null/.test(attribute.value)) return `${attribute.name} is ${attribute.value}`;
  }
  const texts = parts(svg, 'text');
  for (const { what, box } of [...texts, ...parts(svg, 'path')]) {
    if (box.x < -SLACK || box.y < -SLACK || box.right > width + SLACK || box.bottom > height + SLACK) {
      return `“${what}” lies at ${box.x} ${box.y} to ${box.right} ${box.bottom}, outside ${width} × ${height}`;
    }
  }
  for (const [i, a] of texts.entries()) {
    for (const b of texts.slice(i + 1)) {
      if (a.box.x < b.box.right && b.box.x < a.box.right && a.box.y < b.box.bottom && b.box.y < a.box.bottom) return `“${a.what}” meets “${b.what}”`;
    }
  }
  return '';
}

async function mounted(picture: Picture): Promise<SVGElement> {
  const holder = await fixture<HTMLElement>(html`<div>${drawn(picture)}</div>`);
  return holder.querySelector('svg')!;
}

describe('pictures in the browser', () => {
  const { adoptedStyleSheets } = document;
  before(() => {
    document.adoptedStyleSheets = sheetStyles;
  });
  after(() => {
    document.adoptedStyleSheets = adoptedStyleSheets;
  });

  for (const { name, entries } of FAMILIES) {
    it(`keep the texts of ${name} apart and everything inside`, async () => {
      for (const { caption, picture } of entries) expect(wrong(await mounted(picture), picture), caption).to.equal('');
    });
  }

  for (const name of PICTURED) {
    it(`do so for random figures of ${name}`, async () => {
      const calls = fc.sample(fc.tuple(callsOf(name), fc.constantFrom(...SHOWN)), { seed: 7, numRuns: 60 });
      let looked = 0;
      for (const [call, as] of calls) {
        const picture = call && pictureFor(call, as);
        if (!picture) continue;
        looked += 1;
        expect(wrong(await mounted(picture), picture), JSON.stringify({ call, as })).to.equal('');
        if (looked === 12) break;
      }
      expect(looked).to.be.above(3);
    });
  }

  it('have texts as wide as they were laid out for', async () => {
    const pictures = FAMILIES.flatMap(({ entries }) => entries.map(({ picture }) => picture));
    let widest = 0;
    for (const picture of pictures.slice(0, 40)) {
      const svg = await mounted(picture);
      for (const text of svg.querySelectorAll('text')) {
        const [real, laid] = [text.getBBox().width, textWidth(text.textContent!)];
        expect(real, text.textContent!).to.be.at.most(laid + 0.5);
        widest = Math.max(widest, real / laid);
      }
    }
    expect(widest).to.be.within(0.8, 1.02);
  });

  it('tell lines in a key apart in black and white, by dashes, width, hatching or shape', async () => {
    await emulateMedia({ media: 'print' });
    for (const { picture } of FAMILIES.flatMap(({ entries }) => entries)) {
      const svg = await mounted(picture);
      const looks = ['fold', 'place', 'level', 'seam', 'old', 'new', 'thin', 'edge', 'body', 'new-cloth', 'hatch'].flatMap((look) => {
        const part = svg.querySelector(`.${look}`);
        if (!part) return [];
        const { strokeDasharray, strokeWidth, fill } = getComputedStyle(part);
        return [`${strokeDasharray} ${strokeWidth} ${fill} ${look === 'hatch' ? 'hatched' : ''}`];
      });
      expect(new Set(looks).size, picture.alt).to.equal(looks.length);
    }
    await emulateMedia({ media: 'screen' });
  });
});
