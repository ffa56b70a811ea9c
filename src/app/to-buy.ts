/** The panel “To buy”: the list gathered over all sheets, the selected cell put on it, things ticked off. */
import { html } from 'lit';
import { cellName } from '../formula/index.ts';
import { shownResult, type Candidate, type PutWish, type ShoppingList, type Unlisted } from '../panels/index.ts';
import { UNITS } from '../quantities/index.ts';
import { writeCsv } from '../tables/index.ts';
import { EditRefused, cellAt, type CellAddress } from '../workbook/index.ts';
import type { Desk } from './desk.ts';
import type { MorePanel, PanelHost } from './more-panels.ts';
import { rowLabel } from './places.ts';
import { fileName, saveFile } from './save-file.ts';
import { showAsFor } from './sheet-view.ts';
import { shippedTemplate } from './shipped.ts';
import { inOtherSystem } from './ticket.ts';
import { tickEdit } from './ticks.ts';
import { figuresToTick, shoppingList } from './to-buy-list.ts';
import { isOnList, putOnList, type Wish } from './to-buy-put.ts';
import { buyTables, fold, listBlocks } from './to-buy-tables.ts';
import { shoppingTable, shoppingText } from './to-buy-text.ts';

export function panel(host: PanelHost): MorePanel {
  return new ToBuy(host);
}

class ToBuy implements MorePanel {
  #sentence = '';
  /** The list as it was last gathered, and of what. */
  #of: readonly unknown[] = [];
  #list: ShoppingList = { items: [], unlisted: [], total: '', unpriced: 0 };

  constructor(private readonly host: PanelHost) {}

  opened(): void {
    this.#sentence = '';
  }

  render() {
    const { desk } = this.host;
    const candidate = candidateOf(desk);
    return html`<tt-to-buy .list=${this.#gathered} .candidate=${candidate} .things=${thingsOf(desk)} .sentence=${this.#sentence} ?readonly=${desk.reading !== null}
      @tt-put=${(event: CustomEvent<PutWish>) => this.#put(event.detail)}
      @tt-list-row=${(event: CustomEvent<Unlisted>) => this.#addRow(event.detail)}
      @tt-bought=${(event: CustomEvent<{ id: string; bought: boolean }>) => this.#tick(event.detail)}
      @tt-copy-list=${() => void this.#copy()}
      @tt-save-list=${(event: CustomEvent<{ as: 'text' | 'csv' }>) => this.#save(event.detail.as)}></tt-to-buy>`;
  }

  get #gathered() {
    const { book, results, showAs } = this.host.desk;
    const of = [book, results.revision, book.settings];
    if (of.some((each, at) => each !== this.#of[at])) {
      this.#of = of;
      this.#list = shoppingList(book, results, showAs);
    }
    return this.#list;
  }

  #put({ what, purpose, width }: PutWish): void {
    const { desk } = this.host;
    const { row, col } = desk.selection.focus;
    const result = desk.results.at(desk.sheetId, row, col);
    if (result.kind !== 'quantity') return;
    this.#do({ what, purpose, width, ...soldBy(desk, UNITS[result.unit].dimension === 'length') }, { sheet: desk.sheetId, row, col });
  }

  #addRow({ what, area }: Unlisted): void {
    const { desk } = this.host;
    const result = desk.results.at(area.sheet, area.top, area.left);
    this.#do({ what, purpose: '', width: '', ...soldBy(desk, result.kind !== 'quantity' || UNITS[result.unit].dimension === 'length') }, null);
  }

  #do(wish: Wish, cell: CellAddress | null): void {
    const { desk } = this.host;
    try {
      const { edit, sheet } = putOnList(desk.book, cell, wish, () => shippedTemplate('cloth-to-buy'));
      if (desk.do(edit)) this.#say(`${wish.what} is on the list in ${desk.book.sheets.find(({ id }) => id === sheet)?.name ?? ''}. Fill in its shrinkage, price and step there. It can be undone.`);
      else this.#say(desk.said);
    } catch (error) {
      if (!(error instanceof EditRefused)) throw error;
      this.#say(error.sentence);
    }
  }

  #tick({ id, bought }: { readonly id: string; readonly bought: boolean }): void {
    const { desk } = this.host;
    const item = this.#gathered.items.find((each) => each.id === id);
    if (!item) return;
    this.#sentence = '';
    const changes = figuresToTick(item, desk.results).map(({ cell, now }) => ({ cell, now: bought ? now : null }));
    if (!desk.do(tickEdit(desk.book, 'bought', changes))) this.#say(desk.said);
  }

  async #copy(): Promise<void> {
    try {
      await navigator.clipboard.writeText(shoppingText(this.#gathered, this.host.desk.book.title));
      this.#say('The list is copied.');
    } catch {
      this.#say('The browser does not allow copying here. Save the list as text instead.');
    }
  }

  #save(as: 'text' | 'csv'): void {
    const { title } = this.host.desk.book;
    if (as === 'text') saveFile(fileName(`${title} to buy`, 'txt'), new Blob([`${shoppingText(this.#gathered, title)}\n`], { type: 'text/plain;charset=utf-8' }));
    else {
      const { text } = writeCsv(shoppingTable(this.#gathered), { numbers: 'shown', unit: 'cells', separator: ',', decimalMark: '.', mark: true, show: this.host.desk.showAs });
      saveFile(fileName(`${title} to buy`, 'csv'), new Blob([text], { type: 'text/csv;charset=utf-8' }));
    }
    this.#say('The list is saved among the downloads.');
  }

  #say(sentence: string): void {
    this.#sentence = sentence;
    this.host.draw();
  }
}

