/**
 * The panels at the side other than the working: find and
 * replace, how cells show, the history. What they are shown, and how their
 * wishes are granted.
 */
import { html, type TemplateResult, type nothing } from 'lit';
import type { FindWish, LookChange } from '../panels/index.ts';
import type { LaterTag } from '../panels/later.ts';
import { cellAt } from '../workbook/index.ts';
import { changeLook, lookOff, looksMixed } from './arrange.ts';
import { CellDialogs, type CellDialogScreens } from './cell-dialogs.ts';
import { textAt } from './cell-values.ts';
import type { Desk } from './desk.ts';
import { Finding } from './finding.ts';
import { LookingBack } from './looking-back.ts';
import { MORE_PANELS, MorePanels, type MoreName, type PanelHost } from './more-panels.ts';
import { areaInWords } from './naming.ts';
import { Pins } from './pins.ts';
import { summon } from './summon.ts';
import { toggleInput } from './wishes.ts';

type OwnPanel = 'working' | 'find' | 'format' | 'history' | 'pins';
export type PanelName = OwnPanel | MoreName;

const PANEL_TITLES: Readonly<Record<OwnPanel, string>> = {
  working: 'Working', find: 'Find and replace', format: 'How cells show', history: 'History', pins: 'Pins',
};

export const panelTitle = (panel: PanelName): string => PANEL_TITLES[panel as OwnPanel] ?? MORE_PANELS[panel]?.title ?? '';

export const isWide = (panel: PanelName): boolean => MORE_PANELS[panel]?.place === 'wide side';

const TAGS = { find: 'tt-find', format: 'tt-cell-format', history: 'tt-history', pins: 'tt-pins' } as const satisfies Partial<Record<OwnPanel, LaterTag>>;
const PANELS: readonly string[] = [...Object.values(TAGS), ...Object.values(MORE_PANELS).map(({ tag }) => tag)];

export interface PanelScreens extends CellDialogScreens {
  openFind(replace: boolean): void;
  findStep(by: 1 | -1): void;
  openFormat(): void;
  openHistory(onlyCell: boolean): void;
  openPins(): void;
  nextPin(): void;
  mendPin(): void;
  acknowledgePin(): void;
  openPanel(name: MoreName): void;
}

interface Host {
  readonly keep: PanelHost['keep'];
  readonly renderRoot: HTMLElement | DocumentFragment;
  readonly updateComplete: Promise<unknown>;
  requestUpdate(): void;
}

export class SidePanels {
  readonly #finding: Finding;
  readonly #lookingBack: LookingBack;
  readonly #dialogs: CellDialogs;
  readonly pins: Pins;
  readonly more: MorePanels;

  /** @param shell brings a panel to the side, and goes back to the cells */
  constructor(private readonly host: Host, private readonly desk: () => Desk, private readonly shell: { show(panel: PanelName): void; hide(): void }) {
    this.#finding = new Finding(desk, () => host.requestUpdate());
    this.#lookingBack = new LookingBack(desk);
    this.#dialogs = new CellDialogs(host, desk);
    this.pins = new Pins(desk);
    this.more = new MorePanels(host, desk, shell);
  }

