import { LitElement, html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { tinykeys } from 'tinykeys';
import '../panels/index.ts';
import './cell-menu.ts';
import './command-list.ts';
import './sheet-list.ts';
import { controls } from '../look/index.ts';
import { cellName } from '../formula/index.ts';
import type { TemplateStore } from '../keeping/index.ts';
import type { FunctionCard } from '../reckoning/index.ts';
import { Kept, joinEntryLine, type ColumnWidth, type CommitDetail, type EntryLine, type Grid, type SheetView } from '../grid/index.ts';
import { cellAt, type Area, type SheetId } from '../workbook/index.ts';
import { banner, engineInWords, remarkOn } from './banner.ts';
import { COMMANDS, command } from './commands.ts';
import { CellWishes } from './cell-wishes.ts';
import { Clipboard } from './clipboard.ts';
import type { CommandList } from './command-list.ts';
import type { Desk } from './desk.ts';
import { Dialogs } from './dialogs.ts';
import { Explaining } from './explaining.ts';
import { firstMarks } from './first-marks.ts';
import { functionIn } from './function-reference.ts';
import { head } from './head.ts';
import { KeepDialogs } from './keep-dialogs.ts';
import { Losing } from './losing.ts';
import { goTo, nameSelection, nameOf } from './naming.ts';
import type { NewVersion } from './new-version.ts';
import { OnScreenKeyboard } from './on-screen-keyboard.ts';
import { Over } from './over.ts';
import { rowLabel } from './places.ts';
import { Printing } from './printing.ts';
import { SidePanels, isWide, panelTitle, type PanelName } from './side-panels.ts';
import { sheetView, showAsFor, type Reach } from './sheet-view.ts';
import { shellStyles } from './shell-styles.ts';
import { setTheme } from './theme.ts';
import { Typing } from './typing.ts';
import { clearArea, setWidths } from './wishes.ts';

/** The whole page. Draws what is on the desk and turns events into wishes; holds no facts of the workbook. */
@customElement('tt-app')
export class App extends LitElement {
  static override styles = [controls, shellStyles];

  @property({ attribute: false }) desk!: Desk;
  @state() private cards: readonly FunctionCard[] = [];
  @state() private panel: PanelName = 'working';

  @query('tt-grid') private grid!: Grid;
  @query('tt-entry-line') private entryLine!: EntryLine;
  @query('tt-command-list') private commandList!: CommandList;

  readonly #over = new Over(this);
  readonly keyboard = new OnScreenKeyboard(this);
  readonly #clipboard = new Clipboard();
  readonly #cells = new CellWishes(this, () => this.desk);
  readonly #dialogs = new Dialogs(this, () => this.desk);
  readonly keep = new KeepDialogs(this, () => this.desk);
  readonly #panels = new SidePanels(this, () => this.desk, { show: (panel) => this.#show(panel), hide: () => this.#close() });
  readonly #printing = new Printing(this, () => this.desk);
  readonly #explaining = new Explaining(this, () => this.desk);
  readonly #typing = new Typing(this, () => this.desk, () => this.grid.focus());
  readonly #losing = new Losing(this, () => this.desk, () => this.grid.focus());
  #newVersion: NewVersion | null = null;
  #view: SheetView | null = null;
  #seen: readonly unknown[] = [];
  readonly #names = new Kept<readonly string[]>();
  readonly #sheets = new Kept<readonly string[]>();
  readonly #rawAt = (row: number, col: number): string => this.#typing.shown(cellAt(this.desk.sheet, row, col)?.raw ?? '');
  readonly #reaches = new Map<SheetId, Reach>();
  /** A text was being typed when the reference was opened. */
  #wasEditing = false;
  #sheetSeen: SheetId | null = null;
  #unbindKeys = (): void => undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.desk.addEventListener('change', this.#changed);
    this.desk.addEventListener('loss', this.#losing.ask);
    this.#unbindKeys = tinykeys(window, Object.fromEntries(COMMANDS.filter(({ keys, native }) => keys && !native).map(({ keys, id }) => [keys!, (event: KeyboardEvent) => this.#key(event, id)])), { ignore: () => false });
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.desk.removeEventListener('change', this.#changed);
    this.desk.removeEventListener('loss', this.#losing.ask);
    this.#unbindKeys();
  }

  offer(version: NewVersion): void {
    this.#newVersion = version;
    version.addEventListener('change', this.#changed);
  }

  useTemplates(store: TemplateStore): Promise<void> {
    return this.#dialogs.useStore(store);
  }

  /** The functions are known once the engine is up. */
  learn(cards: readonly FunctionCard[]): void {
    this.cards = this.#explaining.cards = this.#typing.cards = cards;
    this.#dialogs.learn(cards);
  }

  override render(): TemplateResult {
    const { desk } = this;
    const { book, sheet, selection } = desk;
    const { row, col } = selection.focus;
    const cell = cellAt(sheet, row, col);
    const result = desk.results.at(sheet.id, row, col);
    const raw = this.#typing.shown(cell?.raw ?? '');
    // The same lists while they say the same, so that the grid is not asked to draw.
    const names = this.#names.of([book.names], () => book.names.map(({ name }) => name));
    const sheetNames = book.sheets.map(({ name }) => name);
    const sheets = this.#sheets.of([sheetNames.join('\n')], () => sheetNames);
    const comparing = this.panel === 'side-by-side';
    this.toggleAttribute('data-wide-panel', isWide(this.panel));
    const { more } = this.#panels;
    const whole = more.whole !== null;
    const hint = this.#panels.pins.hintHere;
    const remark = remarkOn(raw);
    return html`
      ${head(desk, { sheetsOpen: this.#over.has('sheets'), comparing, openSheets: () => this.#over.open('sheets'), run: (id) => this.#run(id) })}
      ${banner(desk, (id) => this.#run(id), this.#newVersion)}
      <tt-sheet-list ?inert=${whole} class=${this.#over.has('sheets') ? 'open' : ''} @keydown=${this.#over.escape} .sheets=${book.sheets} .current=${sheet.id} .pins=${this.#panels.pins.counts}
        @tt-open-sheet=${(event: CustomEvent<{ sheet: number }>) => { this.#over.show(null); desk.openSheet(event.detail.sheet); this.grid.focus(); }}
        @tt-run=${(event: CustomEvent<{ id: string }>) => { this.#over.show(null); this.#run(event.detail.id); }}></tt-sheet-list>
      ${this.#over.has('sheets') ? html`<button class="veil" aria-label="Close the list of sheets" @click=${this.#over.close}></button>` : nothing}
      <main ?inert=${whole}>
        ${firstMarks(desk, (area) => this.#goTo(area), (id) => this.#run(id))}
        <tt-entry-line .place=${cellName(row, col)} .name=${nameOf(book, desk.area)} .label=${rowLabel(sheet, row, col)} .sheet=${sheet.id} .row=${row} .col=${col}
          .raw=${raw} .fault=${result.kind === 'error' ? this.#explaining.faultLine(result.sentence) : remark} ?remark=${result.kind !== 'error'} .cards=${this.cards} .names=${names}
          .sheets=${sheets} ?readonly=${desk.reading !== null}></tt-entry-line>
        <tt-grid .view=${this.#sheetView()} .selection=${selection} .rawAt=${this.#rawAt}
          .threads=${this.#cells.threads} .cards=${this.cards} .names=${names} .sheets=${sheets}
          ?readonly=${desk.reading !== null}></tt-grid>
      </main>
      <aside class=${this.#over.has('panel') ? 'open' : ''} @keydown=${this.#over.escape} ?inert=${whole} aria-label=${panelTitle(this.panel)}>
        ${this.panel === 'working' ? html`<button class="panel-close" @click=${this.#over.close}>Close</button>` : nothing}
        ${this.panel !== 'working' ? this.#panels.render(this.panel)
          : html`<tt-working .heading=${rowLabel(sheet, row, col)} .place=${`${sheet.name} ${cellName(row, col)}`} .raw=${raw} .result=${result}
              .working=${this.#explaining.working} .mends=${this.#explaining.mends} .causeKeys=${this.#explaining.causeKeys} .remark=${remark} .note=${cell?.note ?? ''} .as=${showAsFor(cell, desk.showAs)}></tt-working>`}
      </aside>
      ${more.renderWhole()}
      <footer>
        ${desk.said ? html`<span class="said">${desk.said}</span>` : hint ? html`<span class="said">${hint}</span>` : html`<span class="hint">Typed figures are basted; the rest is worked out.</span>`}
        <button class="show-panel" aria-expanded=${this.#over.has('panel')} @click=${() => this.#over.open('panel')}>${panelTitle(this.panel)}</button>
        <span class="end took">${engineInWords(desk)}</span>
      </footer>
      <div class="aloud" role="status" aria-live="polite">${desk.said}</div>
      <div class="aloud" role="status" aria-live="polite">${this.#explaining.aloud}</div>
      ${this.#dialogs.render()}
      ${this.keep.render()}
      ${this.#panels.renderDialogs()}
      <tt-losses></tt-losses>
      <tt-two-readings></tt-two-readings>
      <tt-cell-menu @tt-run=${(event: CustomEvent<{ id: string }>) => { this.grid.focus(); this.#run(event.detail.id); }}></tt-cell-menu>
      <tt-command-list @tt-run=${(event: CustomEvent<{ id: string }>) => this.#run(event.detail.id)}></tt-command-list>
    `;
  }

  protected override firstUpdated(_: PropertyValues): void {
    const { desk } = this;
    const { renderRoot } = this;
    const on = <T>(type: string, handle: (detail: T, event: Event) => void) => renderRoot.addEventListener(type, (event) => handle((event as CustomEvent<T>).detail, event));
    on<{ selection: typeof desk.selection }>('tt-select', ({ selection }) => desk.select(selection));
    on<CommitDetail>('tt-commit', ({ raw, ...cell }, event) => {
      if (!this.#typing.type(cell, raw)) event.preventDefault();
      else this.#explaining.entered(cell);
    });
    on<{ area: { top: number; left: number; bottom: number; right: number } }>('tt-clear', ({ area }) => clearArea(desk, { sheet: desk.sheetId, ...area }));
    on<{ rowCount: number; colCount: number }>('tt-more-rows', ({ rowCount, colCount }) => {
      this.#reaches.set(desk.sheetId, { rows: rowCount, columns: colCount });
      this.requestUpdate();
    });
    on<{ widths: readonly ColumnWidth[] }>('tt-width', ({ widths }) => setWidths(desk, widths));
    this.#clipboard.listen(renderRoot, desk);
    this.#cells.listen(renderRoot);
    on<{ text?: string; area?: typeof desk.area }>('tt-go', ({ text, area }) => {
      if (area) this.#goTo(area);
      else if (text !== undefined) this.#goTo(text);
    });
    on<{ text: string }>('tt-name', ({ text }) => {
      nameSelection(desk, text);
      this.grid.focus();
    });
    on('tt-close', () => this.#close());
    on<{ at: number }>('tt-mend', ({ at }) => { this.#explaining.mend(at); this.grid.focus(); });
    this.#typing.listen(renderRoot);
    this.#losing.listen(renderRoot);
    this.#dialogs.listen(renderRoot);
    this.keep.listen(renderRoot);
    this.#panels.listen(renderRoot);
    on('tt-put-example', () => { this.#wasEditing = false; });
    on('tt-close-reference', () => {
      if (this.#wasEditing) this.grid.edit();
      else this.grid.focus();
    });
    joinEntryLine(this.entryLine, this.grid);
    this.grid.focus();
  }

  protected override willUpdate(): void {
    this.#cells.followBook();
    void this.#explaining.follow();
  }

  protected override updated(): void {
    // However she came to another sheet, from a dialog or from a list, she goes on in its cells.
    const { sheetId } = this.desk;
    // Only who goes through what was found in all sheets stays with the panel.
    if (this.#sheetSeen !== null && this.#sheetSeen !== sheetId && !this.#inPanel) this.grid.focus();
    this.#sheetSeen = sheetId;
  }

  /** A new view only when something it draws is new, so that the grid knows when to draw. */
  #sheetView(): SheetView {
    const { desk } = this;
    const reach = this.#reaches.get(desk.sheetId);
    const seen = [desk.sheet, desk.results.revision, desk.results.areLast, desk.book.settings, desk.waiting, reach];
    if (!this.#view || seen.some((each, at) => each !== this.#seen[at])) {
      this.#seen = seen;
      this.#view = sheetView(desk.sheet, desk.results, desk.showAs, desk.waiting, reach);
    }
    return this.#view;
  }

  #goTo(place: Area | string): void {
    const { desk } = this;
    if (typeof place === 'string') goTo(desk, place);
    else desk.selectArea(place);
    this.grid.focus();
    // Also when it was active already, and has been scrolled away from.
    void this.updateComplete.then(() => this.grid.reveal(desk.selection.focus));
  }

  #show(panel: PanelName): void {
    if (panel === this.#panels.more.whole) return;
    this.panel = panel;
    this.#panels.more.at(panel);
    this.#over.show('panel');
  }

  /** A page over the cells first, then what is at their side. */
  #close(): void {
    const { more } = this.#panels;
    if (more.whole) more.closeWhole();
    else this.#show('working');
    this.#over.show(null);
    void this.updateComplete.then(() => this.grid.focus());
  }

  get #inPanel(): boolean {
    return this.renderRoot.querySelector('aside')?.matches(':focus-within') ?? false;
  }

  #run(id: string): void {
    const { desk } = this;
    const { when, run } = command(id);
    if (when && !when(desk)) return;
    run(desk, {
      ...this.#dialogs.screens,
      ...this.keep.screens,
      ...this.#cells.screens,
      ...this.#panels.screens,
      ...this.#explaining.screens,
      ...this.#printing.screens,
      openCommands: () => this.commandList.open(desk),
      openReference: () => this.#openReference(),
      compare: () => {
        if (this.panel === 'side-by-side') this.#close();
        else this.#panels.more.open('side-by-side');
      },
      setTheme,
    });
  }

  /** At the function that is being typed, or that the selected cell calls. */
  #openReference(): void {
    const { desk } = this;
    const { row, col } = desk.selection.focus;
    const name = this.entryLine.called ?? this.grid.called ?? functionIn(cellAt(desk.sheet, row, col)?.raw ?? '');
    this.#wasEditing = this.entryLine.editing || this.grid.editing;
    this.#dialogs.openReference(name);
  }

  #key(event: KeyboardEvent, id: string): void {
    // A text that is being typed has its own undo, and a dialog its own keys.
    const [at] = event.composedPath();
    const inText = this.entryLine.editing || this.grid.editing || (this.#inPanel && at instanceof Element && at.matches('input:not([type=checkbox]), textarea'));
    const inDialog = event.composedPath().some((each) => each instanceof HTMLDialogElement);
    // Some systems move the caret by these.
    const movesCaret = /Arrow/.test(event.key);
    if (inDialog || (inText && (movesCaret || id === 'undo' || id === 'redo'))) return;
    event.preventDefault();
    this.#run(id);
  }

  readonly #changed = () => this.requestUpdate();
}

declare global {
  interface HTMLElementTagNameMap { 'tt-app': App }
}
