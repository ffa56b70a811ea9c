/** A layout to scale over several pages: which part of it lies on which page, and where pages join. */
import { TILE, letterOf, type Join } from './full-size.ts';
import type { DrawnLay, LayPoint } from './lay.ts';

export interface LayTile {
  /** Its upper left corner, mm of paper from the cut end and from the highest edge of the cloth. */
  readonly x: number;
  readonly y: number;
  readonly joins: readonly Join[];
}

export interface LayPages {
  /** Of the whole drawing, mm of paper. */
  readonly width: number;
  readonly height: number;
  /** Pages on which something is to be cut, row by row; they begin with page 2, after an overview. */
  readonly tiles: readonly LayTile[];
}

/** @param scale one to so many */
export function layPages({ length, width: across, pieces }: Pick<DrawnLay, 'length' | 'width' | 'pieces'>, scale: number): LayPages {
  const [width, height] = [length / scale, across / scale];
  const boxes = pieces.map(({ outline }) => boxOf(outline, across, scale));
  const places: { readonly column: number; readonly row: number }[] = [];
  for (let row = 0; row * TILE.height < height; row++) {
    for (let column = 0; column * TILE.width < width; column++) {
      const [x, y] = [column * TILE.width, row * TILE.height];
      if (boxes.some(([left, top, right, bottom]) => right > x && left < x + TILE.width && bottom > y && top < y + TILE.height)) places.push({ column, row });
    }
  }
  const joins: Join[][] = places.map(() => []);
  let letters = 0;
  places.forEach(({ column, row }, at) => {
    for (const [side, back, dx, dy] of [['right', 'left', 1, 0], ['bottom', 'top', 0, 1]] as const) {
      const other = places.findIndex((each) => each.column === column + dx && each.row === row + dy);
      if (other < 0) continue;
      const letter = letterOf(letters++);
      joins[at]!.push({ side, letter, page: other + 2 });
      joins[other]!.push({ side: back, letter, page: at + 2 });
    }
  });
  return { width, height, tiles: places.map(({ column, row }, at) => ({ x: column * TILE.width, y: row * TILE.height, joins: joins[at]! })) };
}

function boxOf(outline: readonly LayPoint[], across: number, scale: number): readonly [left: number, top: number, right: number, bottom: number] {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, up] of outline) {
    const y = across - up;
    [left, top, right, bottom] = [Math.min(left, x / scale), Math.min(top, y / scale), Math.max(right, x / scale), Math.max(bottom, y / scale)];
  }
  return [left, top, right, bottom];
}
