/** Copy, cut and paste: cells of one's own keep their formulas and looks; text from elsewhere comes in as typed. */
import { areaAt, copyFrom, cutEdit, pasteEdit, pastedArea, type Area, type Book } from '../workbook/index.ts';
import type { ClipDetail, PasteDetail } from '../grid/index.ts';
import { attempt } from './attempt.ts';
import type { Desk } from './desk.ts';
import { sayDone, unseen } from './out-of-sight.ts';
import { pasteTable } from './wishes.ts';

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
      const left = unseen(desk.sheet, area);
      if (cut) desk.say('Cut: paste to move the cells.');
      else desk.say(left === '' ? 'Copied.' : `Copied the cells that show, without ${left}.`);
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
    if (!taken || withPlainLines(text) !== this.#text) {
      pasteTable(desk, table, area);
      return;
    }
    const { sheet } = desk;
    const cut = this.#cut;
    const clip = copyFrom(taken.book, taken.area);
    const corner = { sheet: area.sheet, row: area.top, col: area.left };
    let where: Area | null = null;
    const done = attempt(desk, () => {
      const edit = cut ? cutEdit(clip, desk.book, corner) : pasteEdit(clip, desk.book, area);
      where = cut ? areaAt(clip.origin, corner) : pastedArea(clip, desk.book, area);
      return edit;
    });
    if (where) desk.selectArea(where);
    if (done && where && !cut) sayDone(desk, 'Pasted into the cells that show', unseen(sheet, where));
    if (done && cut) this.#taken = null;
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
