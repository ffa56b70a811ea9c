/** Figures and refusals, topic by topic. */
import { describe, expect, it } from 'vitest';
import type { Quantity } from '../../../src/quantities/index.ts';
import { EXAMPLE_NAMES } from './charts.ts';
import { evaluate, Told } from './formula.ts';

const told = (formula: string): string => {
  try {
    evaluate(formula, EXAMPLE_NAMES);
  } catch (error) {
    if (error instanceof Told) return error.message;
    throw error;
  }
  throw new Error(`${formula} has a result`);
};
const base = (formula: string): number => (evaluate(formula, EXAMPLE_NAMES) as Quantity).value;

describe('figures', () => {
  it.each<[string, number]>([
    ['=EASE(39 in, 36 1/4 in)', 2.75 * 25.4], ['=EASE(88 cm, 92 cm)', -40], ['=EASE.PERCENT(88 cm, 92 cm)', -4 / 92],
    ['=BLEND.WIDTH(22 cm, 26 cm, 40 cm, 0 cm)', 220], ['=BLEND.WIDTH(22 cm, 26.3 cm, 40 cm, 40 cm)', 263], ['=BLEND.WIDTH(22 cm, 26 cm, 40 cm, 20 cm, "smooth")', 240],
    ['=BLEND.WIDTH(22 cm, 26 cm, 40 cm, 10 cm, "smooth")', 220 + 40 * (3 / 16 - 2 / 64)], ['=BLEND.WIDTH(22 cm, 26.3 cm, 40 cm, 40 cm, "smooth")', 263],
    ['=SEAM.SHIFT(-2 cm, 2)', -5], ['=SEAM.GAIN(3/8 in, 1)', 0.75 * 25.4], ['=SEAM.LEFT(1/2 in, -3/8 in)', 0.875 * 25.4], ['=SEAM.LEFT(1.5 cm, 1.5 cm)', 0], ['=SEAM.ROOM(5 mm, 2)', 0],
    ['=PLEAT.DEPTH(300 cm, 100 cm, 20, "box")', 25], ['=PLEAT.DEPTH(60 cm, 60 cm, 4)', 0], ['=PLEAT.DEEPEN(100 cm, 76 cm, 20, "inverted")', 3], ['=PLEAT.DEEPEN(70 cm, 76 cm, 3)', -10],
    ['=PLEAT.COUNT(10 cm, 4 cm)', 3], ['=PLEAT.COUNT(1 cm, 4 cm)', 1], ['=PLEAT.UNDERLAY(5 cm, "box")', 200], ['=PLEAT.CLOTH(50 cm, 20, 2.5 cm, "knife", 1 cm)', 1520],
    ['=CIRCLE.RADIUS(72 cm, 2)', 720 / 4 / Math.PI], ['=CIRCLE.PART(72 cm, CIRCLE.RADIUS(72 cm, 3/4))', 0.75],
    ['=BUTTON.AT(2 cm, 62.3 cm, 11, 1)', 20], ['=BUTTON.AT(2 cm, 62.3 cm, 11, 11)', 623], ['=BUTTON.GAP(0 cm, 66 cm, 13)', 55], ['=BUTTON.COUNT(0 cm, 25 cm, 10 cm)', 4],
    ['=BUTTON.EVEN(5 cm, 0 mm, 2 cm, 20 cm, 62 cm)', 60], ['=BUTTON.EVEN(4 cm, 0 mm, 2 cm, 20 cm, 62 cm)', 30], ['=BUTTON.EVEN(7 cm, 2 cm, 62 cm, 2 cm, 20 cm)', 600 / 9],
    ['=CLOTH.BUY(2.2 m, 0 %, 10 cm)', 2200], ['=CLOTH.BUY(2.3 m, 0 %, 0.1 m)', 2300], ['=CLOTH.BUY(2.31 yd, 0 %, 1/8 yd)', 2.375 * 914.4], ['=CLOTH.BUY(97 cm, 3 %, 10 cm)', 1000],
    ['=CLOTH.WIDTHS(107 cm, 110 cm, 1.5 cm)', 1], ['=CLOTH.WIDTHS(107.1 cm, 110 cm, 1.5 cm)', 2], ['=CLOTH.WIDTHS(0.3 m, 0.1 m)', 3], ['=CLOTH.REPEAT(72 cm, 24 cm)', 720], ['=CLOTH.REPEAT(72.01 cm, 24 cm)', 960],
    ['=STEP.NEAR(-2 1/16 in, 1/8 in)', -50.8], ['=STEP.NEAR(2.5 mm, 5 mm)', 5], ['=STEP.UP(0.3 m, 0.1 m)', 300], ['=STEP.DOWN(0.3 m, 0.1 m)', 300], ['=STEP.DOWN(-1 mm, 5 mm)', -5],
    ['=AMOUNT(2.2 in, "in")', 2.2], ['=LENGTH(2.2, "in")', 2.2 * 25.4], ['=AMOUNT(1 yd, "in")', 36], ['=DART.INTAKE(72 cm, 72 cm)', 0], ['=TIER.CLOTH(100 cm, 1.5, 1)', 1500],
    ['=BUST.SPREAD(97 cm, 92 cm)', 25], ['=OPENING.ROOM(92 cm, 100 cm)', -80], ['=OPENING.ROOM(92 cm, 100 cm, 10 %)', 12], ['=OPENING.LENGTH(78 cm, 100 cm)', 110], ['=OPENING.LENGTH(102 cm, 100 cm)', 0],
    ['=SEAM.SHARE(-4 cm, 30 %)', -6], ['=SEAM.TAKEN(1/2 in, 3/8 in)', 0.875 * 25.4], ['=SEAM.NEEDED(5 cm, 2)', 18.5], ['=SEAM.CURVE(1 cm, 180°)', 10 * Math.PI], ['=STITCH.LENGTH(10, 1 in)', 2.54],
    ['=DART.WIDTH(DART.ANGLE(2 cm, 9 cm), 9 cm)', 20], ['=PLEAT.AT(5 cm, 4 cm, "knife", 3)', 260], ['=PLEAT.AT(5 cm, 2 cm, "box", 1)', 0], ['=PLEAT.ACROSS(140 cm, 5 cm, 5 cm, "knife", 1.5 cm)', 9], ['=PLEAT.REST(30 cm, 6 cm, 5)', 60],
    ['=TIER.DEPTH(75 cm, 3, 1, 4 cm)', 210], ['=TIER.DEPTH(75 cm, 3, 2, 4 cm)', 250], ['=TIER.DEPTH(75 cm, 3, 3)', 250], ['=TIER.TOTAL(100 cm, 2, 3)', 14_000],
    ['=CIRCLE.OUTER(20 cm, 60 cm, 2 cm)', 820], ['=CIRCLE.LONGEST(20 cm, 1/2, 90 cm, 2 cm)', 680], ['=CIRCLE.LONGEST(20 cm, 1/4, 90 cm)', 900 + 100 * Math.SQRT2 - 200],
    ['=GORE.SEAM(60 cm, 20 cm, 110 cm)', 750], ['=GORE.RISE(60 cm, 20 cm, 110 cm)', 150], ['=GORE.CLOTH(6, 65 cm, 20 cm, 38 cm, 140 cm, "any")', 1300], ['=GORE.CLOTH(6, 65 cm, 20 cm, 38 cm, 140 cm)', 1300], ['=GORE.CLOTH(4, 65 cm, 20 cm, 38 cm, 125 cm, "any")', 650],
    ['=BUTTON.OFF(2 cm, 62 cm, 11, 21 cm)', -10], ['=BUTTON.OFF(2 cm, 62 cm, 11, 90 cm, 50 cm)', -280], ['=BUTTON.UNEVEN(2 mm, 14 cm, 2 cm, 8.1 cm)', 2], ['=BUTTON.STAND(18 mm)', 15], ['=BUTTON.LIGNE(40)', 25.4],
    ['=HEM.EASED(2 cm, 1)', 80 * Math.PI], ['=HEM.CURVE(2 cm, 82 cm)', 0.05], ['=HEM.LEFT(5 cm, 2 cm)', 30], ['=HEM.LEFT(5 cm, -1 cm)', 60], ['=HEM.DEPTH(65 cm, 58.5 cm, 1.5 cm, 1 cm)', 40], ['=HEM.DEPTH(61 cm, 58.5 cm, 1.5 cm, 1 cm)', 0],
    ['=BAND.LENGTH(78 cm, 3 cm, 1.5 cm)', 840], ['=BAND.DEPTH(4 cm, 1.5 cm)', 110], ['=BAND.DEPTH(4 cm, 1.5 cm, "single")', 70], ['=BAND.CLOTH(274 cm, 12 cm, 140 cm, 1.5 cm)', 240], ['=BAND.CLOTH(274.1 cm, 12 cm, 140 cm, 1.5 cm)', 360],
    ['=INTERFACING.CUT(84 cm, 1.5 cm)', 810], ['=INTERFACING.SPARE(90 cm, 81 cm)', 90], ['=INTERFACING.PIECES(98 cm, 90 cm, 1 cm)', 2], ['=INTERFACING.PIECES(90 cm, 90 cm, 1 cm)', 1], ['=INTERFACING.PIECES(179 cm, 90 cm, 1 cm)', 2],
    ['=LENGTHEN.SHARE(5 cm, 2)', 25], ['=LENGTHEN.CLOTH(5 cm, 2)', 100], ['=LENGTHEN.CLOTH(5 cm, 2, 24 cm)', 480], ['=LENGTHEN.CLOTH(-5 cm, 2, 24 cm)', -100], ['=LENGTHEN.WIDTH(5 cm, 60 cm, 48 cm, 66 cm)', 675], ['=LENGTHEN.SEAM(5 cm, 60 cm, 20 cm, 110 cm)', 62.5], ['=LENGTHEN.SWEEP(5 cm, 1/2)', 50 * Math.PI],
    ['=SHOULDER.CHANGE(13.5 cm, 12.5 cm)', -10], ['=SHOULDER.SIDE(40 cm, 38 cm)', -10], ['=SHOULDER.PIVOT(14 cm, 14 cm)', 60], ['=SHOULDER.SLOPE(10 cm, 5 cm)', 30], ['=SHOULDER.DROP(10 cm, 0°, 30°)', -50],
    ['=CAP.RISE(25 cm, 40 cm)', 150], ['=SLEEVE.LENGTH(79 cm, 40 cm)', 590], ['=ELASTIC.LENGTH(76 cm, 0 %, 2 cm)', 780], ['=ELASTIC.CASING(20 mm)', 33], ['=KNIT.BAND(50 cm, 80 %, 1 cm)', 420],
    ['=CLOTH.PANELS(3, 70 cm, 70 cm, 140 cm)', 1400], ['=CLOTH.SHRUNK(250 cm, 3 %)', 2425], ['=CLOTH.COST(2.3 m, 20)', 46], ['=CLOTH.COST(2 1/2 yd, 20, "yd")', 50], ['=BIAS.WIDTH(1 cm, "double", 3 mm)', 63], ['=BIAS.WIDTH(1 cm)', 40],
    ['=CORD.FREE(84 cm, 70 cm)', 70], ['=CORD.LONGEST(70 cm) - 70 cm', 152.4],
  ])('%s', (formula, expected) => {
    expect(base(formula)).toBeCloseTo(expected, 9);
  });
});

