/** At the table: the reading view, its steps, ticks and pictures, and the screen kept on. */
import { html } from 'lit';
import type { WorkingCall, Result } from '../reckoning/index.ts';
import { KeptAwake } from './at-the-table-awake.ts';
import { tableSteps, type Step } from './at-the-table-steps.ts';
import type { MorePanel, PanelHost } from './more-panels.ts';
import { cellKey, tickEdit } from './ticks.ts';

export function panel(host: PanelHost): MorePanel {
  return new AtTheTable(host);
}

interface Drawn {
  readonly of: string;
  readonly call: WorkingCall | null;
  readonly result: Result;
}

class AtTheTable implements MorePanel {
  #open = false;
  /** The step in view, by its id: steps come and go as figures change. */
  #at = '';
  #sentence = '';
  #of: readonly unknown[] = [];
  #steps: readonly Step[] = [];
  #drawn: Drawn | null = null;
  #drawing = '';
  readonly #awake: KeptAwake;

  constructor(private readonly host: PanelHost) {
    this.#awake = new KeptAwake(() => this.host.draw());
  }

  /** She goes on where she stopped. */
  opened(): void {
    if (this.#open) return;
    this.#open = true;
    this.#sentence = '';
    const steps = this.#gathered;
    const begun = steps.some(({ state }) => state.state !== 'no');
    this.#at = (begun ? steps.find(({ tick, state }) => tick !== null && state.state !== 'yes') ?? steps.at(-1) : steps[0])?.id ?? '';
    this.#awake.begin();
  }

  closed(): void {
    this.#open = false;
    this.#awake.end();
  }

  render() {
    const { desk } = this.host;
    const steps = this.#gathered;
    const at = Math.max(0, steps.findIndex(({ id }) => id === this.#at));
    const step = steps[at];
    if (step) void this.#draw(step);
    const drawn = step?.pictured && this.#drawn?.of === this.#keyOf(step) ? this.#drawn : null;
    return html`<tt-at-the-table .steps=${steps} .at=${at} .title=${desk.book.title} .person=${desk.book.person} .awake=${this.#awake.state} .sentence=${this.#sentence}
      .call=${drawn?.call ?? null} .result=${drawn?.result ?? { kind: 'empty' }} .as=${{ ...desk.showAs, system: 'both' as const }} ?readonly=${desk.reading !== null}
      @tt-step=${(event: CustomEvent<{ at: number }>) => this.#go(event.detail.at)}
      @tt-tick=${(event: CustomEvent<{ id: string; on: boolean }>) => this.#tick(event.detail)}></tt-at-the-table>`;
  }

  get #gathered(): readonly Step[] {
    const { book, results, showAs } = this.host.desk;
    const of = [book, results.revision];
    if (of.some((each, at) => each !== this.#of[at])) {
      this.#of = of;
      this.#steps = tableSteps(book, results, showAs);
    }
    return this.#steps;
  }

  #go(at: number): void {
    const steps = this.#gathered;
    this.#at = steps[Math.min(steps.length - 1, Math.max(0, at))]?.id ?? '';
    this.#sentence = '';
    this.host.draw();
  }

  #tick({ id, on }: { readonly id: string; readonly on: boolean }): void {
    const { desk } = this.host;
    const place = this.#gathered.find((step) => step.id === id)?.tickAt;
    if (!place) return;
    this.#at = id;
    this.#sentence = desk.do(tickEdit(desk.book, 'table', [{ cell: place.cell, now: on ? place.now : null }])) ? '' : desk.said;
    this.host.draw();
  }

  #keyOf({ pictured }: Step): string {
    return pictured ? `${cellKey(pictured)} ${this.host.desk.results.revision}` : '';
  }

  /** The worker tells what went into the picture. */
  async #draw(step: Step): Promise<void> {
    const { engine } = this.host.desk;
    const of = this.#keyOf(step);
    if (!step.pictured || !engine || this.#drawing === of) return;
    this.#drawing = of;
    const working = await engine.working(step.pictured).catch(() => null);
    if (this.#drawing !== of) return;
    this.#drawn = { of, call: working?.call ?? null, result: working?.result ?? { kind: 'empty' } };
    if (this.#open) this.host.draw();
  }
}
