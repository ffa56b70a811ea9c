/** The worker's door, spoken to through comlink. */
import * as Comlink from 'comlink';
import { Served } from './served.ts';

Comlink.expose(new Served());
