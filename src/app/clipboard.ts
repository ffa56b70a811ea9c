/** Copy, cut and paste: cells of one's own keep their formulas and looks; text from elsewhere comes in as typed. */
import { copyFrom, cutEdit, pasteEdit, pastedArea, type Area, type Book } from '../workbook/index.ts';
import type { ClipDetail, PasteDetail } from '../grid/index.ts';
import type { Desk } from './desk.ts';
import { pasteTable } from './wishes.ts';

/** Past this a paste is surely not meant, and would only freeze the page. */
const MOST_CELLS = 500_000;

export class Clipboard {
  /** Where the cells were taken, from the workbook as it was then: they are looked up only when they are pasted. */
  #taken: { readonly book: Book; readonly area: Area } | null = null;
  #text = '';
  #cut = false;
  /** The latest copy counts, even when an earlier one takes longer. */
  #turn = 0;

  listen(root: EventTarget, desk: Desk): void {
    const on = <T>(type: string, handle: (detail: T) => void) => root.addEventListener(type, (event) => handle((event as CustomEvent<T>).detail));
    on<ClipDetail>('tt-copy', ({ area, text }) => this.#take(desk, { sheet: desk.sheetId, ...area }, text, false));
    on<ClipDetail>('tt-cut', ({ area, text }) => this.#take(desk, { sheet: desk.sheetId, ...area }, text, true));
    on<PasteDetail>('tt-paste', ({ area, text, table }) => this.#paste(desk, { sheet: desk.sheetId, ...area }, text, table));
  }

  #take(desk: Desk, area: Area, text: string | Promise<string>, cut: boolean): void {
    const taken = { book: desk.book, area };
    const turn = ++this.#turn;
    const done = (whole: string): void => {
      if (turn !== this.#turn) return;
      this.#taken = taken;
      // Programs in between may change how lines end.
      this.#text = withPlainLines(whole);
      this.#cut = cut;
      desk.say(cut ? 'Cut: paste to move the cells.' : 'Copied.');
    };
    if (typeof text === 'string') {
      done(text);
      return;
    }
    desk.say('Copying…');
    text.then(done, (error: unknown) => desk.say(`Not copied. ${whyNotCopied(error)}`));
  }

  #paste(desk: Desk, area: Area, text: string, table: readonly (readonly string[])[]): void {
    const taken = this.#taken;
    if (taken && withPlainLines(text) === this.#text) {
      const clip = copyFrom(taken.book, taken.area);
      const edit = this.#cut
        ? cutEdit(clip, { sheet: area.sheet, row: area.top, col: area.left })
        : pasteEdit(clip, desk.book, area);
      if (desk.do(edit)) desk.selectArea(this.#cut ? pastedArea(clip, { ...area, bottom: area.top, right: area.left }) : pastedArea(clip, area));
      if (this.#cut) this.#taken = null;
      return;
    }
    const cells = table.reduce((sum, row) => sum + row.length, 0);
    if (cells > MOST_CELLS) {
      desk.say(`That is ${cells.toLocaleString('en')} cells; at most ${MOST_CELLS.toLocaleString('en')} can be pasted at once. Copy a smaller part.`);
      return;
    }
    pasteTable(desk, table, area);
    desk.selectArea({ ...area, bottom: area.top + table.length - 1, right: area.left + Math.max(1, ...table.map((row) => row.length)) - 1 });
  }
}

function withPlainLines(text: string): string {
  return text.replace(/\r\n?/g, '\n').replace(/\n$/, '');
}

function whyNotCopied(error: unknown): string {
  const refused = error instanceof DOMException && error.name === 'NotAllowedError';
  if (refused) return 'The browser does not let the page write so much to the clipboard. Copy a smaller part, or save the sheet as CSV.';
  return error instanceof Error ? error.message : String(error);
}
