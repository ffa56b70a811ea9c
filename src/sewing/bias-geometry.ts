/**
 * What a square of cloth really gives in bias strips.
 *
 * Continuous: the square is cut along one diagonal and the two triangles are
 * sewn together, straight edge to straight edge. The seam takes its allowance
 * from both, and what is then flat is a parallelogram whose bias edges lie
 * (side − seam) ÷ √2 apart. Lines a strip apart are drawn along them, as many as
 * fit whole. The two straight ends are joined to a tube, one strip offset, which
 * takes the seam from both, so that each round is √2 × (side − 3 × seam) long.
 *
 * One by one: strips are cut from the diagonal outwards in both halves; each is
 * shorter than the last by two strip widths, measured along its middle, and each
 * join takes √2 × seam from both strips that meet in it.
 */
const FLOOR = 1e-9;

export interface Continuous {
  readonly rounds: number;
  readonly round: number;
  readonly whole: number;
}

export function continuous(side: number, strip: number, seam: number): Continuous {
  const rounds = Math.max(0, Math.floor((side - seam) / (Math.SQRT2 * strip) + FLOOR));
  const round = Math.max(0, Math.SQRT2 * (side - 3 * seam));
  return { rounds, round, whole: rounds * round };
}

export interface OneByOne {
  /** In each half of the square. */
  readonly strips: number;
  /** Both halves, before they are joined. */
  readonly cut: number;
  readonly joins: number;
  readonly whole: number;
}

export function oneByOne(side: number, strip: number, seam: number): OneByOne {
  const strips = Math.floor(side / (Math.SQRT2 * strip) + FLOOR);
  const cut = 2 * (strips * side * Math.SQRT2 - strips * strips * strip);
  const joins = Math.max(0, 2 * strips - 1);
  return { strips, cut, joins, whole: Math.max(0, cut - joins * 2 * Math.SQRT2 * seam) };
}

/** The least side of a square whose continuous strip has this length. */
export function sideFor(length: number, strip: number, seam: number): Continuous & { readonly side: number } {
  // More rounds need a wider square for themselves, and a narrower one for the length: the least of both is beside where they cross.
  const needed = (rounds: number): number => Math.max(seam + rounds * Math.SQRT2 * strip, length / (rounds * Math.SQRT2) + 3 * seam);
  const crossing = (Math.SQRT2 * seam + Math.sqrt(2 * seam * seam + 2 * strip * length)) / (2 * strip);
  const fewer = Math.max(1, Math.floor(crossing));
  const rounds = needed(fewer) <= needed(fewer + 1) ? fewer : fewer + 1;
  const side = needed(rounds);
  const round = Math.SQRT2 * (side - 3 * seam);
  return { side, rounds, round, whole: rounds * round };
}
