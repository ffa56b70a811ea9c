/** Makes the table of all functions: the engine's own under their policies, and the trade's. */
import { FUNCTIONS } from '../../../src/sewing/index.ts';
import type { CallFunction, Registry } from '../internals.ts';
import { tooFar } from './counting.ts';
import { COMPARE } from './lay.ts';
import { ADDED_NAMES, policyOf } from './policy.ts';
import type { Passes } from './policy.ts';
import { sewing } from './sewing.ts';
import { measure } from './sizes.ts';
import { Call } from './tools.ts';
import type { Own, Tools } from './tools.ts';

/** Takes over the registry: from now on it finds only what is in the table. */
export function functionTable(registry: Registry, toolsOf: (library: Tools['library']) => Tools): ReadonlyMap<string, CallFunction> {
  const find = registry.getFunction.bind(registry);
  const library = new Map<string, CallFunction>();
  const table = new Map<string, CallFunction>();
  const tools = toolsOf((name) => library.get(name));
  const put = (name: string, own: Own): void => {
    table.set(name, (ast, state) => own(new Call(name, ast, state, tools)));
  };
  for (const name of registry.getRegisteredFunctionIds()) {
    const call = find(name);
    if (call === undefined) continue;
    library.set(name, call);
    const policy = policyOf(name);
    if (policy.does === 'own') put(name, policy.own);
    else if (policy.does === 'refuses') put(name, guarded(() => true));
    else if (policy.does === 'passes') put(name, policy.plain.length === 0 ? untouched(call) : guarded(isPlain(policy.plain)));
  }
  // It does depend on the cell: whether there is a formula in it.
  registry.functionsWhichDoesNotNeedArgumentsToBeComputed.delete('ISFORMULA');
  for (const name of ADDED_NAMES) {
    const policy = policyOf(name);
    if (policy.does === 'own') put(name, policy.own);
  }
  for (const fn of FUNCTIONS) put(fn.name, sewing(fn));
  put(COMPARE, tools.lays.compare);
  measure(registry, tools);
  registry.getFunction = (name) => table.get(name);
  return table;
}

const untouched = (library: CallFunction): Own => (call) => call.told(library(call.ast, call.state));

function isPlain(plain: Passes['plain']): (place: number) => boolean {
  if (plain === 'even') return (place) => place % 2 === 0;
  return plain === 'rest' ? (place) => place > 0 : (place) => plain.includes(place);
}

/** Works the values out once, lets no figure with a unit into the places that must be plain, and calls the engine's function. */
function guarded(mustBePlain: (place: number) => boolean): Own {
  return (call) => {
    for (let i = 0; i < call.given.length; i++) {
      const fault = mustBePlain(i) ? call.unitFault(call.given[i]!) : undefined;
      if (fault) return fault;
    }
    return tooFar(call) ?? call.library();
  };
}
