/** Choosing a size: what she chose and typed, and what becomes of her wishes. */
import { html } from 'lit';
import { UNITS } from '../quantities/index.ts';
import type { SizeChoiceChange, SizeChoiceView } from '../panels/size-choice-view.ts';
import { newestOf } from '../people/index.ts';
import { knownLevel, type Style } from '../sewing/index.ts';
import { nameCalled, recordsOf, sameArea, sheetById, type Area } from '../workbook/index.ts';
import type { MorePanel, PanelHost } from './more-panels.ts';
import { areaInWords, nameOf } from './naming.ts';
import { measuresIn, pointingAt, readMeasureText } from './size-choice-cells.ts';
import { easeTable, type EaseTable } from './size-choice-ease.ts';
import { inTheWay, putSizesEdit, sizeArea } from './size-choice-sheet.ts';
import { NO_WISH, sizesFor, type Sized, type SizeWish } from './size-choice-view.ts';

/** Names that cells with measures usually have, by level. */
const CALLED = ['high bust', 'upper chest', 'bust', 'underbust', 'waist', 'high hip', 'hip'];

export class SizeChoice implements MorePanel {
  #wish: SizeWish = NO_WISH;
  #shipped: Parameters<typeof easeTable>[2] | null = null;
  /** Where it was put last. */
  #putAt: Area | null = null;
  #made: { readonly from: readonly unknown[]; readonly sized: Sized } | null = null;

  constructor(private readonly host: Pick<PanelHost, 'desk' | 'draw'>) {
    void import('./shipped.ts').then(({ shippedTemplate }) => {
      this.#shipped = shippedTemplate('usual-values');
      host.draw();
    });
  }

  /** Measures that the workbook has by name are taken, where nothing was typed yet. */
  opened(): void {
    const { desk } = this.host;
    const selected = nameOf(desk.book, desk.area);
    if (desk.book.names.some(({ name, kind }) => name === selected && kind === 'chart')) this.#wish = { ...this.#wish, chart: selected };
    const called = CALLED.filter((name) => nameCalled(desk.book, name)?.area && readMeasureText(desk.book, desk.results, `=${name}`, 'cm').length);
    const empty = called.filter((name) => this.#rowsAt(knownLevel(name)!).every((row) => (this.#wish.measures[row] ?? '') === ''));
    this.#takeTexts(empty.map((name) => [knownLevel(name)!, `=${name}`]));
  }

  render() {
    return html`<tt-size-choice .view=${this.view} @tt-size-choice=${(event: CustomEvent<SizeChoiceChange>) => { this.change(event.detail, event.target!); this.host.draw(); }}></tt-size-choice>`;
  }

  get #sized(): Sized {
    const { desk } = this.host;
    const { book, results } = desk;
    // The same while nothing that it is made from is another.
    const from = [book, results.revision, this.#wish, this.#shipped];
    if (!this.#made || from.some((each, i) => each !== this.#made!.from[i])) {
      const table: EaseTable | null = this.#shipped && easeTable(book, results, this.#shipped);
      this.#made = { from, sized: sizesFor({ book, results, wish: this.#wish, as: desk.showAs, table }) };
    }
    return this.#made.sized;
  }

  get view(): SizeChoiceView {
    const { desk } = this.host;
    const { book, results, sheet, area } = desk;
    const { view, put } = this.#sized;
    const target = put && { sheet: sheet.id, ...sizeArea(put, { row: area.top, col: area.left }) };
    const filled = target && inTheWay(sheet, target);
    const isThere = filled !== undefined && this.#putAt !== null && sameArea(target!, this.#putAt);
    const taken = isThere ? undefined : filled;
    const one = area.top === area.bottom && area.left === area.right;
    const lone = one && results.at(area.sheet, area.top, area.left);
    return {
      ...view,
      people: recordsOf(book, 'person').map(({ id, data }) => ({ id, name: data.name })),
      target: target ? areaInWords(book, target) : '',
      isThere,
      targetFault: taken ? `It would cover ${taken}, which is filled: select a cell with as much room to its right and below it.` : '',
      candidate: lone && lone.kind === 'quantity' && UNITS[lone.unit].dimension === 'length' ? areaInWords(book, area) : '',
      block: !one && measuresIn(results, area).size > 0 ? areaInWords(book, area) : '',
      readonly: desk.reading !== null,
    };
  }

  /** @param from asks the page to go to what was put in */
  change(change: SizeChoiceChange, from: EventTarget): void {
    const { desk } = this.host;
    const wish = this.#wish;
    switch (change.change) {
      case 'chart':
      case 'garment':
      case 'apart':
      case 'seams':
        this.#wish = { ...wish, [change.change]: change.value };
        break;
      case 'style':
        this.#wish = { ...wish, style: change.value as Style };
        break;
      case 'changeCost':
        this.#wish = { ...wish, change: change.value };
        break;
      case 'measure':
        this.#wish = { ...wish, measures: { ...wish.measures, [change.level]: change.value } };
        break;
      case 'down':
        this.#wish = { ...wish, downs: { ...wish.downs, [change.level]: change.value } };
        break;
      case 'ease': {
        const before = wish.ease[change.level] ?? { low: '', high: '' };
        this.#wish = { ...wish, ease: { ...wish.ease, [change.level]: { ...before, [change.end]: change.value } } };
        break;
      }
      case 'person':
        this.#takePerson(change.value);
        break;
      case 'take':
        this.#wish = { ...wish, measures: { ...wish.measures, [change.level]: pointingAt(desk.book, { sheet: desk.sheetId, row: desk.area.top, col: desk.area.left }) } };
        break;
      case 'take-block':
        this.#takeBlock();
        break;
      case 'put':
        this.#put(from);
    }
  }

  /** The rows of a level of the body: more than one where the chart has two waists, say. */
  #rowsAt(level: string): readonly string[] {
    return this.#sized.view.levels.map((row) => row.level).filter((row) => row === level || knownLevel(row) === level);
  }

