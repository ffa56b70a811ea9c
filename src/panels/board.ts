import { LitElement, css, html, nothing, svg, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import { controls } from '../look/index.ts';
import type { BoardPart, BoardSpot, BoardView } from './shape-parts.ts';

/** In pixels of the screen: what a finger or a pointer can hit, and what is drawn of it. */
const HIT = 13, DOT = 5;

const ARROWS: Readonly<Record<string, readonly [number, number]>> = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };

/**
 * A squared board, or a photograph: an outline with the points that hold it.
 * Says `tt-board-pick` {part}, `tt-board-move` {part, x, y, done}, x and y in the
 * board's units, `tt-board-nudge` {part, x, y, far} by the arrow keys,
 * `tt-board-remove` {part} and `tt-board-add` {part} by Delete and Insert.
 */
@customElement('tt-board')
export class Board extends LitElement {
  static override shadowRootOptions = { ...LitElement.shadowRootOptions, delegatesFocus: false };
  static override styles = [controls, css`
    :host { display: block; position: relative; border: 1px solid var(--rule); border-radius: var(--round); overflow: hidden; background: var(--sheet); }
    canvas, svg { position: absolute; inset: 0; width: 100%; height: 100%; }
    canvas { object-fit: contain; }
    svg { touch-action: none; }
    .fine { stroke: var(--line); stroke-width: 1; }
    .strong { stroke: var(--rule); stroke-width: 1; }
    .outline { fill: var(--chalk); fill-opacity: 0.16; stroke: var(--chalk); stroke-width: 2.5; stroke-linejoin: round; }
    .over .outline { fill-opacity: 0.06; }
    .over .fine { opacity: 0.35; }
    .halo { fill: none; stroke: var(--sheet); stroke-width: 5; stroke-linejoin: round; }
    .grain { stroke: var(--thread); stroke-width: 2.5; stroke-dasharray: 9 5; fill: none; }
    path, line, circle, rect { vector-effect: non-scaling-stroke; }
    .hit { fill: transparent; }
    g.spot { cursor: grab; }
    g.spot:focus { outline: none; }
    g.spot:focus-visible .hit { stroke: var(--chalk); stroke-width: 2.5; }
    .dot { fill: var(--sheet); stroke: var(--ink); stroke-width: 2; }
    .bend .dot { stroke-dasharray: 3 2; }
    .grain-end .dot { stroke: var(--thread); }
    .corner .dot { stroke: var(--pin); fill: var(--pin-wash); }
    .chosen .dot { fill: var(--ink); }
    .mark .dot { stroke: var(--leaf); }
  `];

  @property({ attribute: false }) view: BoardView | null = null;
  @property({ type: Boolean }) readonly = false;
  /** Board units for one pixel of the screen. */
  #unit = 1;
  @query('svg') private drawing!: SVGSVGElement;
  @query('canvas') private canvas!: HTMLCanvasElement | null;
  readonly #watch = new ResizeObserver(() => this.requestUpdate());
  #drawn: ImageBitmap | null = null;
  #held: { readonly part: BoardPart; moved: boolean } | null = null;

  override connectedCallback(): void {
    super.connectedCallback();
    this.#watch.observe(this);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#watch.disconnect();
  }

  override render(): TemplateResult | typeof nothing {
    const { view } = this;
    if (!view) return nothing;
    const { x, y, width, height } = view.box;
    return html`
      ${view.photo ? html`<canvas aria-hidden="true"></canvas>` : nothing}
      <svg class=${view.photo ? 'over' : ''} viewBox="${x} ${y} ${width} ${height}" role="group" aria-label="The board: choose a point with Tab and move it with the arrow keys"
        @pointerdown=${this.#down} @pointermove=${this.#move} @pointerup=${this.#up} @pointercancel=${this.#up} @keydown=${this.#key} @focusin=${this.#focus}>
        <path class="fine" d=${view.fine}></path><path class="strong" d=${view.strong}></path>
        ${view.photo ? svg`<path class="halo" d=${view.outline}></path>` : nothing}
        <path class="outline" d=${view.outline}></path>
        <path class="grain" d=${view.grain}></path>
        ${view.spots.map((spot, i) => this.#spot(spot, i))}
      </svg>`;
  }