  get screens(): PanelScreens {
    return {
      ...this.#dialogs.screens,
      openFind: (replace) => void this.#open('find', { replace }),
      findStep: (by) => {
        if (this.#finding.wish.text === '') this.screens.openFind(false);
        else this.#finding.step(by);
      },
      openFormat: () => void this.#open('format'),
      openHistory: (onlyCell) => {
        this.#lookingBack.showCell(onlyCell);
        void this.#open('history');
      },
      openPins: () => {
        this.pins.asking = '';
        void this.#open('pins');
      },
      nextPin: () => this.pins.next(),
      mendPin: () => this.pins.mendHere(),
      acknowledgePin: () => {
        if (this.pins.askHere()) void this.#open('pins');
      },
      openPanel: this.more.open,
    };
  }

  /** `nothing` for a panel that is not one of these. */
  render(panel: PanelName): TemplateResult | typeof nothing {
    const desk = this.desk();
    const readonly = desk.reading !== null;
    switch (panel) {
      case 'find': {
        const finding = this.#finding;
        finding.refresh();
        return html`<tt-find .wish=${finding.wish} .found=${finding.rows} ?looking=${finding.looking} .count=${finding.count} .at=${finding.at} .sheetName=${desk.sheet.name} .sentence=${finding.sentence} ?readonly=${readonly}></tt-find>`;
      }
      case 'format': {
        const { row, col } = desk.selection.focus;
        const cell = cellAt(desk.sheet, row, col);
        return html`<tt-cell-format .place=${areaInWords(desk.book, desk.area)} .sample=${textAt(desk, desk.sheetId)(row, col)} .look=${cell?.look ?? {}} ?input=${cell?.input ?? false}
          ?mixed=${looksMixed(desk)} ?readonly=${readonly}></tt-cell-format>`;
      }
      case 'history': {
        const back = this.#lookingBack;
        const { rows, earlier } = back.shown;
        return html`<tt-history .rows=${rows} ?earlier=${earlier} .cell=${back.cell} ?onlyCell=${back.onlyCell} ?readonly=${readonly}></tt-history>`;
      }
      case 'pins': {
        const { pins } = this;
        const { sheets, more } = pins.listed;
        return html`<tt-pins .sheets=${sheets} .more=${more} .asking=${pins.asking} .at=${pins.at} ?readonly=${readonly}></tt-pins>`;
      }
      default: return this.more.render(panel);
    }
  }

  renderDialogs(): TemplateResult {
    return this.#dialogs.render();
  }

  listen(root: EventTarget): void {
    const on = <T>(type: string, handle: (detail: T) => void) => root.addEventListener(type, (event) => {
      handle((event as CustomEvent<T>).detail);
      this.host.requestUpdate();
    });
    on<FindWish>('tt-find', (wish) => this.#finding.seek(wish));
    on<{ at: number }>('tt-find-go', ({ at }) => this.#finding.go(at));
    on<{ by: 1 | -1 }>('tt-find-step', ({ by }) => this.#finding.step(by));
    on<{ at: number | null; by: string }>('tt-replace', ({ at, by }) => this.#finding.replace(at, by));
    on<LookChange>('tt-look', (change) => changeLook(this.desk(), change));
    on('tt-look-off', () => lookOff(this.desk()));
    on('tt-mark-input', () => toggleInput(this.desk()));
    on<{ onlyCell: boolean }>('tt-history', ({ onlyCell }) => this.#lookingBack.showCell(onlyCell));
    on('tt-history-more', () => this.#lookingBack.showMore());
    on<{ index: number }>('tt-restore-cell', ({ index }) => this.#lookingBack.putBack(index));
    on<{ index: number }>('tt-restore-book', ({ index }) => this.#lookingBack.restoreBook(index));
    const { pins } = this;
    on<{ id: string }>('tt-mend-pin', ({ id }) => pins.mend(pins.byId(id)));
    on<{ id: string | null }>('tt-ask-pin', ({ id }) => { pins.asking = id ?? ''; });
    on<{ id: string; note: string }>('tt-acknowledge', ({ id, note }) => pins.acknowledge(pins.byId(id), note));
    on<{ id: string }>('tt-pin-again', ({ id }) => pins.pinAgain(pins.byId(id)));
    root.addEventListener('keydown', (event) => {
      const panel = event.composedPath().find((each) => each instanceof HTMLElement && PANELS.includes(each.localName));
      if (!panel || (event as KeyboardEvent).key !== 'Escape' || (event as KeyboardEvent).isComposing) return;
      event.preventDefault();
      panel.dispatchEvent(new CustomEvent('tt-close', { bubbles: true, composed: true }));
    });
    this.#dialogs.listen(root);
    on('tt-book-start', () => this.more.open('start-own'));
  }

  /** @param focus handed to the panel, which takes the focus */
  async #open(panel: keyof typeof TAGS, focus?: FocusOptions & { readonly replace?: boolean }): Promise<void> {
    this.shell.show(panel);
    await this.host.updateComplete;
    summon(this.host, TAGS[panel], async (element) => {
      await element.updateComplete;
      element.focus(focus);
    }, (sentence) => {
      this.shell.show('working');
      this.desk().say(sentence);
    });
  }
}
