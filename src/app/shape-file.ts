/** Drawing files and photographs, as they come in: read, bounded, never put into the page and never sent anywhere. */
import type { Known, Plane } from '../lay/shapes/index.ts';
import { mmPerPixel, planeThrough } from '../lay/shapes/index.ts';
import { SVG_TOLERANCE, svgPieces, type SvgPieces } from '../lay/shapes/svg.ts';
import type { Point } from '../lay/index.ts';

interface Policies {
  createPolicy(name: string, rules: { createHTML(text: string): string }): { createHTML(text: string): string };
}

let policy: ReturnType<Policies['createPolicy']> | undefined;

const MOST_BYTES = 5_000_000;

/** Arcs are drawn by curves that leave them by 0.03 %, and curves by straight edges. */
export const FILE_ERROR = 2 * SVG_TOLERANCE;

export async function readDrawing(file: File): Promise<SvgPieces> {
  const refused = (sentence: string): SvgPieces => ({ shapes: [], sentences: [sentence] });
  if (file.size > MOST_BYTES) return refused(`“${file.name}” is larger than 5 MB: save it without pictures, or with fewer pieces.`);
  const text = await file.text();
  // No drawing program needs entities, and a file can hide anything in them.
  if (/<!ENTITY/i.test(text)) return refused(`“${file.name}” defines its own words (entities), which are not read: save it as plain SVG.`);
  policy ??= (globalThis as { trustedTypes?: Policies }).trustedTypes?.createPolicy('tt-drawing', { createHTML: (given) => given });
  // An inert document: nothing in it runs, nothing is loaded, and only figures and names leave it. Its looks are of no use, and the page's policy would tell of every one.
  const plain = text.replace(/<[a-z][^<>]*>/gi, (tag) => tag.replace(/\sstyle(?=\s*=)/gi, ' data-look'));
  const drawing = new DOMParser().parseFromString(policy?.createHTML(plain) ?? plain, 'image/svg+xml');
  if (drawing.querySelector('parsererror')) return refused(`“${file.name}” cannot be read as an SVG drawing.`);
  return svgPieces(drawing.documentElement);
}

/** A photograph to trace over. */
export interface Photo {
  readonly file: string;
  readonly picture: ImageBitmap;
  /** In pixels: left upper, right upper, right lower, left lower; then, where they are set too, the middles of the upper, right, lower and left side. */
  readonly corners: readonly Point[];
}

const MOST_PIXELS = 80_000_000;
const WIDEST = 2_000;

export async function readPhoto(file: File): Promise<Photo | string> {
  let picture: ImageBitmap;
  try {
    picture = await createImageBitmap(file);
  } catch {
    return `“${file.name}” is no picture that can be read: take a JPEG or PNG file.`;
  }
  if (picture.width * picture.height > MOST_PIXELS) {
    picture.close();
    return `“${file.name}” has more than 80 million pixels: save it smaller.`;
  }
  const scale = WIDEST / Math.max(picture.width, picture.height);
  if (scale < 1) {
    const smaller = await createImageBitmap(picture, { resizeWidth: Math.round(picture.width * scale), resizeHeight: Math.round(picture.height * scale), resizeQuality: 'high' });
    picture.close();
    picture = smaller;
  }
  const { width, height } = picture;
  const corners = [[0.15, 0.15], [0.85, 0.15], [0.85, 0.85], [0.15, 0.85]].map(([x, y]): Point => [x! * width, y! * height]);
  return { file: file.name, picture, corners };
}

const middle = (a: Point, b: Point): Point => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];

export function withMiddles(photo: Photo, wanted: boolean): Photo {
  const four = photo.corners.slice(0, 4);
  return { ...photo, corners: wanted ? [...four, ...four.map((corner, i) => middle(corner, four[(i + 1) % 4]!))] : four };
}

/** The places of the rectangle, on the plane, in the order of `corners`. */
const places = (width: number, height: number): readonly Point[] => [[0, 0], [width, 0], [width, height], [0, height], [width / 2, 0], [width, height / 2], [width / 2, height], [0, height / 2]];

/** @param width and height of the known rectangle, in mm */
export function straightened({ corners }: Photo, width: number, height: number): Plane | string {
  const on = places(width, height);
  const turn = corners.slice(0, 4).reduce((sum, [x, y], i) => sum + x * corners[(i + 1) % 4]![1] - corners[(i + 1) % 4]![0] * y, 0);
  const plane = turn > 0 ? planeThrough(corners.map((px, i): Known => ({ px, mm: on[i]! }))) : null;
  return plane ?? 'The corners do not make a rectangle seen from above: set them in order, left upper, right upper, right lower, left lower.';
}

/** As near as a hand can set a point, in pixels. */
const HAND = 2;

/** How far an outline may be off: by the corners, and by the hand that set its points. */
export function traceError(plane: Plane, outline: readonly Point[]): { readonly perPixel: number; readonly error: number } {
  const perPixel = Math.max(...outline.map((mm) => mmPerPixel(plane, plane.toPx(mm))));
  return { perPixel, error: plane.residual + HAND * perPixel };
}
