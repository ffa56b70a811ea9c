/**
 * Visits formulas in an order in which each comes after what it needs, those
 * that need themselves (through however many others) apart. This is Tarjan's
 * search for strongly connected components (SIAM J. Comput. 1 (1972) 146), with
 * its own stack and plain arrays: the engine's own takes most of an edit's time.
 */
import type { Inside, Vertex } from './internals.ts';

type Graph = Inside['_dependencyGraph']['graph'];

/**
 * @param from where the change is; only what it can reach is visited
 * @param renew works a vertex out; true when what depends on it must be, too
 * @param circular for each vertex that needs itself
 */
export function visitInOrder(graph: Graph, from: readonly Vertex[], renew: (vertex: Vertex) => boolean, circular: (vertex: Vertex) => void): void {
  const { nodesSparseArray: nodes, edgesSparseArray: edges } = graph;
  const starts: number[] = [];
  for (const { idInGraph } of from) if (idInGraph !== undefined) starts.push(idInGraph);
  const components = componentsFrom(starts, nodes, edges);
  const touched = new Uint8Array(nodes.length);
  for (const id of starts) touched[id] = 1;
  // Components come out last things first.
  for (let end = components.order.length; end > 0;) {
    let start = end - 1;
    const component = components.number[components.order[start]!];
    while (start > 0 && components.number[components.order[start - 1]!] === component) start -= 1;
    const alone = end - start === 1 && !edges[components.order[start]!]!.includes(components.order[start]!);
    for (let i = start; i < end; i++) {
      const id = components.order[i]!;
      const vertex = nodes[id]!;
      if (!alone) circular(vertex);
      else if (touched[id] === 0 || !renew(vertex)) continue;
      const out = edges[id]!;
      for (let e = 0; e < out.length; e++) {
        const next = out[e];
        if (next !== undefined) touched[next] = 1;
      }
    }
    end = start;
  }
}

interface Components {
  /** Vertices, those of one component together, each component after all that depend on it. */
  readonly order: readonly number[];
  /** Of each vertex. */
  readonly number: Int32Array;
}

function componentsFrom(starts: readonly number[], nodes: readonly (Vertex | undefined)[], edges: readonly (readonly (number | undefined)[])[]): Components {
  const order: number[] = [];
  const number = new Int32Array(nodes.length);
  /** When a vertex was first seen, from 1; the earliest that it leads back to. */
  const seen = new Int32Array(nodes.length);
  const low = new Int32Array(nodes.length);
  const open: number[] = [];
  const path: number[] = [];
  const nextEdge: number[] = [];
  let time = 0;
  let count = 0;
  const enter = (id: number): void => {
    seen[id] = low[id] = ++time;
    open.push(id);
    path.push(id);
    nextEdge.push(0);
  };
  for (const start of starts) {
    if (seen[start] !== 0) continue;
    enter(start);
    while (path.length > 0) {
      const id = path[path.length - 1]!;
      const out = edges[id]!;
      let at = nextEdge[nextEdge.length - 1]!;
      let down = -1;
      while (at < out.length && down < 0) {
        const next = out[at++];
        // A dependent that was removed leaves its number behind.
        if (next === undefined || nodes[next] === undefined) continue;
        if (seen[next] === 0) down = next;
        else if (number[next] === 0) low[id] = Math.min(low[id]!, seen[next]!);
      }
      nextEdge[nextEdge.length - 1] = at;
      if (down >= 0) {
        enter(down);
        continue;
      }
      path.pop();
      nextEdge.pop();
      const above = path[path.length - 1];
      if (above !== undefined) low[above] = Math.min(low[above]!, low[id]!);
      if (low[id] !== seen[id]) continue;
      count += 1;
      for (let member = open.pop()!; ; member = open.pop()!) {
        number[member] = count;
        order.push(member);
        if (member === id) break;
      }
    }
  }
  return { order, number };
}
