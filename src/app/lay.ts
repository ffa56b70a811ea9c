/** The lay's controller: choices are edits, searches are asked for, and only what passed the check is shown. */
import { html, type TemplateResult } from 'lit';
import type { LayChange, LayKept, LayShown, LayView, PaperHead } from '../panels/index.ts';
import type { SheetPiece } from '../lay/shapes/index.ts';
import { sheetFromTemplate, type Area, type Lay } from '../workbook/index.ts';
import { attempt } from './attempt.ts';
import { NOW, choiceIn, keptIn, readChoice, type ReadChoice } from './lay-choices.ts';
import { BRIEF, LayComparing } from './lay-comparing.ts';
import { faultsOf, foundKept, keptFrom, usedOf, type Found } from './lay-found.ts';
import { HandLay } from './lay-hand.ts';
import { planOf, scalesOf, svgOf, toScaleOf } from './lay-paper.ts';
import { PiecesRead, listsIn, type LayPieces } from './lay-pieces.ts';
import { LaySearch, type Asked } from './lay-search.ts';
import { drawingOf, lengthUp, placeInWords } from './lay-view.ts';
import { inHerUnits, remarksOn, standingOf } from './lay-words.ts';
import type { MorePanel, PanelHost } from './more-panels.ts';
import { fileName, saveFile } from './save-file.ts';

const PIECES_TEMPLATE = 'pieces';

class LayDesk implements MorePanel {
  readonly #search: LaySearch;
  readonly #comparing: LayComparing;
  /** What is on the table: found, chosen from the comparison, or kept; and as it was moved by hand. */
  #hand: HandLay | null = null;
  /** The found layout that `#hand` began from. */
  #from: Found | null = null;
  #shownKept = '';
  #brief = false;
  #began = 0;
  #tick: ReturnType<typeof setInterval> | undefined;
  readonly #piecesRead = new PiecesRead();

  constructor(private readonly host: PanelHost) {
    this.#search = new LaySearch(() => this.#news());
    this.#comparing = new LayComparing(() => host.draw());
  }

  closed(): void {
    clearInterval(this.#tick);
    this.#search.end();
    this.#comparing.stop();
  }

  render(): TemplateResult {
    return html`<tt-lay .view=${this.#view()}
      @tt-lay-choose=${(event: CustomEvent<LayChange>) => this.#choose(event.detail)}
      @tt-lay-find=${() => this.#find()} @tt-lay-stop=${() => this.#search.stop()} @tt-lay-settle=${() => this.#find(this.#hand?.now)}
      @tt-lay-brief=${(event: CustomEvent<{ brief: boolean }>) => { this.#brief = event.detail.brief; this.host.draw(); }}
      @tt-lay-begin=${() => this.#hand?.begin()} @tt-lay-end=${() => { this.#hand?.end(); this.host.draw(); }}
      @tt-lay-move=${(event: CustomEvent<{ id: number; by: readonly [number, number] }>) => this.#byHand((hand) => hand.move(event.detail.id, event.detail.by))}
      @tt-lay-turn=${(event: CustomEvent<{ id: number }>) => this.#byHand((hand) => { hand.begin(); hand.turn(event.detail.id); hand.end(); })}
      @tt-lay-undo=${() => this.#byHand((hand) => hand.undo())}
      @tt-lay-compare=${() => this.#compare()} @tt-lay-stop-comparing=${() => { this.#comparing.stop(); this.host.draw(); }}
      @tt-lay-take=${(event: CustomEvent<{ at: number }>) => this.#takeCompared(event.detail.at)}
      @tt-lay-keep=${(event: CustomEvent<{ name: string }>) => this.#keep(event.detail.name)}
      @tt-lay-show=${(event: CustomEvent<{ id: string }>) => this.#showKept(event.detail.id)}
      @tt-lay-take-away=${(event: CustomEvent<{ id: string }>) => this.#takeAway(event.detail.id)}
      @tt-lay-print=${(event: CustomEvent<{ scale: number }>) => this.#print(event)} @tt-lay-svg=${() => this.#svg()}
      @tt-lay-template=${() => void this.#startList()}
      @tt-go=${(event: CustomEvent<{ area: Area }>) => { event.stopPropagation(); this.host.desk.selectArea(event.detail.area); this.host.close(); }}></tt-lay>`;
  }

  /** Until she chooses, the pieces are those of the first list. */
  get #choice(): Lay {
    const choice = choiceIn(this.host.desk.book);
    return choice.pieces === '' ? { ...choice, pieces: listsIn(this.host.desk.book)[0]?.formula ?? '' } : choice;
  }

