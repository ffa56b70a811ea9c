/** Copy, cut and paste: cells of one's own keep their formulas and looks; text from elsewhere comes in as typed. */
import { copyFrom, cutEdit, pasteEdit, pastedArea, type Area, type Clip } from '../workbook/index.ts';
import type { ClipDetail, PasteDetail } from '../grid/index.ts';
import type { Desk } from './desk.ts';
import { pasteTable } from './wishes.ts';

/** Past this a paste is surely not meant, and would only freeze the page. */
const MOST_CELLS = 500_000;

export class Clipboard {
  #clip: Clip | null = null;
  #text = '';
  #cut = false;

  listen(root: EventTarget, desk: Desk): void {
    const on = <T>(type: string, handle: (detail: T) => void) => root.addEventListener(type, (event) => handle((event as CustomEvent<T>).detail));
    on<ClipDetail>('tt-copy', ({ area, text }) => this.#take(desk, { sheet: desk.sheetId, ...area }, text, false));
    on<ClipDetail>('tt-cut', ({ area, text }) => this.#take(desk, { sheet: desk.sheetId, ...area }, text, true));
    on<PasteDetail>('tt-paste', ({ area, text, table }) => this.#paste(desk, { sheet: desk.sheetId, ...area }, text, table));
  }

  #take(desk: Desk, area: Area, text: string, cut: boolean): void {
    this.#clip = copyFrom(desk.book, area);
    // Programs in between may change how lines end.
    this.#text = withPlainLines(text);
    this.#cut = cut;
    desk.say(cut ? 'Cut: paste to move the cells.' : 'Copied.');
  }

  #paste(desk: Desk, area: Area, text: string, table: readonly (readonly string[])[]): void {
    const clip = this.#clip;
    if (clip && withPlainLines(text) === this.#text) {
      const edit = this.#cut
        ? cutEdit(clip, { sheet: area.sheet, row: area.top, col: area.left })
        : pasteEdit(clip, desk.book, area);
      if (desk.do(edit)) desk.selectArea(this.#cut ? pastedArea(clip, { ...area, bottom: area.top, right: area.left }) : pastedArea(clip, area));
      if (this.#cut) this.#clip = null;
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
