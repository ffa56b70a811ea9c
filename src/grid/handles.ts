/**
 * What can be taken hold of at the selected block: a needle with its spool,
 * to fill the cells beside it, and for fingers two buttons, to move its
 * corners. Commands and keys do the same, so nothing here is read aloud.
 */
import { html, type TemplateResult } from 'lit';
import type { Geometry } from './geometry.ts';
import { paneOf, type Pane } from './overlay.ts';
import { placed } from './placed.ts';
import type { CellArea } from './view.ts';

export type HandleKind = 'fill' | 'start' | 'end';

interface Handle {
  readonly kind: HandleKind;
  readonly pane: Pane;
  /** Where the middle of what is seen lies on the plane. */
  readonly x: number;
  readonly y: number;
}

/** Half of what can be hit: 24 px for a mouse, 36 px for a finger. */
const REACH = { mouse: 12, touch: 18 };

export function handlesOf(area: CellArea, geometry: Geometry, touch: boolean): Handle[] {
  const box = geometry.box(area);
  const [right, bottom] = [box.left + box.width, box.top + box.height];
  const last = paneOf({ row: area.bottom, col: area.right }, geometry.stay);
  if (!touch) return [{ kind: 'fill', pane: last, x: right + 5, y: bottom + 5 }];
  return [
    { kind: 'start', pane: paneOf({ row: area.top, col: area.left }, geometry.stay), x: box.left, y: box.top },
    { kind: 'end', pane: last, x: right, y: bottom },
    // Beside the end button, never over the cells themselves.
    { kind: 'fill', pane: paneOf({ row: area.bottom, col: area.left }, geometry.stay), x: box.left + 26, y: bottom + 20 },
  ];
}

export function handleTemplates(handles: readonly Handle[], pane: Pane, touch: boolean): TemplateResult[] {
  const reach = touch ? REACH.touch : REACH.mouse;
  return handles.filter((handle) => handle.pane === pane).map(({ kind, x, y }) => html`
    <div class="handle ${kind}" data-handle=${kind} aria-hidden="true" title=${kind === 'fill' ? 'Drag to fill the cells beside' : 'Drag to select more or less'}
      ${placed({ left: x - reach + 1, top: y - reach + 1, width: 2 * reach - 1, height: 2 * reach - 1 })}>${kind === 'fill' ? spool : button}</div>`);
}

const spool = html`<svg viewBox="0 0 18 18" width="21" height="21">
  <g class="spool"><path class="wood" d="M1.5 1h9v2.6h-9zM1.5 14.4h9V17h-9z" /><path class="wound" d="M2.6 3.6h6.8v10.8H2.6z" />
  <path class="turns" d="M2.6 6.2l6.8 1.4M2.6 8.6l6.8 1.4M2.6 11l6.8 1.4" /><path class="needle" d="M9.4 12.6c3 1.6 5-1 3.6-3.4M16.8 1.2L12.6 16.6" /></g></svg>`;

const button = html`<svg viewBox="0 0 18 18" width="18" height="18">
  <circle class="wood" cx="9" cy="9" r="7.5" /><path class="holes" d="M7 6.2v1.6M11 6.2v1.6M7 10.2v1.6M11 10.2v1.6" /></svg>`;

/** The handle that an event is on. */
export function handleOf(event: Event): HandleKind | null {
  const handle = (event.composedPath()[0] as Element).closest?.<HTMLElement>('.handle');
  return (handle?.dataset['handle'] as HandleKind | undefined) ?? null;
}
