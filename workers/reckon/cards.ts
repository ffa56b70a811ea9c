/** What the entry line and the reference are told of the functions: the trade's first, then the standard ones. */
import { tokenize } from '../../src/formula/index.ts';
import { DIFFERENCES, PLAIN, sectionOf, STANDARD_FUNCTIONS } from '../../src/formula/standard/index.ts';
import type { StandardFunction } from '../../src/formula/standard/index.ts';
import type { FunctionCard, Sample } from '../../src/reckoning/protocol.ts';
import { FUNCTIONS } from '../../src/sewing/index.ts';
import type { Arg, ArgKind, SewingFunction } from '../../src/sewing/index.ts';
import { ADDED_NAMES, policyOf } from './functions/policy.ts';
import type { Policy } from './functions/policy.ts';
import type { Registry } from './internals.ts';
import { SAMPLES } from './samples.ts';

const TOPICS: Readonly<Record<SewingFunction['topic'], string>> = {
  fit: 'Ease and fit', size: 'Sizes and charts', blend: 'Between two sizes', seam: 'Seams', dart: 'Darts', pleat: 'Pleats', gather: 'Gathers and tiers',
  circle: 'Circle skirts', gore: 'Gores and godets', button: 'Buttons', hem: 'Hems', band: 'Bands and interfacing', lengthen: 'Lengthening',
  shoulder: 'Shoulders', cloth: 'Cloth to buy', bias: 'Bias binding', stretch: 'Stretch and elastic', sleeve: 'Sleeves', child: 'Children’s clothes',
  usual: 'Usual values', measure: 'Lengths and units',
};

const KINDS: Readonly<Record<ArgKind, string>> = {
  length: 'a length', area: 'an area', angle: 'an angle', number: 'a plain number', count: 'a whole number, 1 or more', percent: 'a percent',
  choice: 'one of these words', text: 'words', size: 'a size', chart: 'a size chart', unit: 'a unit of length', span: 'one or two figures', block: 'a block of cells', layout: 'the name of a kept layout',
};

const GIVES: Readonly<Record<SewingFunction['gives'], string>> = {
  length: 'Gives a length.', area: 'Gives an area.', angle: 'Gives an angle.', number: 'Gives a plain number.', percent: 'Gives a percent.',
  size: 'Gives a size.', text: 'Gives words.', figure: 'Gives a figure of the kind that went in.', span: 'Gives one figure, or two from least to most.',
};

function sewingCard(fn: SewingFunction): FunctionCard {
  const { name, topic, about, asks, rule, source, example, args, repeats, gives } = fn;
  return {
    name, trade: true, topic: TOPICS[topic], about, asks, rule, source, example, units: GIVES[gives], differs: '', repeats: repeats ? 1 : 0, needs: neededBy(example),
    args: args.map((arg: Arg) => ({
      name: arg.name, about: arg.about, kind: KINDS[arg.kind], optional: arg.usual !== undefined, ...(arg.choices && { choices: arg.choices }),
    })),
  };
}

/** What the engine's library calls the kinds of arguments; a figure may have a unit where the function takes one. */
const LIBRARY_KINDS: Readonly<Record<string, string>> = {
  INTEGER: 'a whole number', STRING: 'words', BOOLEAN: 'true or false', RANGE: 'a block of cells', COMPLEX: 'a complex number',
};

function standardCard(fn: StandardFunction, registry: Registry): FunctionCard {
  const policy = policyOf(fn.name);
  const kinds = registry.getMetadata(fn.name)?.parameters ?? [];
  const number = policy.does === 'refuses' ? 'a plain number' : 'a figure';
  const section = sectionOf(fn.name);
  return {
    name: fn.name, trade: false, topic: fn.topic, about: fn.about, asks: fn.asks, rule: '', example: fn.example, repeats: fn.repeats, needs: neededBy(fn.example),
    units: unitsOf(fn, policy),
    differs: DIFFERENCES.filter(({ functions }) => functions.includes(fn.name)).map(({ sentence }) => sentence).join(' '),
    source: section === undefined ? (ADDED_NAMES.includes(fn.name) ? 'common practice; worked out by this workbook' : 'HyperFormula 3.5.0, the open library that works formulas out here') : `OpenFormula (OASIS OpenDocument 1.4, part 4), section ${section}`,
    args: fn.args.map(({ name, about, optional }, i) => {
      const type = kinds[Math.min(i, kinds.length - 1)]?.argumentType;
      return { name, about, optional, kind: type === 'NUMBER' ? number : (type && LIBRARY_KINDS[type]) ?? '' };
    }),
  };
}

function unitsOf({ units }: StandardFunction, policy: Policy): string {
  if (units !== '') return units;
  if (policy.does !== 'passes') return PLAIN;
  switch (policy.plain) {
    case 'even': return 'The tests have no unit; what is given may have any, and keeps it.';
    case 'rest': return 'The first may hold figures with any unit, which keep it; the others are plain numbers.';
    default: return policy.plain.length > 0 ? 'The first has no unit; the others may have any, and keep it.' : 'Takes figures with any unit, and leaves it as it is.';
  }
}

const SAMPLE_NAMES = SAMPLES.map(({ name }) => name);

/** The samples that a formula names. */
function neededBy(formula: string): readonly Sample[] {
  if (!SAMPLE_NAMES.some((name) => formula.includes(name))) return [];
  const words = new Set(tokenize(formula, SAMPLE_NAMES).filter(({ kind }) => kind === 'name').map(({ text }) => text));
  return SAMPLES.filter(({ name }) => words.has(name));
}

/** A card for each function that a formula can call. @param registry as `functionTable` leaves it */
export function cardsFor(registry: Registry): readonly FunctionCard[] {
  const sewing = new Set(FUNCTIONS.map(({ name }) => name));
  const standard = STANDARD_FUNCTIONS.filter(({ name }) => registry.getFunction(name) !== undefined && !sewing.has(name));
  return [...FUNCTIONS.map(sewingCard), ...standard.map((fn) => standardCard(fn, registry))];
}
