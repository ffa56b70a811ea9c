/**
 * What goes on paper: the dialog that asks, the pages that answer, and the page
 * of the browser while it prints. The printed pages stand in the document
 * beside the app, because rules for pages count only there.
 */
import type { PaperHead, PrintChoice, PrintOffer, PrintPanel, Printed, TicketPart, TicketPicture } from '../panels/index.ts';
import { MOST_RADIUS } from '../pictures/index.ts';
import { inBase, readQuantity, show, showText } from '../quantities/index.ts';
import { cellAt, type CellAddress, type Sheet } from '../workbook/index.ts';
import type { Desk } from './desk.ts';
import { pageRules } from './page-rules.ts';
import { keepChoice, keptChoice } from './print-choice.ts';
import { ROOM, printedSheet } from './printed-sheet.ts';
import { sheetView } from './sheet-view.ts';
import { cautionTexts, ticketOf, ticketParts } from './ticket.ts';
import { TICKET, ticketKeys, ticketRecord } from './ticket-choice.ts';
import { shoppingList } from './to-buy-list.ts';
import { shoppingPage } from './to-buy-text.ts';

export class PaperDesk {
  readonly #paper = document.createElement('tt-paper');
  readonly #panel: PrintPanel = document.createElement('tt-print');
  readonly #rules = new CSSStyleSheet();
  readonly #pictures = new Map<string, TicketPicture>();
  /** What the dialog asked to print, until it is printed. */
  #ordered: PrintChoice | null = null;
  /** Pages that a panel made, until they are printed. */
  #made: readonly Printed[] | null = null;

