/** Copy, cut and paste of the selected cells through the browser's own clipboard events. */
import { fromClipboard, toHtml, toTsv } from './clipboard.ts';
import { send } from './events.ts';
import { areaOf, trimmed, type Ground } from './select.ts';
import type { CellArea, Selection, SheetView } from './view.ts';

export interface ClipboardHost extends HTMLElement {
  readonly view: SheetView;
  readonly selection: Selection;
  readonly ground: Ground;
  readonly editing: boolean;
  readonly readonly: boolean;
}

/** The cells' texts as shown. */
export function textsOf(view: SheetView, area: CellArea): string[][] {
  const table: string[][] = [];
  for (let row = area.top; row <= area.bottom; row++) {
    const line: string[] = [];
    for (let col = area.left; col <= area.right; col++) line.push(view.cell(row, col)?.text ?? '');
    table.push(line);
  }
  return table;
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
    const table = textsOf(host.view, area);
    const text = toTsv(table);
    const data = event.clipboardData;
    data?.setData('text/plain', text);
    data?.setData('text/html', toHtml(table));
    send(host, type, { area, text, data });
  }

  paste = (event: ClipboardEvent): void => {
    const { host } = this;
    if (host.editing) return;
    event.preventDefault();
    if (host.readonly) return;
    const data = event.clipboardData;
    // An empty cell is an empty text; a picture is none.
    if (!data?.types.includes('text/plain')) return;
    const text = data.getData('text/plain');
    send(host, 'tt-paste', { area: areaOf(host.selection), text, table: fromClipboard(text), data });
  };
}
