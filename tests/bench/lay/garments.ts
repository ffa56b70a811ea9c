/**
 * Invented garments of 5 to 40 pieces, for what a dressmaker would ask: how
 * soon is there a layout, and what is the answer of a few seconds worth.
 */
import type { Outline, Piece } from '../../../src/lay/index.ts';
import { Random } from '../../../workers/lay/random.ts';

const turns = [0, 180];

function skirtPanel(random: Random): Outline {
  const length = 450 + random.next() * 400, waist = 100 + random.next() * 120, hem = waist + random.next() * 200;
  return [[0, -hem / 2], [length * 0.75, -waist / 2 - 10], [length, -waist / 2], [length - 12, 0], [length, waist / 2], [length * 0.75, waist / 2 + 10], [0, hem / 2], [-10, 0]];
}

function bodiceHalf(random: Random): Outline {
  const length = 380 + random.next() * 60, chest = 210 + random.next() * 60, neck = 70 + random.next() * 20, depth = 60 + random.next() * 60;
  return [[0, 0], [length - depth, 0], [length - depth * 0.4, neck * 0.5], [length, neck], [length - 40, chest * 0.75], [length - 110, chest * 0.72], [length - 175, chest * 0.8], [length - 200, chest], [0, chest * 0.9]];
}

function sleeve(random: Random): Outline {
  const length = 180 + random.next() * 350, half = 150 + random.next() * 40, wrist = half * (0.6 + random.next() * 0.4), cap = 110 + random.next() * 40;
  const crown = Array.from({ length: 9 }, (_, i) => [length + cap * (0.5 - 0.5 * Math.cos((i * Math.PI) / 4)), half * (1 - i / 4)] as const);
  return [[0, -wrist], ...crown.slice().reverse(), [0, wrist]];
}

const band = (random: Random): Outline => {
  const length = 200 + random.next() * 700, width = 40 + random.next() * 60;
  return [[0, 0], [length, 0], [length, width], [0, width]];
};

function collar(random: Random): Outline {
  const span = 180 + random.next() * 60, width = 60 + random.next() * 30;
  return [[0, -span], [width, -span - 15], [width + 20, -span * 0.5], [width + 28, 0], [width + 20, span * 0.5], [width, span + 15], [0, span], [14, span * 0.5], [20, 0], [14, -span * 0.5]];
}

/** The same number gives the same garment. */
export function garment(number: number): readonly Piece[] {
  const random = new Random(9000 + number);
  const most = 5 + random.below(36);
  const kinds = [skirtPanel, bodiceHalf, sleeve, band, collar];
  const pieces: Piece[] = [];
  for (let laid = 0; laid < most;) {
    const kind = kinds[random.below(kinds.length)]!;
    const pairs = kind === bodiceHalf || kind === sleeve;
    const count = Math.min(most - laid, 1 + random.below(kind === skirtPanel ? 6 : 3));
    const pair = pairs && most - laid >= 2;
    const each = pair ? Math.max(1, Math.floor(count / 2)) : count;
    pieces.push({ name: `Piece ${pieces.length + 1}`, outline: kind(random), cut: pair ? 'pair' : 'single', count: each, turns });
    laid += pair ? 2 * each : each;
  }
  return pieces;
}