  get #read(): ReadChoice {
    return readChoice(this.#choice, this.host.desk.showAs.decimalMark);
  }

  get #pieces(): LayPieces {
    return this.#piecesOf(this.#choice);
  }

  #piecesOf(lay: Lay): LayPieces {
    const { book, results } = this.host.desk;
    return this.#piecesRead.of(lay, book, results);
  }

  #choose({ cloth, ...change }: LayChange): void {
    const before = this.#choice;
    attempt(this.host.desk, () => ({ do: 'setRecord', kind: 'lay', id: NOW, data: { ...before, ...change, cloth: { ...before.cloth, ...cloth } } }));
    this.host.draw();
  }

  /** What the search is asked; a sentence where it cannot be. */
  #asked(read = this.#read, pieces = this.#pieces): Asked | string {
    const choice = this.#choice;
    if (choice.pieces === '') return 'Choose the list of pieces first.';
    if (pieces.first.length === 0) return pieces.sentences.length > 0 ? 'None of the pieces can be laid yet: look at what is said of their rows.' : 'There is no piece to lay: fill in the list, or choose another cloth.';
    if (!read.cloth) return 'Look at what is said of the cloth first.';
    if (choice.aim !== 'least length' && read.cloth.length === null) return 'To see what fits, or what is left, give the length of cloth at hand.';
    if (choice.aim === 'room for' && choice.second === '') return 'Choose the second list first.';
    const aim: Asked['aim'] = choice.aim === 'room for' ? { want: 'room for', pieces: pieces.second }
      : choice.aim === 'largest left' ? { want: 'largest left', ...(read.leftWidth !== null && { width: read.leftWidth }) } : { want: choice.aim };
    return { pieces: pieces.first, second: pieces.second, cloth: read.cloth, aim, print: pieces.print, ...(this.#brief && { most: BRIEF }) };
  }

  #find(from?: Found): void {
    const asked = this.#asked();
    if (typeof asked === 'string') return;
    this.#hand = this.#from = null;
    this.#shownKept = '';
    this.#began = Date.now();
    clearInterval(this.#tick);
    // So that she sees that it is still looking.
    this.#tick = setInterval(() => this.host.draw(), 1000);
    void this.#search.start({ ...asked, ...(from && { start: from.layout }) });
  }

  #news(): void {
    const { found, standing } = this.#search;
    if (standing !== 'looking') clearInterval(this.#tick);
    if (found && found !== this.#from) this.#put(found);
    this.host.draw();
  }

  #put(found: Found): void {
    this.#from = found;
    this.#hand = new HandLay(found);
  }

  #byHand(change: (hand: HandLay) => void): void {
    if (!this.#hand || this.#search.standing === 'looking') return;
    change(this.#hand);
    this.host.draw();
  }

  #compare(): void {
    const read = this.#read;
    const asked = this.#asked(read);
    if (typeof asked === 'string' || !read.cloth) return;
    void this.#comparing.run(asked, [{ width: read.cloth.width, price: read.price }, ...read.offers], read.step);
  }

  #takeCompared(at: number): void {
    const taken = this.#comparing.take(at);
    if (!taken) return;
    const { found, comparison: { fold, oneWay, offer } } = taken;
    const choice = this.#choice;
    const other = this.#read.cloth?.width === offer.width ? undefined
      : choice.offers.find((_, i) => readChoice({ ...choice, offers: choice.offers.slice(i, i + 1) }, this.host.desk.showAs.decimalMark).offers[0]?.width === offer.width);
    // Cloth that is to be bought has no length yet, no flaws and no odd edges.
    this.#choose({ aim: 'least length', ...(other && { price: other.price }), cloth: { fold, oneWay, length: '', remnant: [], flaws: [], ...(other && { width: other.width }) } });
    this.#search.clear();
    this.#shownKept = '';
    this.#put(found);
    this.host.draw();
  }

  #keep(name: string): void {
    const hand = this.#hand;
    if (!hand) return;
    const found = hand.now;
    if (hand.wrongs.size > 0 || faultsOf(found).length > 0) return;
    const { book } = this.host.desk;
    const taken = new Set(keptIn(book).map(({ id }) => id));
    let number = 1;
    while (taken.has(String(number))) number++;
    const { cloth } = this.#choice;
    const kept = keptFrom(found);
    if (attempt(this.host.desk, () => ({ do: 'setRecord', kind: 'lay', id: String(number), data: { ...this.#choice, cloth, name: name.trim(), kept } }))) {
      this.#shownKept = String(number);
      this.host.desk.say(`Kept as “${name.trim()}”.`);
    }
    this.host.draw();
  }

  #showKept(id: string): void {
    const lay = keptIn(this.host.desk.book).find((each) => each.id === id)?.data;
    if (!lay?.kept) return;
    const found = foundKept(lay.kept);
    if (faultsOf(found).length > 0) {
      this.host.desk.say(`“${lay.name}” does not pass the check any more, so it is not shown. Find the layout again.`);
      return;
    }
    this.#search.clear();
    this.#put(found);
    this.#shownKept = id;
    this.host.draw();
  }

  #takeAway(id: string): void {
    attempt(this.host.desk, () => ({ do: 'setRecord', kind: 'lay', id, data: null }));
    if (this.#shownKept === id) this.#shownKept = '';
    this.host.draw();
  }

  get #head(): PaperHead {
    const { title, person } = this.host.desk.book;
    return { title, person, date: new Date().toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' }) };
  }

  #print(event: CustomEvent<{ scale: number }>): void {
    const hand = this.#hand;
    if (!hand || hand.wrongs.size > 0) return;
    const { showAs } = this.host.desk;
    const { scale } = event.detail;
    const name = this.#nameOf(hand.now);
    const said = [this.#headline(hand.now), ...remarksOn(hand.now, this.#asking, showAs)];
    const page = scale === 0 ? planOf(hand.now, showAs, name, said, this.#head) : toScaleOf(hand.now, showAs, name, said, this.#head, scale);
    event.target!.dispatchEvent(new CustomEvent('tt-print-made', { detail: { pages: [page] }, bubbles: true, composed: true }));
  }

  #svg(): void {
    const hand = this.#hand;
    if (!hand || hand.wrongs.size > 0) return;
    const name = this.#nameOf(hand.now);
    saveFile(fileName(name, 'svg'), new Blob([svgOf(hand.now, this.host.desk.showAs, name)], { type: 'image/svg+xml' }));
  }

  async #startList(): Promise<void> {
    const { desk } = this.host;
    const { shippedTemplate } = await import('./shipped.ts');
    const { edit, sheet } = sheetFromTemplate(shippedTemplate(PIECES_TEMPLATE), desk.book);
    if (!attempt(desk, () => edit)) return;
    desk.openSheet(sheet);
    this.host.close();
  }

  #nameOf({ cloth }: Found): string {
    const kept = keptIn(this.host.desk.book).find(({ id }) => id === this.#shownKept);
    return kept?.data.name ?? `${this.host.desk.book.title || 'Lay'}, ${lengthUp(cloth.width, { ...this.host.desk.showAs, system: 'own' }).replace(/ \(.*/, '')} wide`;
  }

  #headline(found: Found): string {
    const { showAs } = this.host.desk;
    return `Cut ${lengthUp(usedOf(found), showAs)} of cloth ${lengthUp(found.cloth.width, showAs)} wide.`;
  }

  get #asking(): { readonly price: number | null; readonly step: number; readonly aim: Lay['aim']; readonly without: readonly string[] } {
    const { price, step } = this.#read;
    const { asked, without } = this.#search;
    const ofSearch = this.#from === this.#search.found;
    return { price, step, aim: ofSearch && asked ? asked.aim.want : 'least length', without: ofSearch && asked ? without.flatMap((at) => asked.second[at]?.name ?? []) : [] };
  }

  #shown(pieces: LayPieces, read: ReadChoice): LayShown | null {
    const hand = this.#hand;
    if (!hand) return null;
    const { showAs } = this.host.desk;
    const found = hand.now;
    const looking = this.#search.standing === 'looking';
    const wrongs = hand.changed ? hand.wrongs : new Map<number, readonly string[]>();
    // A kept layout is of the pieces that it was kept with, whatever is chosen now.
    const kept = keptIn(this.host.desk.book).find(({ id }) => id === this.#shownKept);
    const stale = found.print !== (kept ? this.#piecesOf(kept.data) : pieces).print;
    const other = !looking && !stale && read.cloth && !kept && JSON.stringify(asLaid(read, this.#choice)) !== JSON.stringify(asLaidOf(found));
    const remarks = remarksOn(found, this.#asking, showAs);
    if (stale) remarks.unshift('The pieces have changed since this was laid: find a layout again before you cut.');
    else if (other) remarks.unshift('The cloth was chosen otherwise since this was laid: find a layout again.');
    return {
      drawing: drawingOf(found, showAs, hand.changed ? { wrongs } : {}),
      spoken: found.layout.laid.map((_, id) => placeInWords(found, id, showAs, wrongs)),
      turns: found.layout.laid.map((_, id) => hand.mayTurn(id)),
      headline: wrongs.size > 0 ? 'Moved by hand: it cannot be cut like this.' : this.#headline(found),
      remarks: wrongs.size > 0 ? [] : remarks,
      byHand: hand.changed, wrongs: [...new Set([...wrongs.values()].flat())], canUndo: hand.canUndo, canKeep: wrongs.size === 0 && !stale,
    };
  }

  #kept(): readonly LayKept[] {
    const { book, showAs } = this.host.desk;
    return keptIn(book).map(({ id, data }): LayKept => ({
      id, name: data.name, shown: id === this.#shownKept,
      said: `${lengthUp(data.kept!.length, showAs)} of cloth ${lengthUp(data.kept!.cloth.width, showAs)} wide`,
      stale: this.#piecesOf(data).print === data.kept!.print ? '' : 'Older than its pieces: they have changed since. Find it again before you cut.',
    }));
  }

  #view(): LayView {
    const { book, showAs, reading } = this.host.desk;
    const choice = this.#choice, read = this.#read, pieces = this.#pieces;
    const asked = this.#asked(read, pieces);
    const shown = this.#shown(pieces, read);
    return {
      choice, as: showAs, lists: listsIn(book), cloths: pieces.cloths, pieces: pieces.first.map(row), second: pieces.second.map(row),
      rowFaults: pieces.sentences, fieldFaults: read.faults, cannot: typeof asked === 'string' ? asked : '', looking: this.#search.standing === 'looking', brief: this.#brief,
      standing: standingOf(this.#search, Date.now() - this.#began, showAs), faults: this.#search.sentences.map((sentence) => inHerUnits(sentence, showAs)), shown,
      comparing: this.#comparing.running, compared: this.#comparing.rows(showAs), kept: this.#kept(), suggestedName: this.#hand ? this.#nameOf(this.#hand.now) : '',
      pages: shown ? scalesOf(shown.drawing) : [], readonly: reading !== null,
    };
  }
}

const row = ({ name, count, cut }: SheetPiece) => ({ name, count: cut === 'pair' ? `${count} ${count === 1 ? 'pair' : 'pairs'}` : cut === 'fold' ? `${count} on the fold` : String(count) });

/** What of the choices a layout depends on, to be compared. */
const asLaid = ({ cloth }: ReadChoice, { cloth: { fold } }: Lay) => cloth && { ...cloth, foldAt: fold === 'partly' ? 'any' : undefined };
const asLaidOf = ({ cloth }: Found) => ({ ...cloth, foldAt: cloth.fold === 'partly' ? 'any' : undefined });

export const panel = (host: PanelHost): MorePanel => new LayDesk(host);
