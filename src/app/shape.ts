/** The controller of drawn shapes: every change is an edit; photographs and what is left out of a file are only in memory. */
import { html, type TemplateResult } from 'lit';
import { boundsOf, type Point } from '../lay/index.ts';
import { drawnOutline, SHAPE_WORDS, type Plane } from '../lay/shapes/index.ts';
import { readQuantity } from '../quantities/index.ts';
import type { BoardPart, BoardView, ShapesView, TraceView } from '../panels/index.ts';
import { recordCalled, recordsOf, type Edit, type Shape, type ShapePlace } from '../workbook/index.ts';
import { attempt } from './attempt.ts';
import type { MorePanel, PanelHost } from './more-panels.ts';
import { aboutShape, boardOf, boxOf, canLose, lengthSaid, moved, placeOf, rowsOf, snapped, without, withBulge, withPoint } from './shape-draft.ts';
import { FILE_ERROR, readDrawing, readPhoto, straightened, traceError, withMiddles, type Photo } from './shape-file.ts';

const STEPS = { metric: ['1 mm', '5 mm', '1 cm', '2 cm'], inch: ['1/16 in', '1/8 in', '1/4 in', '1 in'] } as const;

/** What is drawn by hand on squares. */
const BOARD_ERROR = 0.5;

interface Tracing {
  readonly photo: Photo;
  readonly across: string;
  readonly down: string;
  readonly middles: boolean;
  /** Not while the corners are being set. */
  readonly plane: Plane | null;
  /** Of the rectangle, in mm. */
  readonly field: BoardView['box'];
  readonly sentence: string;
}

class ShapeDesk implements MorePanel {
  #id = '';
  #chosen: BoardPart | null = null;
  #step = '';
  /** While something is dragged. */
  #draft: Shape | null = null;
  /** What is in view does not move under the hand. */
  #box: BoardView['box'] | null = null;
  #tracing: Tracing | null = null;
  #sentences: readonly string[] = [];

  constructor(private readonly host: PanelHost) {}

  closed(): void {
    this.#tracing?.photo.picture.close();
    this.#tracing = null;
    this.#sentences = [];
  }

  render(): TemplateResult {
    const on = <T>(handle: (detail: T) => void) => (event: CustomEvent<T>) => { handle(event.detail); this.host.draw(); };
    return html`<tt-shapes .view=${this.#view()}
      @tt-shape-open=${on<{ id: string }>(({ id }) => this.#open(id))} @tt-shape-new=${on(() => this.#new())}
      @tt-shape-file=${on<{ file: File }>(({ file }) => void this.#file(file))} @tt-shape-photo=${on<{ file: File }>(({ file }) => void this.#photo(file))}
      @tt-shape-name=${on<{ name: string }>(({ name }) => this.#rename(name))} @tt-shape-take-away=${on(() => this.#takeAway())}
      @tt-shape-step=${on<{ step: string }>(({ step }) => { this.#step = step; })}
      @tt-shape-undo=${on(() => this.host.desk.undo())} @tt-shape-redo=${on(() => this.host.desk.redo())}
      @tt-shape-type=${on<{ part: BoardPart; field: 'x' | 'y' | 'bend'; text: string }>((wish) => this.#type(wish))}
      @tt-shape-straight=${on<{ at: number }>(({ at }) => this.#change((shape) => withBulge(shape, at, 0)))}
      @tt-shape-mark=${on<{ mark: string }>(({ mark }) => this.#mark(mark))}
      @tt-trace-choose=${on<Partial<Pick<Tracing, 'across' | 'down' | 'middles'>>>((wish) => this.#trace(wish))}
      @tt-trace-straighten=${on(() => this.#straighten())} @tt-trace-corners=${on(() => { this.#set({ plane: null, sentence: '' }); })} @tt-trace-end=${on(() => this.#endTrace())}
      @tt-board-pick=${on<{ part: BoardPart }>(({ part }) => { this.#chosen = part; })}
      @tt-board-move=${on<{ part: BoardPart; x: number; y: number; done: boolean }>((wish) => this.#move(wish))}
      @tt-board-nudge=${on<{ part: BoardPart; x: number; y: number; far: boolean }>((wish) => this.#nudge(wish))}
      @tt-board-add=${on<{ part: BoardPart }>(({ part }) => this.#add(part))} @tt-board-remove=${on<{ part: BoardPart }>(({ part }) => this.#remove(part))}></tt-shapes>`;
  }

