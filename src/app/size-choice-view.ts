/** From what she chose and typed to what the panel shows: the sizes, why, what they leave, and the blends. Pure. */
import type { SizeAnswer, SizeBesideRow, SizeBlendRow, SizeChoiceView, SizeLevelRow } from '../panels/size-choice-view.ts';
import { blendedEdge, sizeOutline } from '../pictures/index.ts';
import { exactText, inBase, isFault, show, UNITS, type Quantity, type ShowAs, type UnitCode } from '../quantities/index.ts';
import type { Results } from '../reckoning/index.ts';
import {
  adviseSizes, COST_IN_WORDS, knownLevel, levelsOf, measuresAt, STYLES, USUAL_PREFERENCES,
  type Advice, type LevelAdvice, type Measured, type SizeChart, type SizeLeaves, type Style,
} from '../sewing/index.ts';
import { nameCalled, type Book } from '../workbook/index.ts';
import { chartOf, readMeasureText, type MeasureRead } from './size-choice-cells.ts';
import type { EaseTable } from './size-choice-ease.ts';
import type { PutLevel, PutWish } from './size-choice-sheet.ts';

/** What she chose and typed. Texts as they were typed, by level. */
export interface SizeWish {
  readonly chart: string;
  readonly garment: string;
  readonly style: Style;
  readonly measures: Readonly<Record<string, string>>;
  readonly ease: Readonly<Record<string, { readonly low: string; readonly high: string }>>;
  /** Distances down to the next level, by the upper one. */
  readonly downs: Readonly<Record<string, string>>;
  readonly change: string;
  readonly apart: string;
  readonly seams: string;
}

export const NO_WISH: SizeWish = { chart: '', garment: '', style: USUAL_PREFERENCES.style, measures: {}, ease: {}, downs: {}, change: '', apart: String(USUAL_PREFERENCES.apart), seams: '2' };

const STYLE_WORDS: Readonly<Record<Style, string>> = {
  fitted: 'Fitted: follows the body at every level', 'semi-fitted': 'Semi-fitted: easy at the waist', 'full skirt': 'Full skirt: the hip does not decide', knit: 'Knit: may be smaller than the body',
};

const HIGH_BUST = 'high bust';
const titled = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

type Shown = Pick<SizeChoiceView, 'charts' | 'chart' | 'styles' | 'style' | 'garments' | 'garment' | 'levels' | 'change' | 'changeFault' | 'apart' | 'seams' | 'cost' | 'answer' | 'sentence'>;

export interface Sized {
  readonly view: Shown;
  /** What goes into the sheet; undefined while there is no answer. */
  readonly put?: PutWish;
}

export interface Given {
  readonly book: Book;
  readonly results: Results;
  readonly wish: SizeWish;
  readonly as: ShowAs;
  readonly table: EaseTable | null;
}

interface Row {
  readonly level: string;
  readonly read: MeasureRead;
  readonly shown: SizeLevelRow;
  /** What is typed in the sheet for the ease wanted, and its figures in mm. */
  readonly ease?: { readonly low: string; readonly high: string; readonly reach: { readonly low: number; readonly high: number } };
}

const bareUnit = ({ system }: ShowAs): 'cm' | 'in' => (system === 'in' ? 'in' : 'cm');

