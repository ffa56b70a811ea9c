/** The worker's door: one engine, spoken to through comlink. */
import * as Comlink from 'comlink';
import type { ChangeSet } from '../../src/reckoning/protocol.ts';
import { buffersOf } from './columns.ts';
import { Engine } from './engine.ts';

const handOver = (changes: ChangeSet): ChangeSet => Comlink.transfer(changes, buffersOf(changes.sheets));

class Served extends Engine {
  override open(...args: Parameters<Engine['open']>): ChangeSet {
    return handOver(super.open(...args));
  }

  override apply(...args: Parameters<Engine['apply']>): ChangeSet {
    return handOver(super.apply(...args));
  }
}

Comlink.expose(new Served());
