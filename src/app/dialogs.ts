/** Every dialog of the app: what it is shown, and how the wishes that come from it are granted. */
import { html, type TemplateResult } from 'lit';
import type { ExportTable, ImportChart, ImportEvent, PutExampleEvent, RenamePanel, TemplateCard, Titles, Tried } from '../panels/index.ts';
import type { LaterTag } from '../panels/later.ts';
import { cellName } from '../formula/index.ts';
import type { TemplateStore } from '../keeping/index.ts';
import type { FunctionCard } from '../reckoning/index.ts';
import { cellAt, nameCalled, nameFault, readTemplate, sheetFromTemplate, sheetNameFault, templateFrom, usedArea, type Edit, type Template } from '../workbook/index.ts';
import type * as Charts from './chart-edit.ts';
import type { Screens } from './commands.ts';
import type { KeepScreens } from './keep-commands.ts';
import type { Desk } from './desk.ts';
import type { MendScreens } from './explaining.ts';
import type { CellScreens } from './grid-commands.ts';
import { fitted, tryExample } from './function-reference.ts';
import { areaInWords, goTo, nameSelection } from './naming.ts';
import { unseen } from './out-of-sight.ts';
import { sheetTable } from './out-tables.ts';
import { fileName, saveFile } from './save-file.ts';
import type { PrintScreens } from './print-commands.ts';
import type { PanelScreens } from './side-panels.ts';
import type * as Shipped from './shipped.ts';
import { NOT_FETCHED, summon } from './summon.ts';
import { typeInto } from './wishes.ts';

/** A template file larger than this is no template. */
const MOST_BYTES = 5_000_000;

interface Host {
  readonly renderRoot: HTMLElement | DocumentFragment;
  requestUpdate(): void;
}

export class Dialogs {
  #own: readonly { readonly id: string; readonly template: Template }[] = [];
  #store: TemplateStore | null = null;
  #shipped: typeof Shipped | null = null;
  #charts: typeof Charts | null = null;
  #sentence = '';
  #functions: readonly FunctionCard[] = [];
  #trying = '';
  #tried: Tried | null = null;

  constructor(private readonly host: Host, private readonly desk: () => Desk) {}

  async useStore(store: TemplateStore): Promise<void> {
    this.#store = store;
    this.#own = await store.list();
    this.host.requestUpdate();
  }

  learn(functions: readonly FunctionCard[]): void {
    this.#functions = functions;
    this.host.requestUpdate();
  }

  /** @param name the function to show at once */
  openReference(name: string | undefined): void {
    this.#say('');
    this.#open('tt-reference', (panel) => panel.open(name));
  }

