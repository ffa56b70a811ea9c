/** All that the grid has in the document. The grid element itself holds the state and hands it in. */
import { html, nothing, type TemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import { repeat } from 'lit/directives/repeat.js';
import { cellName, isFormula } from '../formula/index.ts';
import type { CellEditor } from './cell-editor.ts';
import type { Geometry } from './geometry.ts';
import type { GridClipboard } from './grid-clipboard.ts';
import type { GridKeys } from './grid-keys.ts';
import { handleTemplates, handlesOf } from './handles.ts';
import type { GridMenu } from './menu.ts';
import { partTemplates, type Pane, type Part } from './overlay.ts';
import type { GridPointer } from './pointer.ts';
import { headTemplate, rowTemplate, type Across, type RowLook } from './rows.ts';
import type { Scroller } from './scroller.ts';
import { areaOf } from './select.ts';
import { howTo } from './spoken.ts';
import { GAP, type RowPlan } from './window.ts';
import type { Draft, Selection, SheetView } from './view.ts';

/** What the template is made of. */
export interface GridParts {
  readonly view: SheetView;
  readonly selection: Selection;
  readonly draft: Draft | null;
  readonly readonly: boolean;
  /** The last to touch it was a finger or a pen. */
  readonly touch: boolean;
  readonly geometry: Geometry;
  readonly across: Across;
  readonly plan: RowPlan;
  readonly outlines: readonly Part[];
  /** What is being typed, here or in the entry line. */
  readonly typed: string;
  readonly said: string;
  readonly editor: CellEditor;
  readonly keys: GridKeys;
  readonly pointer: GridPointer;
  readonly menu: GridMenu;
  readonly scroll: Scroller;
  readonly clipboard: GridClipboard;
  readonly blurred: (event: FocusEvent) => void;
}

export function gridTemplate(parts: GridParts): TemplateResult {
  const { view, geometry, across, editor, keys, pointer, menu, scroll } = parts;
  const { stay } = geometry;
  const selected = areaOf(parts.selection);
  return html`
    <div class="scroller" @scroll=${scroll.scrolled} @keydown=${keys.down} @contextmenu=${menu.contextMenu}
      @pointerdown=${pointer.down} @pointermove=${pointer.move} @pointerup=${pointer.up} @pointercancel=${pointer.up}
      @mousedown=${pointer.mouseDown} @click=${pointer.click} @dblclick=${pointer.doubleClick}>
      <div class="plane">
        <div role="grid" id="cells" aria-label=${view.name || 'Cells'} aria-rowcount=${view.rowCount + 1} aria-colcount=${view.colCount + 1}
          aria-multiselectable="true" aria-readonly=${parts.readonly ? 'true' : 'false'}>
          <div class="head ${stay.rows > 0 ? 'more' : ''}" role="none">
            <div class="over">${over(parts, 'corner')}</div>
            <div role="rowgroup">
              ${guard([view.id, titlesOf(parts), geometry, across, ...Object.values(selected)], () => headTemplate({ view, geometry, across, selected }))}
              ${stay.rows > 0 ? repeat(frozenRows(geometry), (row) => row, (row) => line(row, parts)) : nothing}
            </div>
            ${over(parts, 'top')}
          </div>
          <div role="rowgroup" class="body">${repeat(parts.plan.rows, (row) => row, (row) => line(row, parts))}</div>
        </div>
        ${over(parts, 'cells')}<div class="over">${over(parts, 'left')}</div>
        ${editorTemplate(parts)}
      </div>
    </div>
    <div class="threads" aria-hidden="true"></div>
    ${editor.core.helper()}
    <p class="hidden" id="how">${howTo(parts.readonly)}</p>
    <p class="hidden" role="status">${parts.said}</p>`;
}

/** All that the headings say, to tell whether they have to be drawn anew. */
function titlesOf({ view, across }: GridParts): string {
  return [...across.kept, ...across.tracks].map((track) => ('col' in track ? `${view.columnTitle?.(track.col) ?? ''}\n${view.filtered?.(track.col) ?? ''}` : '')).join('\n');
}

function frozenRows({ stay, rows }: Geometry): number[] {
  return Array.from({ length: stay.rows }, (_, row) => row).filter((row) => rows.shown.has(row));
}

/** One row; its template is made again only when something its look depends on changed. */
function line(row: number, { view, geometry, across, selection, draft }: GridParts): unknown {
  if (row === GAP) return html`<div class="gap-rows" role="none"></div>`;
  const selected = areaOf(selection);
  const chosen = row >= selected.top && row <= selected.bottom ? `${selected.left} ${selected.right}` : '';
  const drafted = draft?.row === row ? draft : null;
  const look: RowLook = { view, geometry, across, selected, draft: drafted };
  const state = view.rowState ? [view.id, ...view.rowState(row)] : [view];
  return guard([geometry, across, chosen, drafted, ...state], () => rowTemplate(row, look));
}

/** Outlines and handles of one pane. */
function over({ outlines, geometry, selection, touch, readonly, editor, typed }: GridParts, pane: Pane): TemplateResult {
  // A formula being typed takes cells by pointing: nothing may lie over them.
  const free = !readonly && !editor.open && typed === '';
  return html`${partTemplates(outlines, pane, geometry)}${free ? handleTemplates(handlesOf(areaOf(selection), geometry, touch), pane, touch) : nothing}`;
}

function editorTemplate({ view, editor, typed, readonly, clipboard, blurred }: GridParts): TemplateResult {
  const { open, place, state } = editor;
  return html`
    <div class="cell-editor ${open ? 'open' : ''} ${open && isFormula(typed) ? 'formula' : ''}">
      ${editor.core.underlay('')}
      <textarea class="editor-field" rows="1" spellcheck="false" autocomplete="off" autocapitalize="off" enterkeyhint="next"
        aria-label=${open ? `Editing ${cellName(place.row, place.col)}` : view.name || 'Cells'} aria-describedby="how"
        data-state=${state} ?readonly=${readonly}
        @beforeinput=${editor.beforeInput} @input=${editor.input}
        @compositionstart=${editor.compositionStart} @compositionend=${editor.compositionEnd}
        @keyup=${editor.caretMoved} @pointerup=${editor.caretMoved}
        @copy=${clipboard.copy} @cut=${clipboard.cut} @paste=${clipboard.paste} @blur=${blurred}></textarea>
    </div>`;
}
