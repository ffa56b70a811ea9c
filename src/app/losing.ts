/** Asks before names lose the cells they stand for. */
import { labelOf, type Edit } from '../workbook/index.ts';
import { LossEvent, type Desk } from './desk.ts';
import { summon } from './summon.ts';

interface Host {
  readonly renderRoot: HTMLElement | DocumentFragment;
}

export class Losing {
  #edit: Edit | null = null;

  constructor(private readonly host: Host, private readonly desk: () => Desk, private readonly back: () => void) {}

  readonly ask = (event: Event): void => {
    if (!(event instanceof LossEvent)) return;
    event.preventDefault();
    this.#edit = event.edit;
    const { lost } = event;
    const label = labelOf(event.edit, this.desk().book);
    summon(this.host, 'tt-losses', (panel) => panel.open(label, lost), (sentence) => this.desk().say(sentence));
  };

  listen(root: EventTarget): void {
    root.addEventListener('tt-losses', (event) => {
      const edit = this.#edit;
      this.#edit = null;
      const desk = this.desk();
      if (edit && (event as CustomEvent<{ go: boolean }>).detail.go && desk.doSurely(edit)) desk.say('Done. Undo brings back what was removed.');
      this.back();
    });
  }
}