export function sizesFor(given: Given): Sized {
  const { book, results, wish, as, table } = given;
  const charts = book.names.filter(({ kind, area }) => kind === 'chart' && area !== null).map(({ name }) => name);
  const chartName = charts.includes(wish.chart) ? wish.chart : charts[0] ?? '';
  const area = nameCalled(book, chartName)?.area;
  const chart = area ? chartOf(results, area) : undefined;
  const usable = chart !== undefined && !isFault(chart) ? chart : undefined;
  const finished = usable !== undefined && levelsOf(usable).some((level) => measuresAt(usable, level).finished);
  const garments = finished ? table?.garments ?? [] : [];
  const garment = garments.includes(wish.garment) ? wish.garment : garments[0] ?? '';
  const rows = usable ? levelsShown(usable).map((level) => rowFor(given, usable, level, garment)) : [];
  const change = wish.change.trim() === '' ? { length: inBase(USUAL_PREFERENCES.change, 'mm'), fault: '' } : readMeasureText(book, results, wish.change, bareUnit(as));
  const base: Omit<Shown, 'answer' | 'sentence'> = {
    charts, chart: chartName, styles: STYLES.map((style) => ({ style, words: STYLE_WORDS[style] })), style: wish.style, garments, garment,
    levels: rows.map(({ shown }) => shown), change: wish.change, changeFault: change.fault, apart: wish.apart, seams: wish.seams, cost: COST_IN_WORDS,
  };
  const nothing = (sentence: string): Sized => ({ view: { ...base, answer: null, sentence } });
  if (charts.length === 0) return nothing('There is no size chart in this workbook yet. Read one from a file, or select its cells and name them as a size chart.');
  if (chart === undefined) return nothing('');
  if (isFault(chart)) return nothing(chart.sentence);
  if (rows.length === 0) return nothing('This size chart has no girths by names such as bust, waist or hip.');
  const faulty = rows.find(({ shown }) => shown.fault !== '' || (shown.ease && shown.ease.fault !== ''));
  const typed = rows.flatMap(({ level, read, ease }): Measured[] => (read.length ? [{ name: level, girth: read.length.value, ...(ease && { ease: ease.reach }) }] : []));
  // A high bust by itself is no level where the chart has none.
  const hasBust = typed.some(({ name }) => knownLevel(name) === 'bust');
  const measured = typed.filter(({ name }) => knownLevel(name) !== HIGH_BUST || hasBust || levelsOf(chart).includes(name));
  if (measured.length === 0) return nothing(faulty ? '' : 'Type the measures, or take them from cells: then the sizes are shown here.');
  if (!change.length || change.length.value < 0) return nothing('');
  const preferences = { style: wish.style, change: change.length.value, apart: Number(wish.apart) };
  const unit = rows.find(({ read }) => read.length)?.read.length?.unit ?? 'cm';
  const say = sayer(unit, as);
  const advice = adviseSizes(chart, measured, preferences, say);
  if (isFault(advice)) return nothing(advice.sentence);
  const seams = Number(wish.seams);
  const downs = advice.blends.map(({ upper, usualDistance: usual }) => downFor(given, upper, usual, unit));
  return {
    view: { ...base, sentence: '', answer: answerFor(advice, downs, seams, unit, as, say) },
    put: putFor(chartName, chart, wish, wish.change.trim() === '' ? '1 cm' : typedText(wish.change, change.length), rows, advice, downs),
  };
}

/** The chart's levels, and the high bust where it can be set against the bust. */
function levelsShown(chart: SizeChart): readonly string[] {
  const levels = levelsOf(chart);
  return levels.includes('bust') && !levels.some((level) => knownLevel(level) === HIGH_BUST) ? [HIGH_BUST, ...levels] : levels;
}

function sayer(unit: UnitCode, as: ShowAs): (mm: number) => string {
  return (mm) => {
    const { main, also } = show(inBase(mm, unit), as);
    return also === undefined ? main : `${main} (${also})`;
  };
}

