import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { controls } from '../look/index.ts';
import { PICTURE_BOX, shelfPicture } from './shelf-picture.ts';

/** A workbook as the shelf shows it; times in words. */
export interface ShelfRow {
  readonly id: string;
  readonly title: string;
  readonly person: string;
  readonly changed: string;
  /** When a copy was last saved as a file; empty when never. */
  readonly saved: string;
  readonly open: boolean;
  readonly place: 'shelf' | 'away' | 'bin';
  /** Whole days until it is gone, in the bin. */
  readonly daysLeft: number;
  readonly picture: readonly (readonly string[])[];
}

export type BookWish = 'open' | 'copy' | 'put-away' | 'take-out' | 'throw-away' | 'take-back' | 'remove';

/** A file that could not be read whole, before anything is done with it. */
export interface PartFile {
  readonly name: string;
  readonly problems: readonly string[];
}

/**
 * The workbooks on this device. Asks by `tt-book` {id, wish}, `tt-book-rename`
 * {id, title, person}, `tt-book-new`, `tt-book-start`,
 * `tt-book-save`, `tt-book-file` {file},
 * `tt-part-file` {take}.
 */
@customElement('tt-shelf')
export class ShelfPanel extends LitElement {
  static override styles = [controls, css`
    .books { list-style: none; margin: 0; padding: 0; display: grid; gap: var(--gap-2); grid-template-columns: repeat(auto-fill, minmax(min(100%, 400px), 1fr)); }
    .books > li { background: var(--sheet); border: 1px solid var(--line); border-radius: var(--round); padding: var(--gap-3); display: grid; grid-template-columns: 132px minmax(0, 1fr); gap: var(--gap-2) var(--gap-3); align-content: start; }
    .books > li.open { border-color: var(--chalk); box-shadow: inset 3px 0 var(--chalk); }
    h4 { margin: 0; font: 600 1rem var(--face-title); overflow-wrap: anywhere; }
    .books p { margin: 2px 0 0; overflow-wrap: anywhere; }
    .tools { grid-column: 1 / -1; display: flex; flex-wrap: wrap; gap: var(--gap-1); }
    form { grid-column: 1 / -1; display: flex; flex-wrap: wrap; gap: var(--gap-2); align-items: end; }
    form label { display: grid; gap: var(--gap-1); flex: 1 1 9em; }
    form input { width: 100%; }
    svg { width: 132px; background: var(--paper); border: 1px solid var(--line); border-radius: 4px; }
    svg line { stroke: var(--line); }
    svg text { font: 8px var(--face); fill: var(--soft); }
    svg .figure { font-weight: 600; fill: var(--ink); }
    svg .sum { fill: var(--chalk); }
    h3 { margin: var(--gap-5) 0 var(--gap-2); }
    h3:first-child { margin-top: 0; }
    .now { font-weight: 600; color: var(--chalk); }
    .part { margin-bottom: var(--gap-4); }
    .part ul { margin: var(--gap-2) 0; padding-left: 1.4em; max-height: 30vh; overflow-y: auto; }
    .part p { margin: 0 0 var(--gap-2); }
    .promise { margin: var(--gap-5) 0 0; max-width: 70ch; }
    input[type='file'] { position: absolute; width: 1px; height: 1px; opacity: 0; }
    .wide { grid-column: 1 / -1; margin: 0; }
  `];

  @property({ attribute: false }) books: readonly ShelfRow[] = [];
  /** Why the last wish could not be granted. */
  @property() sentence = '';
  /** Whether the browser has promised not to clear its storage. */
  @property() promise = '';
  @property({ attribute: false }) partFile: PartFile | null = null;

  @state() private renaming = '';
  @state() private removing = '';
  @query('dialog') private dialog!: HTMLDialogElement;
  @query('input[type=file]') private file!: HTMLInputElement;

  open(): void {
    this.renaming = '';
    this.removing = '';
    if (!this.dialog.open) this.dialog.showModal();
  }

  close(): void {
    this.dialog.close();
  }

  /** Asks the browser for a file; only in the turn of a key or a click. */
  chooseFile(): void {
    this.file.click();
  }

  override render(): TemplateResult {
    return html`<dialog aria-labelledby="title">
      <header><h2 id="title">Workbooks on this device</h2><button @click=${this.close}>Close</button></header>
      <div class="body">
        ${this.partFile ? this.#part(this.partFile) : nothing}
        ${this.sentence ? html`<p class="fault" role="alert">${this.sentence}</p>` : nothing}
        ${this.#list('On the shelf', 'shelf', 'Nothing stands on the shelf.')}
        ${this.#list('Put away', 'away')}
        ${this.#list('In the bin', 'bin')}
        <p class="promise soft">${this.promise}</p>
      </div>
      <footer>
        <input type="file" accept=".json,application/json" aria-label="Workbook file" tabindex="-1" @change=${this.#fileChosen}>
        <button @click=${this.chooseFile}>Open a file…</button>
        <button @click=${() => this.#send('tt-book-save', {})}>Save a copy as a file…</button>
        <button @click=${() => this.#send('tt-book-new', {})}>New workbook</button>
        <button class="main" @click=${() => { this.close(); this.#send('tt-book-start', {}); }}>Start my own…</button>
      </footer>
    </dialog>`;
  }