  /** Where a level has more than one row, only she can say which is meant. */
  #takeTexts(texts: readonly (readonly [level: string, raw: string])[]): void {
    const rows = texts.flatMap(([level, raw]): [string, string][] => {
      const [row, other] = this.#rowsAt(level);
      return row !== undefined && other === undefined ? [[row, raw]] : [];
    });
    this.#wish = { ...this.#wish, measures: { ...this.#wish.measures, ...Object.fromEntries(rows) } };
  }

  #takeBlock(): void {
    const { desk } = this.host;
    this.#takeTexts([...measuresIn(desk.results, desk.area)].map(([level, cell]) => [level, pointingAt(desk.book, cell)]));
  }

  /** Her newest measures, as figures. */
  #takePerson(id: string): void {
    const person = recordsOf(this.host.desk.book, 'person').find((one) => one.id === id)?.data;
    if (!person) return;
    this.#takeTexts(newestOf(person).flatMap(({ of, raw }): [string, string][] => {
      const level = knownLevel(of);
      return level === undefined ? [] : [[level, raw]];
    }));
  }

  #put(from: EventTarget): void {
    const { desk } = this.host;
    const { put } = this.#sized;
    const { isThere, targetFault } = this.view;
    if (!put || isThere || targetFault !== '') return;
    const at = { sheet: desk.sheetId, row: desk.area.top, col: desk.area.left };
    const sheet = sheetById(desk.book, at.sheet)!;
    const area = { sheet: at.sheet, ...sizeArea(put, at) };
    if (!desk.do(putSizesEdit(put, at, sheet))) return;
    this.#putAt = area;
    // The page selects it, brings it into view and goes there.
    from.dispatchEvent(new CustomEvent('tt-go', { detail: { area }, bubbles: true, composed: true }));
    desk.say(`The sizes are in ${areaInWords(desk.book, area)}. Undo takes them out again.`);
  }
}

export const panel = (host: PanelHost): MorePanel => new SizeChoice(host);
