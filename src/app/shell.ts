import { LitElement, html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { tinykeys } from 'tinykeys';
import '../panels/index.ts';
import './cell-menu.ts';
import './command-list.ts';
import './sheet-list.ts';
import { controls } from '../look/index.ts';
import { cellName } from '../formula/index.ts';
import type { TemplateStore } from '../keeping/index.ts';
import type { FunctionCard, Working } from '../reckoning/index.ts';
import { Kept, joinEntryLine, type ColumnWidth, type CommitDetail, type EntryLine, type Grid, type SheetView } from '../grid/index.ts';
import { cellAt, type SheetId, type ShowSystem } from '../workbook/index.ts';
import { banner, engineInWords, remarkOn } from './banner.ts';
import { COMMANDS, command } from './commands.ts';
import { CellWishes } from './cell-wishes.ts';
import { Clipboard } from './clipboard.ts';
import type { CommandList } from './command-list.ts';
import { Comparing } from './comparing.ts';
import type { Desk } from './desk.ts';
import { Dialogs } from './dialogs.ts';
import { functionIn } from './function-reference.ts';
import { keptInWords } from './kept.ts';
import { goTo, nameSelection, nameOf } from './naming.ts';
import { OnScreenKeyboard } from './on-screen-keyboard.ts';
import { Over } from './over.ts';
import { placeName, rowLabel } from './places.ts';
import { PANEL_TITLES, SidePanels, type PanelName } from './side-panels.ts';
import { sheetView, showAsFor, type Reach } from './sheet-view.ts';
import { shellStyles } from './shell-styles.ts';
import { setTheme } from './theme.ts';
import { clearArea, setWidths, typeInto } from './wishes.ts';

const SYSTEMS: readonly { readonly show: ShowSystem; readonly label: string; readonly title: string }[] = [
  { show: 'own', label: 'as typed', title: 'Each length in the unit it was typed in' },
  { show: 'cm', label: 'cm', title: 'Lengths in centimetres' },
  { show: 'in', label: 'in', title: 'Lengths in inches, as fractions' },
  { show: 'both', label: 'cm + in', title: 'Lengths in both systems' },
];

/** The whole page. Draws what is on the desk and turns events into wishes; holds no facts of the workbook. */
@customElement('tt-app')
export class App extends LitElement {
  static override styles = [controls, shellStyles];

  @property({ attribute: false }) desk!: Desk;
  @state() private cards: readonly FunctionCard[] = [];
  @state() private working: Working | null = null;
  @state() private panel: PanelName = 'working';

  @query('tt-grid') private grid!: Grid;
  @query('tt-entry-line') private entryLine!: EntryLine;
  @query('tt-command-list') private commandList!: CommandList;

  readonly #over = new Over(this);
  readonly keyboard = new OnScreenKeyboard(this);
  readonly #comparing = new Comparing();
  readonly #clipboard = new Clipboard();
  readonly #cells = new CellWishes(this, () => this.desk);
  readonly #dialogs = new Dialogs(this, () => this.desk, () => this.#comparing);
  readonly #panels = new SidePanels(this, () => this.desk, (panel) => this.#show(panel));
  #view: SheetView | null = null;
  #seen: readonly unknown[] = [];
  readonly #names = new Kept<readonly string[]>();
  readonly #sheets = new Kept<readonly string[]>();
  readonly #rawAt = (row: number, col: number): string => cellAt(this.desk.sheet, row, col)?.raw ?? '';
  readonly #reaches = new Map<SheetId, Reach>();
  #workingOf = '';
  /** A text was being typed when the reference was opened. */
  #wasEditing = false;
  #sheetSeen: SheetId | null = null;
  #unbindKeys = (): void => undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.desk.addEventListener('change', this.#changed);
    this.desk.addEventListener('results', this.#results);
    this.#comparing.addEventListener('change', this.#changed);
    this.#unbindKeys = tinykeys(window, Object.fromEntries(COMMANDS.filter(({ keys, native }) => keys && !native).map(({ keys, id }) => [keys!, (event: KeyboardEvent) => this.#key(event, id)])), { ignore: () => false });
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.desk.removeEventListener('change', this.#changed);
    this.desk.removeEventListener('results', this.#results);
    this.#comparing.removeEventListener('change', this.#changed);
    this.#unbindKeys();
  }

  useTemplates(store: TemplateStore): Promise<void> {
    return this.#dialogs.useStore(store);
  }

  /** The functions are known once the engine is up. */
  learn(cards: readonly FunctionCard[]): void {
    this.cards = cards;
    this.#dialogs.learn(cards);
  }

  override render(): TemplateResult {
    const { desk } = this;
    const { book, sheet, selection } = desk;
    const { row, col } = selection.focus;
    const cell = cellAt(sheet, row, col);
    const result = desk.results.at(sheet.id, row, col);
    const raw = cell?.raw ?? '';
    const kept = keptInWords(desk);
    // The same lists while they say the same, so that the grid is not asked to draw.
    const names = this.#names.of([book.names], () => book.names.map(({ name }) => name));
    const sheetNames = book.sheets.map(({ name }) => name);
    const sheets = this.#sheets.of([sheetNames.join('\n')], () => sheetNames);
    const comparing = this.panel === 'side-by-side';
    const done = desk.history.done.at(-1);
    const undone = desk.history.undone.at(-1);
    this.toggleAttribute('data-wide-panel', comparing);
    const remark = remarkOn(raw);
    return html`
      <header>
        <button class="menu" aria-expanded=${this.#over.has('sheets')} @click=${() => this.#over.open('sheets')}>☰ Sheets</button>
        <div class="title"><h1><button title="Rename" @click=${() => this.#run('rename')}>${book.title}</button></h1>
          <span class="whom ${kept.trouble ? 'not' : ''}">${book.person ? `for ${book.person} · ` : ''}${kept.words}</span></div>
        <fieldset><legend>How lengths show</legend><span class="choice shown">${SYSTEMS.map(({ show, label, title }) => html`
          <button title=${title} aria-pressed=${book.settings.show === show} @click=${() => this.#run(`show-${show}`)}>${label}</button>`)}</span></fieldset>
        <select class="roomy shown" aria-label="Inches shown to" title="Inches shown to the nearest" @change=${(event: Event) => this.#run(`inches-${(event.target as HTMLSelectElement).value}`)}>
          ${[8, 16, 32].map((step) => html`<option value=${step} .selected=${live(book.settings.inchStep === step)}>1/${step} in</option>`)}
        </select>
        <button class="undo" title=${done ? `Undo: ${done.label}` : 'Nothing to undo'} aria-label=${done ? `Undo: ${done.label}` : 'Undo'} ?disabled=${desk.history.done.length === 0} @click=${() => this.#run('undo')}>Undo</button>
        <button class="roomy" title=${undone ? `Do again: ${undone.label}` : 'Nothing to do again'} aria-label=${undone ? `Do again: ${undone.label}` : 'Do again'} ?disabled=${desk.history.undone.length === 0} @click=${() => this.#run('redo')}>Do again</button>
        <button class="roomy" aria-pressed=${comparing} @click=${() => this.#run('side-by-side')}>Side by side</button>
        <button @click=${() => this.#run('commands')}>Commands</button>
      </header>
      ${banner(desk)}
      <tt-sheet-list class=${this.#over.has('sheets') ? 'open' : ''} @keydown=${this.#over.escape} .sheets=${book.sheets} .current=${sheet.id}
        @tt-open-sheet=${(event: CustomEvent<{ sheet: number }>) => { this.#over.show(null); desk.openSheet(event.detail.sheet); this.grid.focus(); }}
        @tt-run=${(event: CustomEvent<{ id: string }>) => { this.#over.show(null); this.#run(event.detail.id); }}></tt-sheet-list>
      ${this.#over.has('sheets') ? html`<button class="veil" aria-label="Close the list of sheets" @click=${this.#over.close}></button>` : nothing}
      <main>
        <tt-entry-line .place=${cellName(row, col)} .name=${nameOf(book, desk.area)} .label=${rowLabel(sheet, row, col)} .sheet=${sheet.id} .row=${row} .col=${col}
          .raw=${raw} .fault=${result.kind === 'error' ? result.sentence : remark} ?remark=${result.kind !== 'error'} .cards=${this.cards} .names=${names}
          .sheets=${sheets} ?readonly=${desk.reading !== null}></tt-entry-line>
        <tt-grid .view=${this.#sheetView()} .selection=${selection} .rawAt=${this.#rawAt}
          .threads=${this.#cells.threads} .cards=${this.cards} .names=${names} .sheets=${sheets}
          ?readonly=${desk.reading !== null}></tt-grid>
      </main>
      <aside class=${this.#over.has('panel') ? 'open' : ''} @keydown=${this.#over.escape} aria-label=${PANEL_TITLES[this.panel]}>
        ${this.panel === 'working' || comparing ? html`<button class="panel-close" @click=${this.#over.close}>Close</button>` : nothing}
        ${comparing
          ? html`<tt-side-by-side .comparison=${this.#comparing.comparison} .as=${desk.showAs} .candidate=${this.#candidate()}></tt-side-by-side>`
          : this.panel !== 'working' ? this.#panels.render(this.panel)
          : html`<tt-working .heading=${rowLabel(sheet, row, col)} .place=${`${sheet.name} ${cellName(row, col)}`} .raw=${raw} .result=${result}
              .working=${this.working} .remark=${remark} .note=${cell?.note ?? ''} .as=${showAsFor(cell, desk.showAs)}></tt-working>`}
      </aside>
      <footer>
        ${desk.said ? html`<span class="said">${desk.said}</span>` : html`<span class="hint">Typed figures are basted; the rest is worked out.</span>`}
        <button class="show-panel" aria-expanded=${this.#over.has('panel')} @click=${() => this.#over.open('panel')}>${PANEL_TITLES[this.panel]}</button>
        <span class="end took">${engineInWords(desk)}</span>
      </footer>
      <div class="aloud" role="status" aria-live="polite">${desk.said}</div>
      ${this.#dialogs.render()}
      ${this.#panels.renderDialogs()}
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
      if (!typeInto(desk, cell, raw)) event.preventDefault();
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
      if (area) desk.selectArea(area);
      else if (text !== undefined) goTo(desk, text);
      this.grid.focus();
    });
    on<{ text: string }>('tt-name', ({ text }) => {
      nameSelection(desk, text);
      this.grid.focus();
    });
    on('tt-close', () => { this.panel = 'working'; this.#over.show(null); this.grid.focus(); });
    on<Parameters<Comparing['change']>[0]>('tt-compare', (change) => {
      this.#comparing.change(change, { sheet: desk.sheetId, ...desk.selection.focus }, desk.book);
      this.#compare();
    });
    this.#dialogs.listen(renderRoot);
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
    void this.#fetchWorking();
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
    const seen = [desk.sheet, desk.results.revision, desk.book.settings, desk.waiting, reach];
    if (!this.#view || seen.some((each, at) => each !== this.#seen[at])) {
      this.#seen = seen;
      this.#view = sheetView(desk.sheet, desk.results, desk.showAs, desk.waiting, reach);
    }
    return this.#view;
  }

  async #fetchWorking(): Promise<void> {
    const { desk } = this;
    const { row, col } = desk.selection.focus;
    const raw = cellAt(desk.sheet, row, col)?.raw ?? '';
    const cell = `${desk.sheetId} ${row} ${col} ${raw}`;
    const key = `${cell} ${desk.results.revision}`;
    if (key === this.#workingOf) return;
    // Another cell's working must not stand under this one's heading, however long the answer takes.
    if (!this.#workingOf.startsWith(`${cell} `)) this.working = null;
    this.#workingOf = key;
    if (!raw.startsWith('=') || !desk.engine) return;
    const working = await desk.engine.working({ sheet: desk.sheetId, row, col }).catch(() => null);
    if (key === this.#workingOf) this.working = working;
  }

  #candidate(): string {
    const { desk } = this;
    const { row, col } = desk.selection.focus;
    return cellAt(desk.sheet, row, col)?.raw ? placeName(desk.book, { sheet: desk.sheetId, row, col }) : '';
  }

  #compare(): void {
    const { desk } = this;
    if (this.panel === 'side-by-side' && desk.engine) void this.#comparing.refresh(desk.book, desk.engine);
  }

  #show(panel: PanelName): void {
    this.panel = panel;
    this.#over.show('panel');
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
      ...this.#cells.screens,
      ...this.#panels.screens,
      openCommands: () => this.commandList.open(desk),
      openReference: () => this.#openReference(),
      compare: () => {
        this.#show(this.panel === 'side-by-side' ? 'working' : 'side-by-side');
        this.#compare();
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
  readonly #results = () => this.#compare();
}

declare global {
  interface HTMLElementTagNameMap { 'tt-app': App }
}