  #part({ name, problems }: PartFile) {
    return html`<div class="note part" role="alert"><p>${name}: not all of it is as it was saved.</p>
      <ul>${problems.map((problem) => html`<li>${problem}</li>`)}</ul>
      <p>Nothing that is here was touched. The part that was read can stand on the shelf as a workbook of its own.</p>
      <button class="main" @click=${() => this.#send('tt-part-file', { take: true })}>Keep that part and open it</button>
      <button @click=${() => this.#send('tt-part-file', { take: false })}>Leave it</button></div>`;
  }

  #list(heading: string, place: ShelfRow['place'], none = '') {
    const books = this.books.filter((book) => book.place === place);
    if (books.length === 0 && none === '') return nothing;
    return html`<h3>${heading}</h3>${books.length ? html`<ul class="books">${books.map((book) => this.#card(book))}</ul>` : html`<p class="soft">${none}</p>`}`;
  }

  #card(book: ShelfRow) {
    const title = nameOf(book);
    return html`<li class=${book.open ? 'open' : ''}>
      <svg viewBox=${PICTURE_BOX} aria-hidden="true">${shelfPicture(book.picture)}</svg>
      <div>
        <h4>${title}</h4>
        ${book.person ? html`<p>for ${book.person}</p>` : nothing}
        <p class="soft">${book.open ? html`<span class="now">Open here.</span> ` : nothing}Changed ${book.changed}.
          ${book.saved ? `Saved as a file ${book.saved}.` : 'Never saved as a file.'}</p>
        ${book.place === 'bin' ? html`<p class="soft">Gone for good in ${book.daysLeft} ${book.daysLeft === 1 ? 'day' : 'days'}.</p>` : nothing}
      </div>
      ${this.renaming === book.id ? this.#renameForm(book) : html`<div class="tools">${this.#tools(book, title)}</div>`}
      ${this.removing === book.id ? html`<p class="note wide" role="alert">This cannot be undone. Take it back and save it as a file first, or press once more.</p>` : nothing}
    </li>`;
  }

  #tools(book: ShelfRow, title: string) {
    const { id, open, place } = book;
    const wish = (what: BookWish, label: string, main = false) => html`<button class=${main ? 'main' : ''} aria-label="${label}: ${title}" @click=${() => this.#send('tt-book', { id, wish: what })}>${label}</button>`;
    if (place === 'bin') {
      const asked = this.removing === id;
      return [wish('take-back', 'Take it back', true), html`<button aria-label=${`${asked ? 'Remove for good' : 'Remove now'}: ${title}`} @click=${() => {
        this.removing = asked ? '' : id;
        if (asked) this.#send('tt-book', { id, wish: 'remove' });
      }}>${asked ? 'Remove for good' : 'Remove now'}</button>`];
    }
    return [
      open ? nothing : wish('open', 'Open', true),
      wish('copy', 'Copy'),
      html`<button aria-label="Rename: ${title}" @click=${() => this.#rename(id)}>Rename</button>`,
      place === 'away' ? wish('take-out', 'Take out again') : wish('put-away', 'Put away'),
      wish('throw-away', 'Delete'),
    ];
  }

  #renameForm({ id, title, person }: ShelfRow) {
    return html`<form @submit=${(event: Event) => {
      event.preventDefault();
      const form = event.target as HTMLFormElement;
      const of = (name: string) => form.querySelector<HTMLInputElement>(`[name=${name}]`)!.value.trim();
      this.renaming = '';
      this.#send('tt-book-rename', { id, title: of('garment'), person: of('person') });
    }}>
      <label>Garment <input name="garment" maxlength="200" .value=${title}></label>
      <label>For whom <input name="person" maxlength="200" .value=${person}></label>
      <button class="main">Rename</button><button type="button" @click=${() => { this.renaming = ''; }}>Leave it</button>
    </form>`;
  }

  #rename(id: string) {
    this.renaming = id;
    void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLInputElement>('[name=garment]')?.select());
  }

  #fileChosen() {
    const [file] = this.file.files ?? [];
    this.file.value = '';
    if (file) this.#send('tt-book-file', { file });
  }

  #send(type: string, detail: unknown) {
    this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
  }
}

const nameOf = ({ title }: ShelfRow): string => title.trim() === '' ? 'Workbook without a title' : title;

declare global {
  interface HTMLElementTagNameMap { 'tt-shelf': ShelfPanel }
}
