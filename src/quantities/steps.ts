/**
 * Counting in steps: the two rules for ties, and what counts as being on a mark.
 *
 * An inch is no round number of binary millimetres, so a length that lies on a
 * mark, or in the middle between two, may be off by the last bits of a double.
 * Anything within 1e-9 of a step counts as being there.
 */

/** How far from a mark or a middle still counts as on it, for a count of steps. The second term is the noise of very many steps. */
export const noiseAt = (steps: number): number => 1e-9 + Math.abs(steps) * 4e-16;

/**
 * To the nearest whole number; a tie goes to the greater (OpenFormula MROUND,
 * section 6.17.4). Of a count without its minus that is away from zero
 * (OpenFormula ROUND, section 6.17.5), which is the rule of showing.
 */
export const tieToGreater = (steps: number): number => Math.floor(steps + 0.5 + noiseAt(steps));