  get screens(): Omit<Screens, keyof CellScreens | keyof KeepScreens | keyof PanelScreens | keyof PrintScreens | keyof MendScreens | 'openCommands' | 'openReference' | 'compare' | 'setTheme'> {
    return {
      openTemplates: () => void this.#fetch(async () => {
        this.#shipped ??= await import('./shipped.ts');
        this.#say('');
        this.#open('tt-templates', (panel) => panel.openStart());
      }),
      openKeepTemplate: () => this.#open('tt-templates', (panel) => panel.openKeep()),
      openImport: () => void this.#fetch(async () => {
        this.#charts ??= await import('./chart-edit.ts');
        this.#open('tt-import-chart', (panel) => panel.open());
      }),
      openExport: (what) => this.#openExport(what),
      openNames: () => { this.#say(''); this.#open('tt-names', (panel) => panel.open()); },
      openRename: () => {
        const { book, sheet } = this.desk();
        this.#say('');
        this.#open('tt-rename', (panel) => panel.open({ title: book.title, person: book.person, sheet: sheet.name, about: sheet.about ?? '' }));
      },
    };
  }

  render(): TemplateResult {
    const { book, sheet, area, selection: { focus }, showAs, reading } = this.desk();
    const marked = sheet.rows.reduce((sum, row) => sum + (row?.filter((cell) => cell?.input).length ?? 0), 0);
    return html`
      <tt-templates .templates=${this.#cards()} .sentence=${this.#sentence} .sheetName=${sheet.name} .inputs=${marked}></tt-templates>
      <tt-import-chart .taken=${{ sheets: book.sheets.map(({ name }) => name), names: book.names.map(({ name }) => name) }}></tt-import-chart>
      <tt-export-table></tt-export-table>
      <tt-names .names=${book.names.map(({ name, area: at, kind }) => ({ name, chart: kind === 'chart', lost: !at, place: at ? areaInWords(book, at) : 'its cells were removed' }))}
        .selected=${areaInWords(book, area)} .sentence=${this.#sentence}></tt-names>
      <tt-rename .sentence=${this.#sentence}></tt-rename>
      <tt-reference .cards=${this.#functions} .tried=${this.#tried} .as=${showAs} .sentence=${this.#sentence}
        .place=${reading === null ? `${sheet.name} ${cellName(focus.row, focus.col)}` : ''} .filled=${cellAt(sheet, focus.row, focus.col)?.raw ? true : false}></tt-reference>
    `;
  }

  listen(root: EventTarget): void {
    const on = <T>(type: string, handle: (detail: T, event: Event) => void) => root.addEventListener(type, (event) => {
      this.#say('');
      handle((event as CustomEvent<T>).detail, event);
      this.host.requestUpdate();
    });
    on<{ id: string }>('tt-start-template', ({ id }) => this.#start(id));
    on<{ id: string }>('tt-save-template', ({ id }) => {
      const template = this.#template(id);
      if (template) saveFile(fileName(template.name, 'json'), new Blob([`${JSON.stringify(template, null, 2)}\n`], { type: 'application/json' }));
    });
    on<{ id: string }>('tt-remove-template', ({ id }) => void this.#change((store) => store.remove(id)));
    on<{ file: File }>('tt-open-template', ({ file }) => void this.#openFile(file));
    on<{ name: string; note: string }>('tt-keep-template', ({ name, note }) => {
      const { book, sheetId } = this.desk();
      void this.#change((store) => store.put(templateFrom(book, sheetId, name, note)), `Kept as the template “${name}”.`);
    });
    on<ImportEvent['detail']>('tt-import', ({ sheetName, chartName, reading }, event) => {
      const { edit, sheet } = this.#charts!.chartSheetEdit(reading, { sheet: sheetName, name: chartName }, this.desk().book);
      if (this.desk().do(edit)) this.desk().openSheet(sheet);
      else {
        event.preventDefault();
        this.#get<ImportChart>('tt-import-chart').refuse(this.desk().said);
      }
    });
    on<{ name: string; blob: Blob }>('tt-save-file', ({ name, blob }) => saveFile(name, blob));
    on<{ grid: ExportTable['grid']; title: string }>('tt-export-grid', ({ grid, title }) => this.#showExport(grid, title));
    on<{ name: string }>('tt-go-name', ({ name }) => goTo(this.desk(), name));
    on<{ from: string; to: string }>('tt-rename-name', ({ from, to }) => {
      const fault = nameFault(to, this.desk().book, from);
      if (fault) this.#say(fault);
      else if (!this.desk().do({ do: 'renameName', name: from, to })) this.#say(this.desk().said);
    });
    on<{ name: string }>('tt-remove-name', ({ name }) => this.desk().do({ do: 'setName', name, target: null }));
    on<{ name: string; chart: boolean }>('tt-add-name', ({ name, chart }, event) => {
      const taken = nameCalled(this.desk().book, name);
      if (taken?.area) this.#say(`The name “${taken.name}” is taken. Choose another, or rename that one first.`);
      // Its cells were removed: it stands for these from now on.
      else if (taken && this.desk().do({ do: 'setName', name: taken.name, target: { area: this.desk().area, kind: chart ? 'chart' : taken.kind } })) return;
      else if (!nameSelection(this.desk(), name, chart)) this.#say(this.desk().said);
      else return;
      event.preventDefault();
    });
    on<Titles>('tt-rename', (titles) => this.#rename(titles));
    on<{ formula: string }>('tt-try-example', ({ formula }) => void this.#try(formula));
    on<PutExampleEvent['detail']>('tt-put-example', ({ formula, needs }, event) => {
      const desk = this.desk();
      if (typeInto(desk, { sheet: desk.sheetId, ...desk.selection.focus }, fitted(formula, needs, desk.book))) return;
      event.preventDefault();
      this.#say(desk.said);
    });
  }

  async #try(formula: string): Promise<void> {
    this.#trying = formula;
    const tried = await tryExample(this.desk().engine, formula);
    // A later formula may have been answered before.
    if (this.#trying !== formula) return;
    this.#tried = tried;
    this.host.requestUpdate();
  }

  #rename({ title, person, sheet, about }: Titles): void {
    const desk = this.desk();
    const now = desk.sheet;
    const fault = sheetNameFault(sheet.trim(), desk.book, now.id);
    if (fault) {
      this.#say(fault);
      return;
    }
    const edits: Edit[] = [];
    if (title.trim() !== desk.book.title || person.trim() !== desk.book.person) edits.push({ do: 'setTitle', title: title.trim(), person: person.trim() });
    if (sheet.trim() !== now.name) edits.push({ do: 'renameSheet', sheet: now.id, name: sheet.trim() });
    if (about.trim() !== (now.about ?? '')) edits.push({ do: 'setAbout', sheet: now.id, about: about.trim() });
    if (edits.length === 0 || desk.do(edits.length === 1 ? edits[0]! : { do: 'many', label: 'rename', edits })) this.#get<RenamePanel>('tt-rename').close();
    else this.#say(desk.said);
  }

  #start(id: string): void {
    const template = this.#template(id);
    if (!template) return;
    const desk = this.desk();
    const { edit, sheet, problems } = sheetFromTemplate(template, desk.book);
    if (!desk.do(edit)) return;
    desk.openSheet(sheet);
    if (problems.length) desk.say(problems.join(' '));
  }

  async #openFile(file: File): Promise<void> {
    const { template, sentence } = await readTemplateFile(file);
    if (!template) this.#say(sentence);
    else await this.#change((store) => store.put(template), `The template “${template.name}” is kept with yours.${sentence ? ` ${sentence}` : ''}`);
    this.host.requestUpdate();
  }

  async #change(change: (store: TemplateStore) => Promise<unknown>, done = ''): Promise<void> {
    try {
      if (!this.#store) throw new Error('This browser keeps nothing here just now.');
      await change(this.#store);
      this.#own = await this.#store.list();
      if (done) this.desk().say(done);
    } catch (error) {
      this.#say(`That could not be kept: ${error instanceof Error ? error.message : String(error)} Save the template as a file instead.`);
      this.desk().say(this.#sentence);
    }
    this.host.requestUpdate();
  }

  #template(id: string): Template | undefined {
    return this.#own.find((each) => each.id === id)?.template ?? (this.#shipped?.SHIPPED_IDS.includes(id) ? this.#shipped.shippedTemplate(id) : undefined);
  }

  #cards(): TemplateCard[] {
    const card = (id: string, { name, note }: Template, own: boolean): TemplateCard => ({ id, name, note, own });
    return [
      ...this.#own.map(({ id, template }) => card(id, template, true)),
      ...(this.#shipped?.SHIPPED_IDS.map((id) => card(id, this.#shipped!.shippedTemplate(id), false)) ?? []),
    ];
  }

  #openExport(what: 'sheet' | 'selection'): void {
    const desk = this.desk();
    const area = what === 'sheet' ? usedArea(desk.sheet) : desk.area;
    if (!area) desk.say('There is nothing in this sheet to save yet.');
    else this.#showExport(sheetTable(desk, area), `${desk.book.title} ${desk.sheet.name}`, unseen(desk.sheet, area));
  }

  #showExport(grid: ExportTable['grid'], title: string, leftOut = ''): void {
    this.#open('tt-export-table', (panel) => {
      panel.grid = grid;
      panel.title = title;
      panel.leftOut = leftOut;
      panel.as = this.desk().showAs;
      panel.open();
    });
  }

  /** What a dialog needs besides itself, fetched once. */
  async #fetch(open: () => Promise<void>): Promise<void> {
    await open().catch(() => this.desk().say(NOT_FETCHED));
  }

  #open<Tag extends LaterTag>(tag: Tag, open: (panel: HTMLElementTagNameMap[Tag]) => void): void {
    summon(this.host, tag, open, (sentence) => this.desk().say(sentence));
  }

  #get<T extends Element>(tag: string): T {
    return this.host.renderRoot.querySelector<T>(tag)!;
  }

  #say(sentence: string): void {
    this.#sentence = sentence;
    this.host.requestUpdate();
  }
}

async function readTemplateFile(file: File): Promise<{ template: Template | null; sentence: string }> {
  if (file.size > MOST_BYTES) return { template: null, sentence: `“${file.name}” is too large to be a template (${Math.round(file.size / 1e6)} MB; the most is 5 MB).` };
  try {
    const { template, problems } = readTemplate(JSON.parse(await file.text()));
    return { template, sentence: template ? problems.join(' ') : `“${file.name}” is not a template of this workbook. ${problems.join(' ')}` };
  } catch {
    return { template: null, sentence: `“${file.name}” is not a template of this workbook: it is not JSON. Choose a file that “Save as a file” made.` };
  }
}
