/**
 * The text area that lies over the active cell for as long as the grid has the
 * focus. At rest it is empty and cannot be seen: keys that mean a move are
 * taken (see keys.ts), and anything else that makes text, an input method's
 * composition from its very first key included, opens the editor by itself.
 *
 * Three states:
 *  rest    nothing is being edited;
 *  anew    typing replaces the cell's text; arrows keep it and go on, or point at cells in a formula;
 *  within  editing the text that was there (F2, Enter, double click); arrows move the caret.
 */
import type { ReactiveController } from 'lit';
import { FormulaEditor, type EditorHost } from './formula-editor.ts';
import { arrowOf, type GoneBy } from './keys.ts';
import { pointedName } from './pointing.ts';
import { at, goTo, step, type Ground } from './select.ts';
import { send, type Then } from './events.ts';
import type { CellAddress } from '../workbook/types.ts';
import type { CellPlace, Selection, SheetView } from './view.ts';

/** What the editor needs of the grid. */
export interface CellEditorHost extends EditorHost {
  readonly readonly: boolean;
  readonly view: SheetView;
  readonly selection: Selection;
  readonly ground: Ground;
  rawAt(row: number, col: number): string;
  /** Moves on after something was entered. */
  go(then: Then, by: GoneBy): void;
  /** Brings a cell into view. */
  reveal(place: CellPlace): void;
}

export type EditState = 'rest' | 'anew' | 'within';

export class CellEditor implements ReactiveController {
  state: EditState = 'rest';
  /** The cell being edited, or edited last. */
  place: CellAddress = { sheet: 0, row: 0, col: 0 };
  /** The block that was pointed at for the formula, to be outlined. */
  pointed: Selection | null = null;
  readonly core: FormulaEditor;
  #before = '';

  constructor(private readonly host: CellEditorHost, readonly field: () => HTMLTextAreaElement | null) {
    host.addController(this);
    this.core = new FormulaEditor(host, field, () => this.#tell());
  }

  get open(): boolean {
    return this.state !== 'rest';
  }

  get text(): string {
    return this.core.text;
  }

  /** Opens the editor on the active cell: on its text, or anew. */
  start(state: 'anew' | 'within'): void {
    if (this.host.readonly || this.open) return;
    const { focus } = this.host.selection;
    this.place = { sheet: this.host.view.id, ...focus };
    this.state = state;
    this.#before = this.host.rawAt(focus.row, focus.col);
    if (state === 'within') this.core.start(this.#before);
    else this.core.typed();
    this.host.reveal(focus);
    send(this.host, 'tt-edit-start', { ...this.place, text: this.text });
  }

  /** Hands the text over; false when it was refused and the editor stays open. */
  commit(then: Then, by: GoneBy = 'enter'): boolean {
    const raw = this.text;
    if (raw !== this.#before && !send(this.host, 'tt-commit', { ...this.place, raw, then })) return false;
    this.#close(raw !== this.#before, then);
    if (then !== 'stay') this.host.go(then, by);
    return true;
  }

  cancel(): void {
    if (this.open) this.#close(false, 'stay');
  }

  /** Another editor goes on with the same text. */
  handOver(): void {
    if (this.open) this.#close(true, null);
  }

  #close(kept: boolean, then: Then | null): void {
    this.state = 'rest';
    this.pointed = null;
    this.core.stop();
    const field = this.field();
    if (field) field.value = '';
    send(this.host, 'tt-edit-end', { ...this.place, kept, then });
  }

  #tell(): void {
    send(this.host, 'tt-edit-change', { ...this.place, text: this.text });
  }

  /** A pointed cell for the formula being typed; false when none can stand at the caret. */
  point(to: CellPlace, extend: boolean): boolean {
    if (!this.open || !this.core.slot()) return false;
    this.pointed = goTo(this.pointed ?? at(this.place.row, this.place.col), to, extend);
    return this.core.point(pointedName(this.pointed));
  }

  beforeInput = (event: InputEvent): void => {
    // The field's own undo would bring an earlier cell's text back.
    if (!this.open && event.inputType.startsWith('history')) event.preventDefault();
    // An on-screen keyboard's Enter may come without a key.
    if (event.inputType === 'insertLineBreak' && this.open) {
      event.preventDefault();
      this.commit('down');
    }
  };

  input = (): void => {
    if (!this.open) {
      this.start('anew');
      return;
    }
    this.pointed = null;
    this.core.typed();
    this.#tell();
  };

  /** Opens at once, so that the composition can be seen from its first key. */
  compositionStart = (): void => {
    if (!this.open) this.start('anew');
  };

  /** A composition that was given up leaves the cell as it was. */
  compositionEnd = (): void => {
    if (this.state === 'anew' && this.text === '') this.cancel();
  };

  caretMoved = (): void => {
    if (this.open) this.core.moved();
  };

  /** Keys while the editor is open; true when the key was used. */
  key(event: KeyboardEvent): boolean {
    if (this.core.key(event)) return true;
    const { key } = event;
    const ctrl = event.ctrlKey || event.metaKey;
    if (key === 'Enter' && event.altKey) {
      event.preventDefault();
      this.core.breakLine();
      return true;
    }
    if (event.altKey) return false;
    if (key === 'Enter' || key === 'Tab') {
      if (key === 'Tab' && ctrl) return false;
      event.preventDefault();
      const then: Then = key === 'Enter' ? (event.shiftKey ? 'up' : 'down') : event.shiftKey ? 'left' : 'right';
      this.commit(ctrl ? 'stay' : then, key === 'Tab' ? 'tab' : 'enter');
      return true;
    }
    if (key === 'Escape') {
      event.preventDefault();
      this.cancel();
      return true;
    }
    if (key === 'F2') {
      event.preventDefault();
      this.state = this.state === 'anew' ? 'within' : 'anew';
      return true;
    }
    const way = arrowOf(key);
    if (!way || this.state !== 'anew') return false;
    if (this.core.isFormula) {
      const from = this.pointed?.focus ?? this.place;
      if (!this.core.slot()) return false;
      event.preventDefault();
      const to = step(from, way, ctrl ? 'block' : 'one', this.host.ground);
      this.point(to, event.shiftKey);
      this.host.reveal(to);
      return true;
    }
    if (event.shiftKey || ctrl) return false;
    event.preventDefault();
    this.commit(way, 'arrow');
    return true;
  }

  hostDisconnected(): void {
    this.cancel();
  }
}
