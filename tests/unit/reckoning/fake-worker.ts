import { expose } from 'comlink';
import type { ChangeSet, FunctionCard, Reckoner } from '../../../src/reckoning/index.ts';
import type { Book, Effect } from '../../../src/workbook/types.ts';

export const CARDS: readonly FunctionCard[] = [{ name: 'EASE', trade: true, topic: 'fit', about: '', asks: [], rule: '', source: '', example: '', needs: [], units: '', differs: '', args: [], repeats: 0 }];

/** Records what it is told; its results say no more than which revision they are. */
export class RecordingReckoner implements Reckoner {
  readonly told: string[] = [];
  effects: Effect[][] = [];
  books: Book[] = [];

  open(revision: number, book: Book): ChangeSet {
    this.told.push(`open ${book.title}`);
    this.books.push(book);
    return { revision, whole: true, sheets: [], took: 0 };
  }
  apply(revision: number, effects: readonly Effect[]): ChangeSet {
    this.told.push(`apply ${effects.length}`);
    this.effects.push([...effects]);
    return { revision, whole: false, sheets: [], took: 0 };
  }
  working(cell: { row: number }): ReturnType<Reckoner['working']> {
    this.told.push(`working ${cell.row}`);
    return { result: { kind: 'quantity', value: cell.row, unit: 'cm' }, uses: [] };
  }
  catalogue(): readonly FunctionCard[] {
    this.told.push('catalogue');
    return CARDS;
  }
  example(formula: string): ReturnType<Reckoner['example']> {
    this.told.push(`example ${formula}`);
    return { results: [[{ kind: 'text', text: formula }]], height: 1, width: 1 };
  }
  dependents(): ReturnType<Reckoner['dependents']> {
    this.told.push('dependents');
    return [];
  }
  tryOut(trials: Parameters<Reckoner['tryOut']>[0]): ReturnType<Reckoner['tryOut']> {
    this.told.push('tryOut');
    return { results: trials.map(() => []), differences: trials.map(() => []) };
  }
  inputsOf(): ReturnType<Reckoner['inputsOf']> {
    this.told.push('inputsOf');
    return [];
  }
  workBack(): ReturnType<Reckoner['workBack']> {
    this.told.push('workBack');
    return { why: 'nothing', exact: null, cut: null, best: null, gaps: [], depends: false, tried: 0 };
  }
  cancelSearch(): void {
    this.told.push('cancelSearch');
  }
}

type Way = 'pass' | 'lose' | 'double' | 'hold' | 'die' | 'error' | 'messageerror';

/**
 * A Worker as far as comlink and the supervisor use one, over a real message
 * channel, with a hand on each message that it sends back.
 */
export class FakeWorker extends EventTarget {
  /** What becomes of the answer to this call; counts the calls since its start. */
  readonly wayOf: (call: number, method: string) => Way;
  terminated = false;
  readonly calls: string[] = [];
  readonly #channel = new MessageChannel();
  #held: unknown[] = [];
  #methods = new Map<string, { method: string; call: number }>();

  constructor(reckoner: Reckoner, wayOf: (call: number, method: string) => Way = () => 'pass') {
    super();
    this.wayOf = wayOf;
    expose(reckoner, this.#channel.port2 as never);
    this.#channel.port1.addEventListener('message', ({ data }) => this.#answer(data));
    this.#channel.port1.start();
  }

  postMessage(message: { id: string; path?: string[] }): void {
    if (this.terminated) return;
    const method = message.path?.[0] ?? '';
    this.#methods.set(message.id, { method, call: this.calls.push(method) });
    this.#channel.port1.postMessage(message);
  }

  terminate(): void {
    this.terminated = true;
    this.#channel.port1.close();
  }

  get holds(): number {
    return this.#held.length;
  }

  fail(type: 'error' | 'messageerror' = 'error'): void {
    this.dispatchEvent(Object.assign(new Event(type, { cancelable: true }), { message: 'out of memory' }));
  }

  /** Hands over what was held back, although the worker was ended long ago. */
  release(): void {
    for (const data of this.#held.splice(0)) this.dispatchEvent(new MessageEvent('message', { data }));
  }

  #answer(data: { id: string }): void {
    const { method, call } = this.#methods.get(data.id)!;
    const way = this.wayOf(call, method);
    const send = () => this.dispatchEvent(new MessageEvent('message', { data }));
    switch (way) {
      case 'pass': send(); break;
      case 'double': send(); send(); break;
      case 'hold': this.#held.push(data); break;
      case 'error': case 'messageerror': this.fail(way); break;
      case 'lose': case 'die': break;
    }
  }
}
