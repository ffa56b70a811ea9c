/** One of several records of a kind that a panel has open, and how it changes: by edits like everything else. */
import type { KeptList, KeptWish } from '../panels/index.ts';
import { recordCalled, recordsOf, type Edit, type RecordData } from '../workbook/index.ts';
import type { Desk } from './desk.ts';

type Kind = 'comparison' | 'run';

export class KeptRecords<K extends Kind> {
  #id = '';

  /** @param fresh what there is before anything was changed */
  constructor(private readonly desk: () => Desk, private readonly kind: K, private readonly fresh: RecordData[K]) {}

  /** The one that is open; the first there is, or a fresh one. */
  get data(): RecordData[K] {
    return recordCalled(this.desk().book, this.kind, this.id) ?? this.fresh;
  }

  get id(): string {
    const all = recordsOf(this.desk().book, this.kind);
    if (this.#id === '' || (this.#id !== this.#next && !all.some(({ id }) => id === this.#id))) this.#id = all[0]?.id ?? this.#next;
    return this.#id;
  }

  get list(): KeptList {
    return { id: this.id, all: recordsOf(this.desk().book, this.kind).map(({ id, data }) => ({ id, title: data.title })) };
  }

  /** False when it was refused. */
  keep(data: RecordData[K]): boolean {
    return this.desk().do({ do: 'setRecord', kind: this.kind, id: this.id, data } as Edit);
  }

  grant(wish: KeptWish): void {
    switch (wish.kept) {
      case 'open': this.#id = wish.id; break;
      case 'title': this.keep({ ...this.data, title: wish.title }); break;
      case 'another': this.#id = this.#next; break;
      case 'take away': {
        const gone = this.id;
        if (this.desk().do({ do: 'setRecord', kind: this.kind, id: gone, data: null } as Edit)) this.#id = '';
        break;
      }
    }
  }

  /** An id that none has. */
  get #next(): string {
    return String(1 + recordsOf(this.desk().book, this.kind).reduce((most, { id }) => Math.max(most, Number(id) || 0), 0));
  }
}
