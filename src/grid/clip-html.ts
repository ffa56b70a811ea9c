/**
 * Tables and fractions out of the HTML that other programs put on the
 * clipboard. It is read for its text only, and only where the plain text says
 * less: cells that hold line breaks, and fractions set with raised and lowered
 * figures, which plain text runs together (2 1/4 becomes 21/4).
 *
 * The HTML is parsed into a document of its own, in which nothing runs and
 * nothing is loaded; no element of it ever comes near the page.
 */
import { fromClipboard, type Table } from './clipboard.ts';

interface Policies {
  createPolicy(name: string, rules: { createHTML(html: string): string }): { createHTML(html: string): string };
}

/** More than this is not read: the plain text beside it is. */
const MOST_CHARACTERS = 20_000_000;
/** More cells than these, with the ones that wide cells make, are left out. */
const MOST_CELLS = 500_000;
const DEEPEST = 400;
/** What HTML itself allows for one cell. */
const WIDEST = 1_000;

let policy: ReturnType<Policies['createPolicy']> | undefined;

/** An inert document: see the top of this file. */
function parsed(html: string): Document {
  policy ??= (globalThis as { trustedTypes?: Policies }).trustedTypes?.createPolicy('tt-clip', { createHTML: (text) => text });
  const plain = withoutLooks(html);
  return new DOMParser().parseFromString(policy?.createHTML(plain) ?? plain, 'text/html');
}

/** Without style attributes: the page's policy holds for the inert document too, and would tell of every one. */
function withoutLooks(html: string): string {
  return html.replace(/<[a-z][^<>]*>/gi, (tag) => tag.replace(/\sstyle(?=\s*=)/gi, ' data-look'));
}

/** The cells that the clipboard holds: by its plain text, unless its HTML says more. */
export function bestTable(text: string | null, html: string): Table | null {
  const plain = text === null ? null : fromClipboard(text);
  if (html === '' || html.length > MOST_CHARACTERS || !/<(table|sup|sub|mfrac)[\s>]/i.test(html) || isDeep(html)) return plain;
  const { body } = parsed(html);
  const table = tableOf(body);
  if (!table) return plain;
  const fractions = body.querySelector('sup, sub, mfrac') !== null;
  return plain && !fractions && saysAsMuch(plain, table) ? plain : table;
}

/** Elements without an end, or whose end may be left out: they say nothing of how deep others lie. */
const SHALLOW = /^(area|base|br|col|colgroup|dd|dt|embed|hr|img|input|li|link|meta|option|p|param|source|tbody|td|tfoot|th|thead|tr|track|wbr)$/i;

/** No program nests so deep, and browsers take very long for what does. */
function isDeep(html: string): boolean {
  let depth = 0;
  for (const [, close, name] of html.matchAll(/<(\/?)([a-z][a-z0-9]*)/gi)) {
    if (SHALLOW.test(name!)) continue;
    depth += close ? -1 : 1;
    if (depth > DEEPEST) return true;
  }
  return false;
}

/** The same cells, and a line break wherever the other has one. */
function saysAsMuch(plain: Table, table: Table): boolean {
  return plain.length === table.length && plain.every((row, at) => row.length === table[at]!.length
    && row.every((text, col) => text.includes('\n') || !table[at]![col]!.includes('\n')));
}

const SKIPPED = new Set(['script', 'style', 'template', 'noscript', 'head', 'title', 'iframe', 'object', 'embed', 'svg', 'canvas', 'video', 'audio', 'select', 'textarea', 'button']);
const BLOCKS = new Set(['p', 'div', 'li', 'ul', 'ol', 'dl', 'dt', 'dd', 'h1', 'h2', 'h3', 'h4', 'h5', 'h6', 'section', 'article', 'blockquote', 'pre', 'tr', 'table', 'caption', 'figure', 'hr']);
const POWERS: Record<string, string> = { 2: '²', 3: '³' };

/** Rows of cells: a table's as they are, each line outside of tables a row of one cell. `null` when there is no word in it. */
function tableOf(body: HTMLElement): Table | null {
  const rows: string[][] = [];
  let room = MOST_CELLS;
  // Tables inside a cell are part of its text.
  const tables = [...body.querySelectorAll('table')].filter((each) => !each.parentElement?.closest('table'));
  const lines = (text: string): void => {
    for (const line of text.split('\n')) if (line !== '') rows.push([line]);
  };
  let before: Node | null = null;
  for (const table of tables) {
    lines(textBetween(body, before, table));
    const made = rowsOf(table, room);
    room -= made.reduce((sum, row) => sum + row.length, 0);
    rows.push(...made);
    before = table;
  }
  lines(textBetween(body, before, null));
  return rows.some((row) => row.some((text) => text !== '')) ? rows : null;
}