  constructor(private readonly desk: () => Desk) {
    document.adoptedStyleSheets.push(this.#rules);
    document.body.append(this.#panel, this.#paper);
    this.#panel.addEventListener('tt-print-choice', (event) => this.#chosen((event as CustomEvent<PrintChoice>).detail));
    this.#panel.addEventListener('tt-print-now', () => this.#print());
    this.#rules.replaceSync(pageRules('', null));
  }

  remove(): void {
    this.#paper.remove();
    this.#panel.remove();
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((each) => each !== this.#rules);
  }

  async open(what: 'sheet' | 'ticket' | 'list'): Promise<void> {
    await this.#choose({ ...keptChoice(this.desk().book.id), ...this.#ticketKeys(), what });
    await this.#panel.updateComplete;
    this.#panel.open();
  }

  /** Now, and without waiting. Not asked by the dialog it is the open sheet, on whatever paper the browser has. */
  beforePrint(): void {
    const { book, sheet, showAs } = this.desk();
    const choice = this.#ordered;
    const pages = this.#made ?? (choice ? this.#pages(choice) : [this.#sheet(sheet, ROOM.upright)]);
    const size = choice ? { paper: choice.paper, across: acrossOf(choice) } : this.#made && { paper: keptChoice(book.id).paper, across: false };
    this.#rules.replaceSync(pageRules(book.title, size));
    this.#paper.showNow(pages, showAs);
  }

  afterPrint(): void {
    this.#ordered = this.#made = null;
  }

  printMade(pages: readonly Printed[]): void {
    this.#made = pages;
    window.print();
  }

  #print(): void {
    this.#ordered = this.#panel.choice;
    this.#panel.close();
    window.print();
  }

  #parts(): readonly TicketPart[] {
    const { book, results, showAs } = this.desk();
    return ticketParts(book, results, showAs);
  }

  #ticketKeys(): Pick<PrintChoice, 'out' | 'pictures'> {
    const { book, results, showAs } = this.desk();
    return ticketKeys(book, this.#parts(), cautionTexts(book, results, showAs));
  }

  /** What goes on the ticket is an edit of the workbook; where nothing can be changed it holds for this once. */
  #chosen(choice: PrintChoice): void {
    const desk = this.desk();
    const before = this.#panel.choice;
    if (choice.what === 'ticket' && (choice.out !== before.out || choice.pictures !== before.pictures) && desk.reading === null) {
      desk.do({ do: 'setRecord', kind: 'ticket', id: TICKET, data: ticketRecord(desk.book, this.#parts(), choice) });
    }
    void this.#choose(choice);
  }

  async #choose(choice: PrintChoice): Promise<void> {
    const panel = this.#panel;
    const { book, sheet, showAs } = this.desk();
    panel.choice = choice;
    panel.as = showAs;
    panel.offer = { sheet: sheet.name, parts: choice.what === 'ticket' ? this.#parts() : [], radii: choice.what === 'curve' ? this.#radii() : [] };
    if (choice.what === 'curve' && choice.radius === '' && panel.offer.radii[0]) {
      const [{ raw, label }] = panel.offer.radii as [PrintOffer['radii'][number]];
      await this.#choose({ ...choice, radius: raw, label });
      return;
    }
    keepChoice(book.id, choice);
    await this.#drawPictures(choice);
    // Another choice was made meanwhile.
    if (panel.choice !== choice) return;
    panel.sentence = this.#fault(choice);
    panel.pages = panel.sentence ? [] : this.#pages(choice);
  }

  #pages(choice: PrintChoice): Printed[] {
    const { book, sheet, results, showAs } = this.desk();
    const room = acrossOf(choice) ? ROOM.across : ROOM.upright;
    switch (choice.what) {
      case 'sheet': return [this.#sheet(sheet, room)];
      case 'book': return book.sheets.map((each) => this.#sheet(each, room));
      case 'ticket': {
        const pictures = choice.pictures.flatMap((key) => (choice.out.includes(key) ? [] : this.#pictures.get(key) ?? []));
        return [ticketOf(book, results, { out: new Set(choice.out), pictures }, showAs, this.#head)];
      }
      case 'list': return [shoppingPage(shoppingList(book, results, showAs), this.#head)];
      case 'curve': {
        const reading = readQuantity(choice.radius);
        if (reading.kind !== 'quantity') return [];
        const { main, also } = show(reading.quantity, { ...showAs, system: 'both' });
        return [{ what: 'curve', ...this.#head, label: choice.label || 'Curve', radius: reading.quantity.value, shown: also ? `${main} (${also})` : main }];
      }
    }
  }

  #sheet(sheet: Sheet, room: number): Printed {
    const { results, showAs, waiting } = this.desk();
    return printedSheet(sheet, sheetView(sheet, results, showAs, waiting), this.#head, room);
  }

  get #head(): PaperHead {
    const { title, person } = this.desk().book;
    return { title, person, date: new Date().toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' }) };
  }

  #fault({ what, radius }: PrintChoice): string {
    if (what !== 'curve') return '';
    const reading = readQuantity(radius);
    const length = reading.kind === 'quantity' && reading.quantity.dimension === 'length' ? reading.quantity.value : null;
    if (length === null) return radius === '' ? 'Type a radius with its unit, such as 12.4 cm.' : `“${radius}” is not a length. Type it with its unit, such as 12.4 cm or 4 7/8 in.`;
    if (!(length > 0)) return 'A curve has a radius above 0.';
    return length > MOST_RADIUS ? `A radius of ${radius} would take more pages than can be joined well; the most is ${MOST_RADIUS / 10} cm. Mark it on the cloth with a tape from the centre.` : '';
  }

  /** Radii of circles that the workbook has worked out. */
  #radii(): PrintOffer['radii'] {
    const { book, results, showAs } = this.desk();
    return this.#parts().flatMap(({ rows }) => rows.flatMap(({ label, pictured, figures }) => {
      if (!pictured) return [];
      const sheet = book.sheets.find(({ id }) => id === pictured.sheet);
      const raw = (sheet && cellAt(sheet, pictured.row, pictured.col)?.raw) ?? '';
      const result = results.at(pictured.sheet, pictured.row, pictured.col);
      if (figures.length === 0 || result.kind !== 'quantity' || !/^=\s*CIRCLE\.(RADIUS|OUTER)\s*\(/i.test(raw) || result.value > MOST_RADIUS) return [];
      return [{ label: `${sheet!.name}, ${label}`, raw: showText(inBase(result.value, result.unit), { ...showAs, system: showAs.system === 'both' ? 'own' : showAs.system, decimals: undefined }) }];
    }));
  }

  /** The worker tells what went into each picture. */
  async #drawPictures({ what, pictures }: PrintChoice): Promise<void> {
    const { engine } = this.desk();
    if (what !== 'ticket' || pictures.length === 0) return;
    const rows = new Map(this.#parts().flatMap((part) => part.rows.map((row) => [row.key, row] as const)));
    for (const key of pictures) {
      const row = rows.get(key);
      const cell: CellAddress | null = row?.pictured ?? null;
      const working = cell && engine && await engine.working(cell).catch(() => null);
      if (row && working?.call) this.#pictures.set(key, { label: row.label, call: working.call, result: working.result });
      else this.#pictures.delete(key);
    }
  }
}

const acrossOf = ({ what, across }: PrintChoice): boolean => across && (what === 'sheet' || what === 'book');
