/**
 * Copy, cut and paste of the selected cells through the browser's own clipboard
 * events. What is large is written a little later: its text is put together in
 * slices, so that the page never stands still, and promised to the clipboard;
 * as text only, because browsers read promised HTML through, all at once.
 */
import { bestTable } from './clip-html.ts';
import { toHtml, toTsv } from './clipboard.ts';
import { send } from './events.ts';
import { areaOf, trimmed, type Ground } from './select.ts';
import type { Shown } from './shown.ts';
import { inSlices } from './slices.ts';
import type { CellArea, Selection, SheetView } from './view.ts';

export interface ClipboardHost extends HTMLElement {
  readonly view: SheetView;
  readonly selection: Selection;
  readonly ground: Ground;
  readonly editing: boolean;
  readonly readonly: boolean;
}

/** So many cells are put together within the event. */
const AT_ONCE = 4_000;
/** The sheet may change while it is copied; then it is begun anew, but not for ever. */
const TRIES = 5;

function rowTexts(view: SheetView, row: number, { left, right }: CellArea, cols: Shown): string[] {
  const line: string[] = [];
  for (let col = left; col <= right; col++) if (cols.has(col)) line.push(view.cell(row, col)?.text ?? '');
  return line;
}

/** The rows of a block that show. */
function rowsOf({ top, bottom }: CellArea, { rows }: Ground): number[] {
  const shown: number[] = [];
  for (let row = top; row <= bottom; row++) if (rows.has(row)) shown.push(row);
  return shown;
}

/** The cells' texts as shown, of the rows and columns that show. */
export function textsOf(view: SheetView, area: CellArea, ground: Ground): string[][] {
  return rowsOf(area, ground).map((row) => rowTexts(view, row, area, ground.cols));
}

/** All of one view: a sheet that changes meanwhile is read anew. */
async function textInSlices(host: ClipboardHost, area: CellArea): Promise<string> {
  const sheet = host.view.id;
  for (let tries = 0; tries < TRIES && host.view.id === sheet; tries++) {
    const { view, ground } = host;
    const lines: string[] = [];
    const whole = await inSlices(area.bottom - area.top + 1, (at) => {
      if (host.view !== view) return false;
      if (ground.rows.has(area.top + at)) lines.push(toTsv([rowTexts(view, area.top + at, area, ground.cols)]));
      return true;
    });
    if (whole) return lines.join('\n');
  }
  throw new Error('The sheet changed while it was being copied. Copy it again.');
}

export class GridClipboard {
  constructor(private readonly host: ClipboardHost) {}

  copy = (event: ClipboardEvent): void => this.#give(event, 'tt-copy');

  cut = (event: ClipboardEvent): void => {
    if (!this.host.readonly) this.#give(event, 'tt-cut');
    else if (!this.host.editing) this.#give(event, 'tt-copy');
  };

  #give(event: ClipboardEvent, type: 'tt-copy' | 'tt-cut'): void {
    const { host } = this;
    if (host.editing) return;
    event.preventDefault();
    const area = trimmed(areaOf(host.selection), host.ground);
    const size = (area.bottom - area.top + 1) * (area.right - area.left + 1);
    const data = event.clipboardData;
    if (size > AT_ONCE && canPromise()) {
      send(host, type, { area, text: promised(host, area), data });
      return;
    }
    const table = textsOf(host.view, area, host.ground);
    const text = toTsv(table);
    data?.setData('text/plain', text);
    data?.setData('text/html', toHtml(table));
    send(host, type, { area, text, data });
  }

  paste = (event: ClipboardEvent): void => {
    if (this.host.editing) return;
    event.preventDefault();
    const data = event.clipboardData;
    // An empty cell is an empty text; a picture is none.
    const text = data?.types.includes('text/plain') ? data.getData('text/plain') : null;
    this.take(text, data?.getData('text/html') ?? '');
  };

  /** Asks for cells from the clipboard to be put in; false when there are none in it, or nothing may be changed. */
  take(text: string | null, html: string): boolean {
    const { host } = this;
    const table = host.readonly ? null : bestTable(text, html);
    return table !== null && send(host, 'tt-paste', { area: areaOf(host.selection), text: text ?? '', table });
  }
}

/** Missing where the page is not served safely, as on a home network. */
const canPromise = (): boolean => 'clipboard' in navigator && typeof ClipboardItem === 'function';

/** Promises the cells to the clipboard; gives their text once they are there. */
async function promised(host: ClipboardHost, area: CellArea): Promise<string> {
  const whole = textInSlices(host, area);
  // Told of by what follows, even where the browser refuses the promise first.
  whole.catch(() => undefined);
  await navigator.clipboard.write([new ClipboardItem({ 'text/plain': whole.then((text) => new Blob([text], { type: 'text/plain' })) })]);
  return whole;
}
