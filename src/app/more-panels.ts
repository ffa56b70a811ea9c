/**
 * Panels that come with their own controller, fetched together when one is
 * first asked for: at the side, or over the whole page. Each is a line here, a
 * command that calls `openPanel`, and a module that exports `panel`.
 */
import { html, nothing, type TemplateResult } from 'lit';
import { LATER, type LaterTag } from '../panels/later.ts';
import type { Desk } from './desk.ts';
import type { KeepDialogs } from './keep-dialogs.ts';
import { NOT_FETCHED } from './summon.ts';

/** What a panel's controller is given. */
export interface PanelHost {
  readonly desk: Desk;
  /** The shelf, and going to another workbook. */
  readonly keep: Pick<KeepDialogs, 'keeping' | 'start'>;
  /** Ask to be drawn again; what changes on the desk asks by itself. */
  draw(): void;
  /** Goes back to the cells. */
  close(): void;
}

/** Made once, when the panel is first opened, and kept. */
export interface MorePanel {
  /** Drawn with the page for as long as the panel is open: its element, with what it shows and what becomes of its wishes. */
  render(): TemplateResult;
  /** Each time it is opened, before it is drawn. */
  opened?(): void;
  closed?(): void;
}

interface Card {
  readonly title: string;
  readonly tag: LaterTag;
  /** `whole`: over the page instead of at its side. */
  readonly place: 'side' | 'wide side' | 'whole';
  readonly load: () => Promise<{ readonly panel: (host: PanelHost) => MorePanel }>;
}

export type MoreName = string;

export const MORE_PANELS: Readonly<Record<MoreName, Card>> = {
  lay: { title: 'The lay', tag: 'tt-lay', place: 'whole', load: () => import('./lay.ts') },
  shapes: { title: 'Drawn shapes', tag: 'tt-shapes', place: 'whole', load: () => import('./shape.ts') },
  people: { title: 'People', tag: 'tt-people', place: 'wide side', load: () => import('./people.ts') },
  worked: { title: 'What worked', tag: 'tt-worked-form', place: 'wide side', load: () => import('./worked.ts') },
  'start-own': { title: 'Start my own', tag: 'tt-start-own', place: 'whole', load: () => import('./start-own.ts') },
  'side-by-side': { title: 'Side by side', tag: 'tt-side-by-side', place: 'wide side', load: () => import('./comparing.ts') },
  'size-choice': { title: 'Choose the size', tag: 'tt-size-choice', place: 'wide side', load: () => import('./size-choice.ts') },
  'run-of-values': { title: 'Run of values', tag: 'tt-run-of-values', place: 'wide side', load: () => import('./run-of-values.ts') },
  'work-back': { title: 'Work back', tag: 'tt-work-back', place: 'side', load: () => import('./work-back.ts') },
  'to-buy': { title: 'To buy', tag: 'tt-to-buy', place: 'wide side', load: () => import('./to-buy.ts') },
  'at-the-table': { title: 'At the table', tag: 'tt-at-the-table', place: 'whole', load: () => import('./at-the-table.ts') },
};

interface Host {
  readonly keep: PanelHost['keep'];
  readonly renderRoot: HTMLElement | DocumentFragment;
  readonly updateComplete: Promise<unknown>;
  requestUpdate(): void;
}

export class MorePanels {
  readonly #made = new Map<MoreName, MorePanel>();
  /** The one over the whole page. */
  whole: MoreName | null = null;
  #side: MoreName | null = null;

  constructor(private readonly host: Host, private readonly desk: () => Desk, private readonly shell: { show(panel: MoreName): void; hide(): void }) {}

  readonly open = (name: MoreName): void => {
    const card = MORE_PANELS[name];
    if (!card) throw new Error(`There is no panel ${name}.`);
    const made = this.#made.get(name);
    if (made) void this.#show(name, card, made);
    else {
      Promise.all([card.load(), LATER[card.tag]()]).then(([{ panel }]) => {
        const { desk } = this;
        const one = panel({
          get desk() { return desk(); },
          keep: this.host.keep,
          draw: () => this.host.requestUpdate(),
          close: () => this.shell.hide(),
        });
        this.#made.set(name, one);
        return this.#show(name, card, one);
      }, () => this.desk().say(NOT_FETCHED));
    }
  };

  async #show(name: MoreName, card: Card, made: MorePanel): Promise<void> {
    if (this.whole && this.whole !== name) this.#made.get(this.whole)?.closed?.();
    if (card.place === 'whole') this.whole = name;
    else if (this.#side !== name) {
      if (this.#side) this.#made.get(this.#side)?.closed?.();
      this.#side = name;
    }
    made.opened?.();
    this.shell.show(name);
    this.host.requestUpdate();
    await this.host.updateComplete;
    this.host.renderRoot.querySelector<HTMLElement>(card.tag)?.focus();
  }

  /** The shell says what is at its side now. */
  at(side: string): void {
    if (this.#side === null || this.#side === side) return;
    this.#made.get(this.#side)?.closed?.();
    this.#side = null;
  }

  closeWhole(): void {
    if (this.whole) this.#made.get(this.whole)?.closed?.();
    this.whole = null;
  }

  render(name: string): TemplateResult | typeof nothing {
    return this.#made.get(name)?.render() ?? nothing;
  }

  renderWhole(): TemplateResult | typeof nothing {
    return this.whole ? html`<section class="whole" aria-label=${MORE_PANELS[this.whole]?.title ?? ''}>${this.render(this.whole)}</section>` : nothing;
  }
}

/** Fetches all of them, so that each is at hand without a network. */
export async function fetchMorePanels(): Promise<void> {
  for (const { load } of Object.values(MORE_PANELS)) await load().catch(() => undefined);
}
