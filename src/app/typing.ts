/**
 * Between the cells and what is kept of them: formulas are kept with decimal
 * points and typed and shown with the workbook's own sign. Where a comma can
 * mean two things she is asked; nothing that was typed is lost meanwhile.
 */
import { asKept, asShown, cellName, type Manner } from '../formula/index.ts';
import type { FunctionCard } from '../reckoning/index.ts';
import { cellAt, sheetById, type CellAddress } from '../workbook/index.ts';
import type { Desk } from './desk.ts';
import { summon } from './summon.ts';
import { typeInto } from './wishes.ts';

interface Host {
  readonly renderRoot: HTMLElement | DocumentFragment;
}

export class Typing {
  cards: readonly FunctionCard[] = [];
  #asked: { readonly cell: CellAddress; readonly typed: string; readonly oneNumber: string; readonly twoArguments: string } | null = null;

  constructor(private readonly host: Host, private readonly desk: () => Desk, private readonly back: () => void) {}

  /** What was typed in a cell, as it is shown. */
  shown(raw: string): string {
    return asShown(raw, this.#manner);
  }

  /** Types into a cell. False when it was refused. */
  type(cell: CellAddress, typed: string): boolean {
    const desk = this.desk();
    const sheet = sheetById(desk.book, cell.sheet);
    const before = (sheet && cellAt(sheet, cell.row, cell.col)?.raw) ?? '';
    if (typed === this.shown(before)) return true;
    const kept = asKept(typed, this.#manner);
    if ('formula' in kept) return typeInto(desk, cell, kept.formula);
    // Where nothing can be changed there is nothing to choose.
    if (desk.reading !== null) return typeInto(desk, cell, typed);
    // The question on another cell may still be on its way.
    this.#answer(null);
    this.#asked = { cell, typed, ...kept };
    const readings = {
      piece: kept.piece, place: `${sheet?.name ?? ''} ${cellName(cell.row, cell.col)}`,
      oneNumber: this.shown(kept.oneNumber), twoArguments: this.shown(kept.twoArguments),
    };
    // Without the question it is kept as text, as when none of the answers is chosen.
    summon(this.host, 'tt-two-readings', (panel) => panel.open(readings), () => this.#answer(null));
    return true;
  }

  listen(root: EventTarget): void {
    root.addEventListener('keydown', (event) => this.#sayReading(event as KeyboardEvent));
    root.addEventListener('tt-reading', (event) => {
      this.#answer((event as CustomEvent<{ choice: 'oneNumber' | 'twoArguments' | null }>).detail.choice);
      this.back();
    });
  }

  #answer(choice: 'oneNumber' | 'twoArguments' | null): void {
    const asked = this.#asked;
    this.#asked = null;
    if (!asked) return;
    if (choice) typeInto(this.desk(), asked.cell, asked[choice]);
    else if (typeInto(this.desk(), asked.cell, `'${asked.typed}`)) this.desk().say('Kept as text, as it was typed: take the ’ at its beginning off to make it a formula again.');
  }

  /** Where cells can only be read, a key that would type says why it does not. */
  #sayReading(event: KeyboardEvent): void {
    const desk = this.desk();
    const { key, ctrlKey, metaKey, altKey } = event;
    const types = (key.length === 1 && key !== ' ' && !ctrlKey && !metaKey && !altKey) || ['F2', 'Delete', 'Backspace'].includes(key);
    if (desk.reading === null || !types) return;
    const grid = (event.target as Element).matches('tt-grid');
    if (grid || event.composedPath()[0] instanceof HTMLTextAreaElement) desk.say(desk.readingSentence);
  }

  get #manner(): Manner {
    const { settings, names } = this.desk().book;
    return {
      mark: settings.decimalMark ?? '.', names: names.map(({ name }) => name),
      countOf: (name) => {
        const card = this.cards.find((each) => each.name === name);
        return card && { least: card.args.filter(({ optional }) => !optional).length, most: card.repeats > 0 ? Infinity : card.args.length };
      },
    };
  }
}