  get #shape(): Shape | undefined {
    return this.#draft ?? recordCalled(this.host.desk.book, 'shape', this.#id);
  }

  get #steps(): readonly string[] {
    return this.host.desk.showAs.system === 'in' ? STEPS.inch : STEPS.metric;
  }

  get #stepNow(): string {
    return this.#steps.includes(this.#step) ? this.#step : this.#steps[this.#tracing ? 0 : 1]!;
  }

  get #stepMm(): number {
    const read = readQuantity(this.#stepNow);
    return read.kind === 'quantity' ? read.quantity.value : 1;
  }

  #view(): ShapesView {
    const { desk } = this.host;
    const as = desk.showAs;
    const all = recordsOf(desk.book, 'shape');
    if (!this.#shape && !this.#tracing) this.#id = all[0]?.id ?? '';
    const shape = this.#shape;
    const chosen = this.#chosen && (this.#chosen.kind === 'corner' || (shape && placeOf(shape, this.#chosen))) ? this.#chosen : null;
    return {
      shapes: all.map(({ id, data }) => {
        const { from, to } = boundsOf(drawnOutline(data));
        return { id, name: data.name, about: `${lengthSaid(to[0] - from[0], as)} × ${lengthSaid(to[1] - from[1], as)}` };
      }),
      id: this.#id, name: shape?.name ?? '', about: shape ? aboutShape(shape, as) : '',
      board: this.#board(shape, chosen), rows: shape ? rowsOf(shape, as) : [], chosen, step: this.#stepNow, steps: this.#steps,
      bendable: chosen?.kind === 'point' || chosen?.kind === 'bend', removable: chosen !== null && shape !== undefined && canLose(shape, chosen),
      trace: this.#traceView(shape), sentences: this.#sentences,
      canUndo: desk.history.done.length > 0, canRedo: desk.history.undone.length > 0, readonly: desk.reading !== null,
    };
  }

  #board(shape: Shape | undefined, chosen: BoardPart | null): BoardView | null {
    const tracing = this.#tracing;
    if (tracing) {
      const { picture, corners } = tracing.photo;
      const box = { x: 0, y: 0, width: picture.width, height: picture.height };
      if (tracing.plane && shape) return boardOf(shape, chosen, this.host.desk.showAs.system === 'in' ? 25.4 : 10, tracing.plane, picture, this.host.desk.showAs, box, tracing.field);
      const names = ['left upper', 'right upper', 'right lower', 'left lower', 'middle of the upper side', 'middle of the right side', 'middle of the lower side', 'middle of the left side'];
      return {
        box, photo: picture, fine: '', strong: '', grain: '', outline: `M${corners.slice(0, 4).map(([x, y]) => `${x} ${y}`).join('L')}Z`,
        spots: corners.map(([x, y], at) => ({ part: { kind: 'corner', at }, x, y, label: `Corner of the rectangle, ${names[at]}`, chosen: chosen?.kind === 'corner' && chosen.at === at })),
      };
    }
    return shape ? boardOf(shape, chosen, this.#stepMm, null, null, this.host.desk.showAs, this.#box ?? undefined) : null;
  }

  #traceView(shape: Shape | undefined): TraceView | null {
    const tracing = this.#tracing;
    if (!tracing) return null;
    const { photo, across, down, middles, plane, sentence } = tracing;
    const as = this.host.desk.showAs;
    let fit = '';
    if (plane && shape) {
      const { perPixel, error } = traceError(plane, drawnOutline(shape));
      const pixel = `A pixel is at most ${lengthSaid(perPixel, as)}, so that a point set by hand may be off by ${lengthSaid(error, as)}.`;
      fit = middles ? `${pixel} The middles of the sides lie within ${lengthSaid(plane.residual, as)} of where they should.` : `${pixel} Set the middles of the sides too, and it can be told how well the corners fit.`;
    }
    return { file: photo.file, setting: plane === null, across, down, middles, fit, sentence };
  }

  #do(edit: Edit): boolean {
    return attempt(this.host.desk, () => edit);
  }

  #open(id: string): void {
    this.#endTrace();
    this.#id = id;
    this.#chosen = this.#box = null;
  }

  /** One change of the open shape, as one edit. */
  #change(make: (shape: Shape) => Shape): void {
    const shape = recordCalled(this.host.desk.book, 'shape', this.#id);
    this.#draft = null;
    if (!shape) return;
    const next = make(shape);
    const plane = this.#tracing?.plane;
    const error = plane ? Math.round(traceError(plane, drawnOutline(next)).error * 100) / 100 : next.error;
    if (JSON.stringify(next) !== JSON.stringify(shape)) this.#do({ do: 'setRecord', kind: 'shape', id: this.#id, data: { ...next, error } });
  }

  #move({ part, x, y, done }: { part: BoardPart; x: number; y: number; done: boolean }): void {
    if (part.kind === 'corner') {
      this.#corner(part.at, [x, y]);
      return;
    }
    const shape = recordCalled(this.host.desk.book, 'shape', this.#id);
    if (!shape) return;
    this.#box ??= boxOf(shape);
    const plane = this.#tracing?.plane;
    const [mx, my] = plane ? plane.toMm([x, y]) : [x, y];
    const to = plane ? { x: mx, y: my } : snapped({ x, y }, this.#stepMm);
    const next = moved(shape, part, to);
    if (done) {
      this.#change(() => next);
      this.#box = null;
    } else {
      this.#draft = next;
    }
  }

  #nudge({ part, x, y, far }: { part: BoardPart; x: number; y: number; far: boolean }): void {
    const times = far ? 10 : 1;
    if (part.kind === 'corner') {
      const [cx, cy] = this.#tracing?.photo.corners[part.at] ?? [0, 0];
      this.#corner(part.at, [cx + x * times, cy + y * times]);
      return;
    }
    this.#change((shape) => {
      const place = placeOf(shape, part);
      return place ? moved(shape, part, { x: place.x + x * times * this.#stepMm, y: place.y + y * times * this.#stepMm }) : shape;
    });
  }

  #corner(at: number, to: Point): void {
    const tracing = this.#tracing;
    if (!tracing) return;
    const { width, height } = tracing.photo.picture;
    const held: Point = [Math.min(width, Math.max(0, to[0])), Math.min(height, Math.max(0, to[1]))];
    this.#set({ photo: { ...tracing.photo, corners: tracing.photo.corners.with(at, held) }, sentence: '' });
  }

  #add({ kind, at }: BoardPart): void {
    if (kind !== 'point' && kind !== 'bend') return;
    this.#change((shape) => withPoint(shape, at));
    this.#chosen = { kind: 'point', at: at + 1 };
  }

  #remove(part: BoardPart): void {
    this.#change((shape) => (canLose(shape, part) ? without(shape, part) : shape));
    this.#chosen = null;
  }

  #mark(mark: string): void {
    const shape = this.#shape;
    if (!shape || mark.trim() === '') return;
    const { from, to } = boundsOf(drawnOutline(shape));
    this.#change((now) => ({ ...now, marks: [...now.marks, { mark: mark.trim(), ...snapped({ x: (from[0] + to[0]) / 2, y: (from[1] + to[1]) / 2 }, this.#stepMm) }] }));
  }

  #length(text: string): number | null {
    const read = readQuantity(text, { decimalMark: this.host.desk.showAs.decimalMark ?? '.' });
    if (read.kind === 'quantity' && (read.quantity.dimension === 'length' || read.quantity.value === 0)) return read.quantity.value;
    return null;
  }

  #type({ part, field, text }: { part: BoardPart; field: 'x' | 'y' | 'bend'; text: string }): void {
    const mm = this.#length(text);
    if (mm === null) {
      this.#sentences = [`“${text}” is no length: type it like 12.5 cm or 4 7/8 in.`];
      return;
    }
    this.#sentences = [];
    this.#change((shape) => {
      if (field === 'bend') return withBulge(shape, part.at, mm);
      const place = placeOf(shape, part)!;
      return moved(shape, part, { ...place, [field]: mm });
    });
  }

  /** Why a shape cannot be called so. */
  #nameFault(name: string): string | null {
    if (name === '') return 'A shape needs a name: rows of a list of pieces call it by that.';
    if (SHAPE_WORDS.some(({ words }) => words.includes(name.toLowerCase()))) return `“${name}” is a word for a shape already: take another name.`;
    if (recordsOf(this.host.desk.book, 'shape').some(({ id, data }) => id !== this.#id && data.name.toLowerCase() === name.toLowerCase())) return `There is a shape called “${name}” already: take another name.`;
    return null;
  }

  #rename(given: string): void {
    const name = given.trim().slice(0, 60);
    const before = this.#shape?.name ?? '';
    const fault = this.#nameFault(name);
    this.#sentences = fault ? [fault] : [];
    if (fault || name === before) return;
    this.#change((shape) => ({ ...shape, name }));
    const rows = this.host.desk.book.sheets.reduce((sum, sheet) => sum + sheet.rows.reduce((found, cells) => found + (cells?.filter((cell) => cell?.raw.trim().toLowerCase() === before.toLowerCase()).length ?? 0), 0), 0);
    if (rows > 0) this.#sentences = [`Cells that say “${before}” are not changed with it (${rows}): write “${name}” under Shape where this shape is meant.`];
  }

  #freeId(taken: ReadonlySet<string> = new Set()): string {
    const ids = new Set([...recordsOf(this.host.desk.book, 'shape').map(({ id }) => id), ...taken]);
    for (let n = 1; ; n++) if (!ids.has(`shape-${n}`)) return `shape-${n}`;
  }

  #freeName(wanted: string, taken: readonly string[] = []): string {
    const names = new Set([...recordsOf(this.host.desk.book, 'shape').map(({ data }) => data.name.toLowerCase()), ...SHAPE_WORDS.flatMap(({ words }) => words), ...taken.map((name) => name.toLowerCase())]);
    if (!names.has(wanted.toLowerCase())) return wanted;
    for (let n = 2; ; n++) if (!names.has(`${wanted} ${n}`.toLowerCase())) return `${wanted} ${n}`;
  }

  #put(shape: Shape): void {
    const id = this.#freeId();
    if (this.#do({ do: 'setRecord', kind: 'shape', id, data: shape })) this.#id = id;
    this.#chosen = null;
  }

  #new(): void {
    this.#endTrace();
    const inch = this.host.desk.showAs.system === 'in';
    const [w, h] = inch ? [203.2, 304.8] : [200, 300];
    this.#put({ name: this.#freeName('Shape'), points: box(0, 0, w, h), grain: [{ x: w / 2, y: h / 6 }, { x: w / 2, y: (5 * h) / 6 }], marks: [], from: 'board', file: '', error: BOARD_ERROR });
  }

  async #file(file: File): Promise<void> {
    this.#endTrace();
    const { shapes, sentences } = await readDrawing(file);
    const names: string[] = [];
    const ids = new Set<string>();
    const edits = shapes.map((shape): Edit => {
      const name = this.#freeName(shape.name, names), id = this.#freeId(ids);
      names.push(name);
      ids.add(id);
      return { do: 'setRecord', kind: 'shape', id, data: { ...shape, name, marks: [], from: 'file', file: file.name.slice(0, 200), error: FILE_ERROR } };
    });
    this.#sentences = [...(names.length > 0 ? [`Brought in from ${file.name}: ${names.join(', ')}.`] : []), ...sentences];
    if (edits.length > 0 && this.#do({ do: 'many', label: `bring in ${edits.length === 1 ? 'a shape' : `${edits.length} shapes`}`, edits })) this.#id = [...ids][0]!;
    this.#chosen = null;
    this.host.draw();
  }

  #takeAway(): void {
    this.#endTrace();
    this.#do({ do: 'setRecord', kind: 'shape', id: this.#id, data: null });
    this.#id = '';
    this.#chosen = null;
  }

  async #photo(file: File): Promise<void> {
    this.#endTrace();
    const photo = await readPhoto(file);
    if (typeof photo === 'string') this.#sentences = [photo];
    else {
      this.#sentences = [];
      const inch = this.host.desk.showAs.system === 'in';
      this.#tracing = { photo, across: inch ? '24 in' : '60 cm', down: inch ? '18 in' : '45 cm', middles: false, plane: null, field: { x: 0, y: 0, width: 1, height: 1 }, sentence: '' };
      this.#id = '';
    }
    this.host.draw();
  }

  #set(change: Partial<Tracing>): void {
    if (this.#tracing) this.#tracing = { ...this.#tracing, ...change };
  }

  #trace(wish: Partial<Pick<Tracing, 'across' | 'down' | 'middles'>>): void {
    this.#set({ ...wish, sentence: '' });
    const tracing = this.#tracing;
    if (tracing && wish.middles !== undefined) this.#set({ photo: withMiddles(tracing.photo, wish.middles), plane: null });
  }

  #straighten(): void {
    const tracing = this.#tracing;
    if (!tracing) return;
    const [width, height] = [this.#length(tracing.across), this.#length(tracing.down)];
    if (!width || !height || width < 10 || height < 10) {
      this.#set({ sentence: 'Give both sides of the rectangle, such as 60 cm and 45 cm.' });
      return;
    }
    const plane = straightened(tracing.photo, width, height);
    if (typeof plane === 'string') {
      this.#set({ sentence: plane });
      return;
    }
    this.#set({ plane, field: { x: 0, y: 0, width, height }, sentence: '' });
    if (this.#shape) return;
    const points = box(width / 4, height / 4, (3 * width) / 4, (3 * height) / 4);
    const error = Math.round(traceError(plane, points.map(({ x, y }): Point => [x, y])).error * 100) / 100;
    this.#put({ name: this.#freeName('Traced piece'), points, grain: [{ x: width / 2, y: height / 3 }, { x: width / 2, y: (2 * height) / 3 }], marks: [], from: 'photograph', file: tracing.photo.file.slice(0, 200), error });
  }

  #endTrace(): void {
    this.#tracing?.photo.picture.close();
    this.#tracing = null;
    this.#sentences = [];
  }
}

const box = (left: number, top: number, right: number, bottom: number): readonly ShapePlace[] => [{ x: left, y: top }, { x: right, y: top }, { x: right, y: bottom }, { x: left, y: bottom }];

export const panel = (host: PanelHost): MorePanel => new ShapeDesk(host);