/** By the system that she works in: a tenth of a metre, or an eighth of a yard. */
function soldBy({ book }: Desk, length: boolean): Pick<Wish, 'by' | 'step' | 'unit'> {
  const inches = book.settings.show === 'in';
  return length ? { by: 'length', step: inches ? '1/8 yd' : '10 cm', unit: inches ? 'yd' : 'm' } : { by: 'number', step: '1', unit: 'm' };
}

/** What lists ask for, each once. */
function thingsOf({ book }: Desk): readonly string[] {
  const things = [
    ...listBlocks(book, 'needed').flatMap(({ sheet, rows, area }) => rows.map((row) => cellAt(sheet, row, area.left)?.raw ?? '')),
    ...buyTables(book).flatMap(({ sheet, rows, what }) => rows.map((row) => cellAt(sheet, row, what)?.raw ?? '')),
  ];
  return [...new Map(things.map((thing) => [fold(thing), thing])).values()];
}

function candidateOf(desk: Desk): Candidate | null {
  const { book, sheet, results, showAs, selection: { focus: { row, col } } } = desk;
  const result = results.at(sheet.id, row, col);
  const dimension = result.kind === 'quantity' ? UNITS[result.unit].dimension : null;
  if (result.kind !== 'quantity' || result.unit === '%' || (dimension !== 'length' && dimension !== 'number') || result.value < 0) return null;
  // What stands in the list itself is on it.
  if (buyTables(book).some((table) => table.sheet === sheet && row > table.top && row < table.end)) return null;
  if ([...listBlocks(book, 'needed'), ...listBlocks(book, 'there is')].some(({ area }) => area.sheet === sheet.id && row >= area.top && row <= area.bottom)) return null;
  const cell = cellAt(sheet, row, col);
  const label = rowLabel(sheet, row, col);
  const also = inOtherSystem(result, cell, showAs);
  return {
    place: `${label === '' ? '' : `${label}, `}${sheet.name} ${cellName(row, col)}`,
    figure: { main: shownResult(result, showAsFor(cell, showAs)).main, ...(also !== undefined && { also }) },
    what: probably(label, sheet.name, thingsOf(desk)),
    purpose: sheet.name,
    wide: dimension === 'length',
    listed: isOnList(book, { sheet: sheet.id, row, col }),
  };
}

/** The thing whose name begins the row's words or the sheet's, else the main cloth for what speaks of cloth, else the row's own words. */
function probably(label: string, sheet: string, things: readonly string[]): string {
  const words = [label, sheet].map(fold);
  for (const text of words) {
    const named = things.find((thing) => thing !== '' && text.startsWith(fold(thing)));
    if (named !== undefined) return named;
  }
  const main = things.find((thing) => fold(thing) === 'main cloth');
  return main !== undefined && words[0]!.startsWith('cloth') ? main : label || sheet;
}
