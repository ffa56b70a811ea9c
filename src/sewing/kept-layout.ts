/** A layout that was kept, as the functions that read one take it. */
import type { UnitCode } from '../quantities/index.ts';

/** Lengths in mm. */
export interface LayoutFigures {
  readonly name: string;
  /** `older`: its pieces are others now than when it was found. `lost`: they can no longer be read, so that nobody knows. */
  readonly state: 'fresh' | 'older' | 'lost';
  /** Cloth to cut, opened out, shrinkage with it. */
  readonly length: number;
  /** Of the cloth used, the part that the pieces cover, 0 to 1. */
  readonly density: number;
  /** Of the cloth, opened out. */
  readonly width: number;
  /** The largest free rectangle, where one is known. */
  readonly left: { readonly length: number; readonly width: number } | null;
  /** In which its cloth was told. */
  readonly unit: UnitCode;
}

export class KeptLayout {
  constructor(readonly figures: LayoutFigures) {}
}