describe('refusals', () => {
  it.each<[string, string | RegExp]>([
    ['=BLEND.WIDTH(22 cm, 26 cm, 40 cm, 41 cm)', 'The point at 41 cm lies beyond the end of the blend at 40 cm: give a point on it.'],
    ['=BLEND.WIDTH(22 cm, 26 cm, 0 cm, 0 cm)', 'BLEND.WIDTH needs distance to be more than 0, and got 0 cm.'],
    ['=SEAM.LEFT(1.5 cm, 2 cm)', 'The seam cannot be let out by 2 cm: its allowance is only 1.5 cm, so there would be no cloth to sew.'],
    ['=PLEAT.DEPTH(60 cm, 70 cm, 5)', 'A finished width of 70 cm needs more than the cloth’s 60 cm: nothing is left to fold.'],
    ['=PLEAT.DEPTH(60 cm, 50 cm, 0)', /whole number of at least 1 for pleats/],
    ['=CIRCLE.RADIUS(10 cm, 1, 2 cm)', /The seam allowance of 2 cm reaches the centre of the circle, whose waist seam has a radius of 1.6 cm/],
    ['=CIRCLE.RADIUS(-72 cm, 1)', 'CIRCLE.RADIUS needs waist to be more than 0, and got −72 cm.'],
    ['=CIRCLE.CLOTH(20 cm, 62 cm, 1, 20 cm)', /too narrow for this skirt even in 16 pieces/],
    ['=BUTTON.GAP(62 cm, 2 cm, 11)', 'The last button, at 2 cm, must come after the first, at 62 cm.'],
    ['=BUTTON.GAP(2 cm, 62 cm, 1)', 'One button has no gap: give at least 2.'],
    ['=BUTTON.AT(2 cm, 62 cm, 11, 12)', 'There is no button 12 among 11: n goes from 1 to 11.'],
    ['=BUTTON.EVEN(6 cm, 0 mm, 2 cm)', 'Give at least two different places that must have a button.'],
    ['=BUTTON.EVEN(6 cm, 0 mm)', 'BUTTON.EVEN needs place too: BUTTON.EVEN(about, within, place, …).'],
    ['=BUTTON.EVEN(20 cm, 0 mm, 0 cm, 20.1 cm, 40 cm)', /No even gap of about 20 cm or half of it/],
    ['=BUTTON.EVEN(0.01 mm, 0 mm, 0 cm, 20 cm)', /more than a thousand/],
    ['=CLOTH.BUY(2.5 m, -3 %)', /needs the shrinkage without a minus sign/],
    ['=CLOTH.WIDTHS(144 cm, 3 cm, 1.5 cm)', 'Two seam allowances of 1.5 cm leave nothing of cloth 3 cm wide.'],
    ['=GATHER.CLOTH(70 cm, 0.5)', 'GATHER.CLOTH needs ratio to be at least 1, and got 0.5.'],
    ['=GATHER.RATIO(60 cm, 70 cm)', /nothing is left to gather/],
    ['=DART.INTAKE(70 cm, 72 cm)', /a dart cannot add cloth/],
    ['=DART.MOVED(20 cm, 8 cm, 16 cm)', /its legs would not meet/],
    ['=GODET.ANGLE(200 cm, 30 cm)', /more than a whole circle/],
    ['=BIAS.LENGTH(2 in, 3 in)', /does not come out of a square/],
    ['=STRETCH.PERCENT(15 cm, 10 cm)', /shorter than at rest/],
    ['=OPENING.ROOM(0 cm, 100 cm)', 'OPENING.ROOM needs closed to be more than 0, and got 0 cm.'],
    ['=PLEAT.ACROSS(10 cm, 5 cm, 5 cm)', 'One pleat takes 15 cm of flat cloth, and between its seams this width has 10 cm.'],
    ['=PLEAT.REST(30 cm, 6 cm, 1)', 'One pleat leaves no others: give at least 2.'],
    ['=PLEAT.REST(30 cm, 36 cm, 4)', /cannot take up 36 cm/],
    ['=TIER.DEPTH(75 cm, 3, 4)', 'There is no tier 4 among 3: tier goes from 1 to 3.'],
    ['=TIER.DEPTH(60 cm, 3, 1, 20 cm)', 'With a step of 20 cm, the shallowest of 3 tiers would have no depth: take a step of less than 20 cm.'],
    ['=CIRCLE.LONGEST(20 cm, 1, 30 cm)', 'Cloth 30 cm wide is too narrow for this skirt in one piece: CIRCLE.PIECES has how many pieces it takes.'],
    ['=CIRCLE.LONGEST(20 cm, 3/2, 300 cm)', /too narrow for this skirt in one piece/],
    ['=GORE.CLOTH(4, 65 cm, 20 cm, 150 cm, 140 cm)', /take more gores, or join cloth/],
    ['=BUTTON.OFF(2 cm, 62 cm, 1, 20 cm)', 'One button has no gap: give at least 2.'],
    ['=BUTTON.UNEVEN(2 mm, 2 cm, 8 cm)', 'Two buttons have one gap, which is always even: give the places of three or more.'],
    ['=HEM.CURVE(9 cm, 8 cm)', 'A hem of 9 cm reaches the centre of a curve with a radius of 8 cm.'],
    ['=HEM.LEFT(5 cm, 6 cm)', 'The hem cannot be let down by 6 cm: it holds only 5 cm of cloth.'],
    ['=HEM.DEPTH(60 cm, 58.5 cm, 1.5 cm, 1 cm)', 'The piece is too short by 1 cm for this finished length, seam and turn-under, with no hem at all.'],
    ['=BAND.CLOTH(274 cm, 12 cm, 3 cm, 1.5 cm)', 'Two seam allowances of 1.5 cm leave nothing of cloth 3 cm wide.'],
    ['=INTERFACING.CUT(3 cm, 1.5 cm)', 'Stopping 1.5 cm short of both edges leaves no interfacing on a piece of 3 cm.'],
    ['=INTERFACING.PIECES(98 cm, 1 cm, 1 cm)', 'Pieces of 1 cm cannot lie over each other by 1 cm.'],
    ['=LENGTHEN.WIDTH(-60 cm, 60 cm, 48 cm, 66 cm)', 'A piece 60 cm long cannot be shortened by 60 cm.'],
    ['=LENGTHEN.WIDTH(90 cm, 60 cm, 66 cm, 26 cm)', /the sides of this piece meet/],
    ['=SHOULDER.PIVOT(15 cm, 14 cm)', /more than a slash of 14 cm can swing/],
    ['=SHOULDER.SLOPE(12 cm, 13 cm)', 'A shoulder 12 cm long cannot drop by 13 cm: check the figures.'],
    ['=CAP.RISE(17 cm, 34 cm)', /the cap would have no height/],
    ['=SLEEVE.LENGTH(19 cm, 40 cm)', /does not reach past half a shoulder width/],
    ['=CLOTH.PANELS(3, 70 cm, 150 cm, 140 cm)', /make it of two, or choose wider cloth/],
    ['=CLOTH.OTHER(2 m, 140 cm, 90 cm, 100 cm)', 'A piece 1 m wide does not go on cloth 0.9 m wide: choose wider cloth, or join it.'],
    ['=CLOTH.OTHER(2 m, 90 cm, 140 cm, 100 cm)', /which the length is meant for/],
    ['=BIAS.CONTINUOUS(1 in, 1 in, 1/4 in)', /too small for a strip 1 in wide in this method/],
    ['=BIAS.STRIPS(1 in, 1 in)', /too small for strips 1 in wide/],
    ['=CORD.FREE(60 cm, 70 cm)', 'A cord of 60 cm does not reach through a channel of 70 cm.'],
    ['=STEP.NEAR(5 cm, 0 cm)', 'STEP.NEAR needs step to be more than 0, and got 0 cm.'],
  ])('%s', (formula, expected) => {
    if (typeof expected === 'string') expect(told(formula)).toBe(expected);
    else expect(told(formula)).toMatch(expected);
  });
});
