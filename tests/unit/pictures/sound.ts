/** What must hold for every picture, whatever it shows, as far as plain data tells. */
import { expect } from 'vitest';
import type { Picture, TextMark } from '../../../src/pictures/index.ts';
import { textWidth } from '../../../src/pictures/index.ts';

interface Box {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export function textBox({ x, y, anchor, text }: TextMark): Box {
  const width = textWidth(text);
  const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2;
  return { text, left, right: left + width, top: y - 10.3, bottom: y + 2.7 };
}

export const texts = ({ marks }: Picture): TextMark[] => marks.filter((mark) => mark.kind === 'text');

/** The points that a path goes to. Arcs reach further: the browser's test sees to those. */
export function points(d: string): [number, number][] {
  return [...d.matchAll(/([MLCQA])([^MLCQAZ]*)/g)].flatMap(([, command, figures]) => {
    const numbers = figures!.trim().split(/[\s,]+/).map(Number);
    if (command === 'A') return [[numbers[5]!, numbers[6]!] as [number, number]];
    const all: [number, number][] = [];
    for (let i = 0; i < numbers.length; i += 2) all.push([numbers[i]!, numbers[i + 1]!]);
    return all;
  });
}

const overlap = (a: Box, b: Box): boolean => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

export function expectSound(picture: Picture): void {
  const { width, height, marks, alt } = picture;
  expect(alt).toMatch(/^[A-Z\d].*\.$/);
  expect(alt + JSON.stringify(marks)).not.toMatch(/NaN|Infinity|undefined|null|\[object/);
  expect(marks.length).toBeGreaterThan(3);
  const boxes = texts(picture).map(textBox);
  for (const box of boxes) {
    expect(box.text.trim()).not.toBe('');
    if (box.left < 0 || box.right > width || box.top < 0 || box.bottom > height) throw new Error(`“${box.text}” lies outside the picture`);
  }
  for (const [i, box] of boxes.entries()) {
    for (const other of boxes.slice(i + 1)) if (overlap(box, other)) throw new Error(`“${box.text}” meets “${other.text}”`);
  }
  for (const mark of marks) {
    if (mark.kind === 'text') continue;
    for (const [x, y] of points(mark.d)) {
      if (!(x >= 0 && x <= width && y >= 0 && y <= height)) throw new Error(`${mark.look} goes to ${x} ${y}, outside ${width} × ${height}`);
    }
  }
}