function rowFor({ book, results, wish, as, table }: Given, chart: SizeChart, level: string, garment: string): Row {
  const raw = wish.measures[level] ?? '';
  const read = readMeasureText(book, results, raw, bareUnit(as));
  const fault = read.length && read.length.value <= 0 ? 'A measure is more than 0.' : read.fault;
  const shown: SizeLevelRow = {
    level, label: titled(level), raw, fault, reads: read.length ? sayer(read.length.unit, as)(read.length.value) : '',
    hint: level === HIGH_BUST ? 'High under the arms, above the bust. It tells whether the bust is fuller than patterns are drawn for; leave it empty if you have not got it.' : '',
  };
  const good: MeasureRead = fault === '' ? read : { length: null, fault };
  if (measuresAt(chart, level).finished === undefined) return { level, read: good, shown };
  const typed = wish.ease[level] ?? { low: '', high: '' };
  const usual = table?.usual(garment, knownLevel(level) ?? level, wish.style);
  const [low, high] = [easeEnd(typed.low, usual?.low), easeEnd(typed.high, usual?.high)].map((text) => ({ text, read: readMeasureText(book, results, text, bareUnit(as)) })) as [EaseEnd, EaseEnd];
  const wrong = low.read.fault || high.read.fault || (low.read.length && high.read.length && high.read.length.value < low.read.length.value ? 'The most ease is less than the least: put the smaller first.' : '');
  const reach = wrong === '' && low.read.length ? { low: low.read.length.value, high: high.read.length?.value ?? Infinity } : undefined;
  const say = sayer(usual?.low.unit ?? 'cm', as);
  return {
    level, read: good,
    shown: { ...shown, ease: { ...typed, fault: wrong, usual: usual ? (usual.high ? `Usual: ${say(usual.low.value)} to ${say(usual.high.value)}; ${usual.source}.` : `Usual: at least ${say(usual.low.value)}; ${usual.source}.`) : '' } },
    ...(reach && { ease: { low: typedEnd(low), high: typedEnd(high), reach } }),
  };
}

interface EaseEnd {
  readonly text: string;
  readonly read: MeasureRead;
}

const typedEnd = ({ text, read }: EaseEnd): string => (read.length ? typedText(text, read.length) : '');

/** As she typed it, else the usual figure. */
function easeEnd(typed: string, usual: Quantity | undefined): string {
  if (typed.trim() !== '') return typed;
  return usual ? exactText(usual) : '';
}

interface Down {
  readonly raw: string;
  readonly mm: number;
  readonly usual: boolean;
  /** The usual distance as it is typed. */
  readonly usualRaw: string;
  readonly fault: string;
}

/** What is between two levels of which no usual distance is known. */
const UNKNOWN_DOWN = 100;

/** In inches a usual distance is a round one too. */
function roundIn(mm: number, unit: UnitCode): Quantity {
  return UNITS[unit].system === 'inch' ? inBase(Math.round(mm / 12.7) * 12.7, 'in') : inBase(mm, 'cm');
}

function downFor({ book, results, wish, as }: Given, level: string, usual: number = UNKNOWN_DOWN, unit: UnitCode): Down {
  const raw = wish.downs[level] ?? '';
  const read = readMeasureText(book, results, raw, bareUnit(as));
  const fault = read.length && read.length.value <= 0 ? 'A distance is more than 0.' : read.fault;
  const own = read.length && fault === '' ? read.length : undefined;
  const round = roundIn(usual, unit);
  return { raw: own ? typedText(raw, own) : raw, mm: (own ?? round).value, usual: own === undefined, usualRaw: exactText(round), fault };
}

function answerFor(advice: Advice, downs: readonly Down[], seams: number, unit: UnitCode, as: ShowAs, say: (mm: number) => string): SizeAnswer {
  const { levels, blends, bust, isEase } = advice;
  const different = [...new Set(levels.map(({ size }) => size.text))];
  const list = levels.map(({ name, size }) => `${size.text} at the ${name}`);
  const edge = different.length > 1 ? edgePicture(advice, downs, seams, unit, as) : undefined;
  return {
    sentence: different.length > 1 ? `Cut size ${list.slice(0, -1).join(', ')} and ${list.at(-1)}.` : `Cut size ${different[0]} at every level.`,
    levels: levels.map(({ name, size, why, pins }) => ({ label: titled(name), size: size.text, continued: size.beyond !== 0, why, pins })),
    beside: levels.map(besideRow(say, bust !== undefined && bust.basis < bust.bust)),
    bust: bust?.sentence ?? '',
    blends: blends.map((blend, i): SizeBlendRow => {
      const down = downs[i]!;
      const gap = (girth: number): string => say(girth / (2 * seams));
      return {
        level: blend.upper, label: `${titled(blend.upper)} to ${blend.lower}`, raw: down.raw, usual: down.usualRaw, fault: down.fault,
        sentence: blend.sizes === 0
          ? `Size ${blend.from.text} all the way.`
          : `From size ${blend.from.text} to size ${blend.to.text} over ${say(down.mm)}${down.usual ? ' (usual)' : ''}. At each seam edge their lines lie ${gap(blend.girthAbove)} apart at the ${blend.upper} and ${gap(blend.girthBelow)} at the ${blend.lower}.`,
      };
    }),
    outline: outlinePicture(levels, isEase, unit, as),
    ...(edge && { edge }),
  };
}