  #spot({ part, x, y, label, chosen }: BoardSpot, i: number): TemplateResult {
    const kind = part.kind === 'grain' ? 'grain-end' : part.kind;
    const size = DOT * this.#unit * (part.kind === 'bend' ? 0.8 : 1);
    return svg`<g class="spot ${kind} ${chosen ? 'chosen' : ''}" data-spot=${i} tabindex="0" role="button" aria-label=${label} aria-pressed=${chosen}>
      <circle class="hit" cx=${x} cy=${y} r=${HIT * this.#unit}></circle>
      ${part.kind === 'grain' || part.kind === 'corner'
        ? svg`<rect class="dot" x=${x - size} y=${y - size} width=${2 * size} height=${2 * size}></rect>`
        : svg`<circle class="dot" cx=${x} cy=${y} r=${size}></circle>`}
    </g>`;
  }

  override willUpdate(): void {
    const { width, height } = this.view?.box ?? { width: 1, height: 1 };
    const scale = Math.min(this.clientWidth / width, this.clientHeight / height);
    this.#unit = scale > 0 ? 1 / scale : 1;
  }

  override updated(changed: PropertyValues<this>): void {
    const photo = this.view?.photo ?? null;
    if (changed.has('view') && photo !== this.#drawn) {
      this.#drawn = photo;
      if (photo && this.canvas) {
        this.canvas.width = photo.width;
        this.canvas.height = photo.height;
        this.canvas.getContext('2d')?.drawImage(photo, 0, 0);
      }
    }
  }

  /** The spot that an event is about. */
  #spotOf(event: Event): BoardSpot | undefined {
    const spot = (event.target as Element).closest('[data-spot]')?.getAttribute('data-spot');
    return spot === null || spot === undefined ? undefined : this.view?.spots[Number(spot)];
  }

  #say(type: string, detail: object): void {
    this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
  }

  #down(event: PointerEvent): void {
    const spot = this.#spotOf(event);
    if (!spot || event.button !== 0) return;
    event.preventDefault();
    (event.target as Element).closest<SVGElement>('[data-spot]')?.focus();
    this.#say('tt-board-pick', { part: spot.part });
    if (this.readonly) return;
    this.#held = { part: spot.part, moved: false };
    this.drawing.setPointerCapture(event.pointerId);
  }

  #move(event: PointerEvent): void {
    if (!this.#held) return;
    this.#held.moved = true;
    this.#say('tt-board-move', { part: this.#held.part, ...this.#at(event), done: false });
  }

  #up(event: PointerEvent): void {
    const held = this.#held;
    this.#held = null;
    if (held?.moved) this.#say('tt-board-move', { part: held.part, ...this.#at(event), done: true });
  }

  #at(event: PointerEvent): { x: number; y: number } {
    const matrix = this.drawing.getScreenCTM();
    const point = matrix ? new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse()) : { x: 0, y: 0 };
    return { x: point.x, y: point.y };
  }

  #focus(event: FocusEvent): void {
    const spot = this.#spotOf(event);
    if (spot && !spot.chosen) this.#say('tt-board-pick', { part: spot.part });
  }

  #key(event: KeyboardEvent): void {
    const spot = this.#spotOf(event);
    if (!spot || this.readonly || event.ctrlKey || event.metaKey || event.altKey) return;
    const arrow = ARROWS[event.key];
    if (arrow) this.#say('tt-board-nudge', { part: spot.part, x: arrow[0], y: arrow[1], far: event.shiftKey });
    else if (event.key === 'Delete' || event.key === 'Backspace') this.#say('tt-board-remove', { part: spot.part });
    else if (event.key === 'Insert') this.#say('tt-board-add', { part: spot.part });
    else return;
    event.preventDefault();
    event.stopPropagation();
  }
}

declare global {
  interface HTMLElementTagNameMap { 'tt-board': Board }
}
