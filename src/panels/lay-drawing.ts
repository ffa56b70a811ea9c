import { LitElement, css, html, nothing, svg, type PropertyValues, type SVGTemplateResult, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { controls } from '../look/index.ts';
import { RULER, layPicture, layRuler, type DrawnLay, type DrawnPiece } from '../pictures/index.ts';
import type { ShowAs } from '../quantities/index.ts';
import { layMark, layPatterns, layPictureStyles, layPiece, layRulerMarks } from './lay-picture.ts';

const TEXT = 11;
/** Around the cloth, for what is said of its edges. */
const MARGIN = 20;
const MOST_ZOOM = 40;
/** A pointer that goes less far chooses and does not move. */
const STILL = 4;
/** How far an arrow key moves a piece, in mm: by itself, and with Shift. */
const STEPS = { cm: [10, 1], in: [25.4 / 2, 25.4 / 16] } as const;

const ARROWS: Readonly<Record<string, readonly [along: number, across: number]>> = { ArrowRight: [1, 0], ArrowLeft: [-1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };

interface Drag {
  readonly pointer: number;
  readonly id: number | null;
  x: number;
  y: number;
  moving: boolean;
}

/**
 * A layout to scale, to be looked at closely and changed by hand. Says
 * `tt-lay-select` {id}, `tt-lay-begin`, `tt-lay-move` {id, by: mm along and
 * across}, `tt-lay-end`, `tt-lay-turn` {id}, `tt-lay-undo`.
 */
@customElement('tt-lay-drawing')
export class LayDrawing extends LitElement {
  static override styles = [controls, layPictureStyles, css`
    :host { display: grid; grid-template-rows: auto minmax(0, 1fr); gap: var(--gap-2); min-height: 0; min-width: 0; }
    .tools { display: flex; flex-wrap: wrap; gap: var(--gap-1); align-items: center; }
    .tools .soft { margin-left: auto; }
    .scroll { overflow: auto; border: 1px solid var(--line); border-radius: var(--round); background: var(--paper); min-height: 220px; touch-action: pan-x pan-y; cursor: grab; }
    .scroll.dragging { cursor: grabbing; }
    .sheet { display: grid; grid-template-columns: max-content max-content max-content; width: max-content; }
    svg { display: block; }
    .ruler { background: var(--tape); position: sticky; z-index: 1; }
    .top { top: 0; grid-area: 1 / 2; }
    .start { left: 0; grid-area: 2 / 1; }
    .end { right: 0; grid-area: 2 / 3; }
    .foot { bottom: 0; grid-area: 3 / 2; }
    .corner { background: var(--tape); position: sticky; top: 0; left: 0; z-index: 2; grid-area: 1 / 1; font-size: 10px; color: var(--tape-ink); display: grid; place-items: center; }
    .cloth { grid-area: 2 / 2; }
    .cloth g.piece:focus-visible { outline: none; }
    .movable .piece { cursor: move; }
    /* Above the others, though its place in the document stays, which the keys go by. */
    .said { pointer-events: none; }
    .lay .chosen { stroke: var(--chalk); stroke-width: 3; pointer-events: none; }
    .piece.selected { touch-action: none; }
    .cloth .piece:focus-visible .lay-piece.lay-piece { stroke: var(--chalk); stroke-width: 3.5; fill: var(--chalk-wash); }
  `];

  @property({ attribute: false }) lay: DrawnLay | null = null;
  @property({ attribute: false }) as: ShowAs = { system: 'own', inchStep: 8 };
  /** How each piece lies, in words. */
  @property({ attribute: false }) spoken: readonly string[] = [];
  @property({ type: Boolean }) movable = false;
  @property({ type: Boolean }) canUndo = false;
  /** The id of a piece that may be turned has `true`. */
  @property({ attribute: false }) turns: readonly boolean[] = [];
  @state() private selected: number | null = null;
  @state() private zoom = 1;
  @state() private room = { width: 600, height: 400 };
  @query('.scroll') private scroller!: HTMLElement;

  #drag: Drag | null = null;
  #pinch: { apart: number; zoom: number } | null = null;
  readonly #resized = new ResizeObserver(() => this.#measure());

  override connectedCallback(): void {
    super.connectedCallback();
    void this.updateComplete.then(() => this.#resized.observe(this.scroller));
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#resized.disconnect();
  }

  override render(): TemplateResult {
    const { lay, as } = this;
    const unit = as.system === 'in' ? 'in' : 'cm', other = unit === 'in' ? 'cm' : 'in';
    const size = { scale: this.#scale, text: TEXT };
    const selected = this.movable && lay?.pieces.some(({ id }) => id === this.selected) ? this.selected : null;
    return html`
      <div class="tools" role="toolbar" aria-label="The drawing">
        <button aria-label="Closer" title="Closer (+)" @click=${() => this.#zoomBy(1.4)}>+</button>
        <button aria-label="Farther" title="Farther (−)" ?disabled=${this.zoom <= 1} @click=${() => this.#zoomBy(1 / 1.4)}>−</button>
        <button title="All of it (0)" ?disabled=${this.zoom === 1} @click=${this.#fit}>All of it</button>
        ${this.movable ? html`
          <button ?disabled=${selected === null || this.turns[selected] !== true} title="Turn the chosen piece (R)" @click=${() => this.#say('tt-lay-turn', { id: selected })}>Turn the piece</button>
          <button ?disabled=${!this.canUndo} @click=${() => this.#say('tt-lay-undo', {})}>Undo the move</button>` : nothing}
        <span class="soft">${!this.movable ? nothing : unit === 'cm' ? 'Drag a piece, or choose one with Tab and move it with the arrows: 1 cm, with Shift 1 mm; R turns it.'
          : 'Drag a piece, or choose one with Tab and move it with the arrows: ½ in, with Shift 1/16 in; R turns it.'}</span>
      </div>
      <div class="scroll ${this.movable ? 'movable' : ''}" tabindex="0" role="group" aria-label="The layout, to scale" @keydown=${this.#key}
        @pointerdown=${this.#down} @pointermove=${this.#moved} @pointerup=${this.#up} @pointercancel=${this.#up} @wheel=${{ handleEvent: this.#wheel, passive: false }}
        @touchstart=${{ handleEvent: this.#touch, passive: false }} @touchmove=${{ handleEvent: this.#touch, passive: false }} @touchend=${() => { this.#pinch = null; }}>
        ${lay ? html`<div class="sheet">
          <div class="corner" aria-hidden="true">${unit}</div>
          ${this.#ruler('along', 'top', lay.length, unit)}
          ${this.#ruler('across', 'start', lay.width, unit)}
          ${this.#cloth(lay, size, selected)}
          ${as.system === 'both' ? [this.#ruler('across', 'end', lay.width, other), this.#ruler('along', 'foot', lay.length, other)] : nothing}
        </div>` : nothing}
      </div>`;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    const before = changed.get('lay');
    // Another layout is another drawing; the same one moved by hand is not.
    if (before && this.lay && before.pieces.length !== this.lay.pieces.length) this.selected = null;
  }

  #cloth(lay: DrawnLay, size: { scale: number; text: number }, selected: number | null): TemplateResult {
    const picture = layPicture(lay, size);
    const [width, height] = [picture.width + 2 * MARGIN, picture.height + 2 * MARGIN];
    const chosen = picture.pieces.find(({ id }) => id === selected);
    return html`<svg class="lay cloth" width=${width} height=${height} viewBox="${-MARGIN} ${-MARGIN} ${width} ${height}" role="group" aria-label="Pieces on the cloth">
      ${layPatterns(1)}${picture.under.map(layMark)}
      ${picture.pieces.map((piece, i) => this.#piece(piece, piece.id === selected, this.spoken[i] ?? ''))}
      <g class="said" aria-hidden="true">${picture.pieces.map(({ marks }) => marks.map(layMark))}</g>
      ${chosen ? svg`<path class="chosen" d=${chosen.d}></path>` : nothing}
      <g aria-hidden="true">${picture.over.map(layMark)}</g>
    </svg>`;
  }

  #piece(piece: DrawnPiece, selected: boolean, spoken: string): SVGTemplateResult {
    const body = layPiece(piece);
    if (!this.movable) return svg`<g class="piece" role="img" aria-label=${spoken}>${body}</g>`;
    return svg`<g class="piece ${selected ? 'selected' : ''}" data-id=${piece.id} tabindex="0" role="button" aria-pressed=${selected} aria-label=${spoken}
      @focus=${() => this.#select(piece.id)}>${body}</g>`;
  }

  #ruler(axis: 'along' | 'across', place: 'top' | 'start' | 'end' | 'foot', length: number, unit: 'cm' | 'in'): TemplateResult {
    const ruler = layRuler(axis, length, unit, { scale: this.#scale, text: TEXT });
    const room = RULER * TEXT, long = ruler.length + 2 * MARGIN;
    const flipped = place === 'end' || place === 'foot';
    const [width, height] = axis === 'along' ? [long, room] : [room, long];
    const box = axis === 'along' ? `${-MARGIN} 0 ${width} ${height}` : `0 ${-MARGIN} ${width} ${height}`;
    return html`<svg class="lay ruler ${place} ${flipped ? 'other' : ''}" width=${width} height=${height} viewBox=${box} aria-hidden="true">${layRulerMarks(ruler, axis, room, 10)}</svg>`;
  }

  get #scale(): number {
    const { lay, room } = this;
    if (!lay) return 1;
    const rulers = RULER * TEXT * (this.as.system === 'both' ? 2 : 1) + 2 * MARGIN + 2;
    return Math.max(0.02, Math.min((room.width - rulers) / lay.length, (room.height - rulers) / lay.width)) * this.zoom;
  }

  #measure(): void {
    const { clientWidth: width, clientHeight: height } = this.scroller;
    if (width > 0 && (width !== this.room.width || height !== this.room.height)) this.room = { width, height };
  }

  readonly #fit = (): void => { this.zoom = 1; };

  /** @param at what stays where it is: a place in the window; the middle without one */
  #zoomBy(by: number, at?: { readonly x: number; readonly y: number }): void {
    const { scroller } = this;
    const zoom = Math.min(MOST_ZOOM, Math.max(1, this.zoom * by));
    const box = scroller.getBoundingClientRect();
    const [x, y] = at ? [at.x - box.left, at.y - box.top] : [box.width / 2, box.height / 2];
    const grown = zoom / this.zoom;
    const [left, top] = [(scroller.scrollLeft + x) * grown - x, (scroller.scrollTop + y) * grown - y];
    this.zoom = zoom;
    void this.updateComplete.then(() => scroller.scrollTo({ left, top }));
  }

  #select(id: number): void {
    if (this.selected === id) return;
    this.selected = id;
    this.#say('tt-lay-select', { id });
  }

  readonly #key = (event: KeyboardEvent): void => {
    if (event.altKey || event.isComposing) return;
    const id = this.#idAt(event);
    const arrow = ARROWS[event.key];
    const { scroller } = this;
    if (event.ctrlKey || event.metaKey) {
      if (event.key.toLowerCase() !== 'z' || event.shiftKey || !this.canUndo) return;
      this.#say('tt-lay-undo', {});
      event.stopPropagation();
    } else if (id !== null && arrow) {
      const [wide, fine] = STEPS[this.as.system === 'in' ? 'in' : 'cm'];
      const by = event.shiftKey ? fine : wide;
      this.#say('tt-lay-begin', {});
      this.#say('tt-lay-move', { id, by: [arrow[0] * by, arrow[1] * by] });
      this.#say('tt-lay-end', {});
    } else if (id !== null && event.key.toLowerCase() === 'r') {
      if (this.turns[id] === true) this.#say('tt-lay-turn', { id });
    } else if (event.key === '+' || event.key === '=') this.#zoomBy(1.4);
    else if (event.key === '-') this.#zoomBy(1 / 1.4);
    else if (event.key === '0') this.zoom = 1;
    else if (arrow) scroller.scrollBy({ left: arrow[0] * 60, top: -arrow[1] * 60 });
    else return;
    event.preventDefault();
  };

  #idAt(event: Event): number | null {
    const piece = event.composedPath().find((each): each is SVGElement => each instanceof SVGElement && each.classList.contains('piece'));
    const id = piece?.dataset['id'];
    return id === undefined ? null : Number(id);
  }

  readonly #down = (event: PointerEvent): void => {
    if (event.button !== 0 || this.#drag) return;
    const id = this.#idAt(event);
    // A finger pans, until it has chosen the piece that it will move.
    const byTouch = event.pointerType === 'touch';
    if (byTouch && (id === null || id !== this.selected)) {
      if (id !== null) this.#select(id);
      return;
    }
    if (id !== null) this.#select(id);
    this.#drag = { pointer: event.pointerId, id, x: event.clientX, y: event.clientY, moving: false };
  };

  readonly #moved = (event: PointerEvent): void => {
    const drag = this.#drag;
    if (!drag || event.pointerId !== drag.pointer) return;
    const [dx, dy] = [event.clientX - drag.x, event.clientY - drag.y];
    if (!drag.moving) {
      if (Math.hypot(dx, dy) < STILL) return;
      drag.moving = true;
      this.scroller.setPointerCapture(drag.pointer);
      this.scroller.classList.add('dragging');
      if (drag.id !== null) this.#say('tt-lay-begin', {});
    }
    [drag.x, drag.y] = [event.clientX, event.clientY];
    if (drag.id === null) this.scroller.scrollBy(-dx, -dy);
    else this.#say('tt-lay-move', { id: drag.id, by: [dx / this.#scale, -dy / this.#scale] });
  };

  readonly #up = (event: PointerEvent): void => {
    const drag = this.#drag;
    if (!drag || event.pointerId !== drag.pointer) return;
    this.#drag = null;
    this.scroller.classList.remove('dragging');
    if (drag.moving && drag.id !== null) this.#say('tt-lay-end', {});
  };

  readonly #wheel = (event: WheelEvent): void => {
    if (!event.ctrlKey && !event.metaKey) return;
    event.preventDefault();
    this.#zoomBy(Math.exp(-event.deltaY / 300), { x: event.clientX, y: event.clientY });
  };

  /** Two fingers bring it closer. */
  readonly #touch = (event: TouchEvent): void => {
    const [one, other] = event.touches;
    if (!one || !other) return;
    event.preventDefault();
    const apart = Math.hypot(one.clientX - other.clientX, one.clientY - other.clientY);
    if (event.type === 'touchstart' || !this.#pinch) this.#pinch = { apart, zoom: this.zoom };
    else this.#zoomBy((this.#pinch.zoom * apart) / this.#pinch.apart / this.zoom, { x: (one.clientX + other.clientX) / 2, y: (one.clientY + other.clientY) / 2 });
  };

  #say(type: string, detail: unknown): void {
    this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap { 'tt-lay-drawing': LayDrawing }
}