const besideRow = (say: (mm: number) => string, widened: boolean) => ({ name, smaller, chosen, larger, isEase }: LevelAdvice): SizeBesideRow => ({
  label: titled(name), what: widened && knownLevel(name) === 'bust' ? (isEase ? 'ease before the front is widened' : 'chart less body, before the front is widened') : isEase ? 'ease' : 'chart less body',
  sizes: [smaller, chosen, larger].map((one: SizeLeaves | undefined) => (one ? { size: one.size.text, continued: one.size.beyond !== 0, left: one.left > 0 ? `+${say(one.left)}` : say(one.left), under: isEase && one.left < 0 } : null)),
});

function outlinePicture(levels: readonly LevelAdvice[], isEase: boolean, unit: UnitCode, as: ShowAs): SizeAnswer['outline'] {
  return sizeOutline({
    levels: levels.map(({ name, body, size, chosen, smaller, larger }) => ({ name, body, size: size.text, girth: chosen.figure, left: chosen.left, ...(smaller && { smaller: smaller.figure }), ...(larger && { larger: larger.figure }) })),
    isEase, unit,
  }, as);
}

function edgePicture({ levels, lines }: Advice, downs: readonly Down[], seams: number, unit: UnitCode, as: ShowAs): SizeAnswer['edge'] {
  return blendedEdge({
    levels: levels.map(({ name, size }, i) => ({ name, size: lines.findIndex((line) => line.size.text === size.text), ...(downs[i] && { down: downs[i].mm, usual: downs[i].usual }) })),
    sizes: lines.map(({ size, girths }) => ({ name: size.text, girths })),
    seams, unit,
  }, as);
}

function putFor(chartName: string, chart: SizeChart, wish: SizeWish, change: string, rows: readonly Row[], { levels, blends, bust, isEase }: Advice, downs: readonly Down[]): PutWish {
  const rowOf = (level: string): Row | undefined => rows.find((row) => row.level === level);
  const typed = ({ shown, read }: Row): string => (read.length ? typedText(shown.raw, read.length) : '');
  const widened = bust !== undefined && bust.basis < bust.bust;
  const [body, high] = [measuresAt(chart, 'bust').body, measuresAt(chart, HIGH_BUST).body];
  const highRow = rows.find(({ level }) => knownLevel(level) === HIGH_BUST);
  const own = widened && bust.ofSize !== undefined && body !== undefined && high !== undefined;
  const figure = (measure: string): string => `SIZE.MEASURE(${chartName}, "${measure}", "${bust?.ofSize ?? ''}")`;
  return {
    chart: chartName, style: wish.style, change, apart: wish.apart, seams: wish.seams, isEase,
    levels: levels.map(({ name, measure, wanted }): PutLevel => {
      const ease = wanted && rowOf(name)?.ease;
      return { name, raw: typed(rowOf(name)!), measure, ...(ease && { ease }) };
    }),
    downs: blends.map((_, i) => ({ raw: downs[i]!.usual ? downs[i]!.usualRaw : downs[i]!.raw, usual: downs[i]!.usual })),
    ...(widened && highRow && body !== undefined && { bust: { raw: typed(highRow), measure: body, usual: own ? `${figure(body)} - ${figure(high)}` : '' } }),
  };
}

/** What is typed in a cell: as she typed it, with its unit where she left that out. */
function typedText(raw: string, read: Quantity): string {
  const text = raw.trim();
  return text.startsWith('=') || /[a-z"″'′]/i.test(text) ? text : `${text} ${read.unit}`;
}