/** A cell over several columns or rows stands in the first of them; the others are empty. */
function rowsOf(table: HTMLTableElement, room: number): string[][] {
  const rows: string[][] = [];
  /** How many rows below a cell above still covers, by column. */
  const covered: number[] = [];
  for (const { cells } of table.rows) {
    const row: string[] = [];
    const fill = (text: string): boolean => row.push(text) <= room;
    const skip = (): void => {
      while ((covered[row.length] ?? 0) > 0 && room > row.length) {
        covered[row.length]!--;
        fill('');
      }
    };
    for (const cell of cells) {
      skip();
      const wide = Math.min(WIDEST, Math.max(1, cell.colSpan));
      const text = textOf(cell);
      for (let at = 0; at < wide && row.length < room; at++) {
        if (cell.rowSpan > 1) covered[row.length] = cell.rowSpan - 1;
        fill(at === 0 ? text : '');
      }
    }
    skip();
    room -= row.length;
    if (row.length) rows.push(row);
    if (room <= 0) break;
  }
  const width = Math.max(0, ...rows.map((row) => row.length));
  return rows.map((row) => (width * rows.length <= MOST_CELLS ? [...row, ...new Array<string>(width - row.length).fill('')] : row));
}

const textOf = (element: Element): string => new Words().all(element).text;

function textBetween(body: HTMLElement, after: Node | null, before: Node | null): string {
  return new Words(after, before).all(body).text;
}

/** The words of a piece of HTML as they are read, with a line break where a line ends. */
class Words {
  #out = '';
  /** Nothing counts before this was passed, nor once the other is met. */
  #begun: boolean;
  #ended = false;

  constructor(private readonly after: Node | null = null, private readonly before: Node | null = null) {
    this.#begun = after === null;
  }

  get text(): string {
    return this.#out.replace(/[ \t]+\n/g, '\n').replace(/\n[ \t]+/g, '\n').replace(/^[\s]+|[\s]+$/g, '');
  }

  /** Nothing deeper than `DEEPEST` comes here, so this may call itself. */
  all(element: Element): this {
    for (const node of element.childNodes) {
      if (this.#ended) break;
      if (node === this.before) this.#ended = true;
      else if (node === this.after) this.#begun = true;
      else if (node.nodeType === Node.TEXT_NODE) this.#say((node as Text).data, element.closest('pre') !== null);
      else if (node.nodeType === Node.ELEMENT_NODE) this.#element(node as Element);
    }
    return this;
  }

  #element(element: Element): void {
    const name = element.localName;
    if (SKIPPED.has(name) || element.hasAttribute('hidden')) return;
    if (name === 'br') this.#break();
    else if (name === 'sup') this.#raised(element);
    else if (name === 'mfrac') this.#fraction(element.children[0]?.textContent ?? '', element.children[1]?.textContent ?? '');
    else if (BLOCKS.has(name)) {
      this.#block();
      this.all(element);
      this.#block();
    } else if (name === 'td' || name === 'th') {
      this.#say(' ', false);
      this.all(element);
    } else this.all(element);
  }

  #say(words: string, asIs: boolean): void {
    if (!this.#begun) return;
    const plain = words.replace(/\u00a0/g, ' ').replace(/[⁄∕]/g, '/');
    const text = asIs ? plain : plain.replace(/\s+/g, ' ');
    this.#out += /(^|\s)$/.test(this.#out) && !asIs ? text.replace(/^ /, '') : text;
  }

  #break(): void {
    if (this.#begun) this.#out += '\n';
  }

  #block(): void {
    if (this.#begun && this.#out !== '' && !this.#out.endsWith('\n')) this.#out += '\n';
  }

  /** A raised figure is a numerator when a stroke follows it, and else a power. */
  #raised(element: Element): void {
    const figure = (element.textContent ?? '').trim();
    const next = element.nextSibling?.textContent?.trimStart() ?? '';
    if (/^\d+$/.test(figure) && /^[/⁄∕]/.test(next)) this.#apart();
    else if (POWERS[figure]) {
      this.#say(POWERS[figure], true);
      return;
    }
    this.all(element);
  }

  #fraction(above: string, below: string): void {
    this.#apart();
    this.#say(`${above.trim()}/${below.trim()}`, false);
  }

  /** So that whole inches and a fraction do not run together. */
  #apart(): void {
    if (/\d$/.test(this.#out)) this.#say(' ', false);
  }
}
