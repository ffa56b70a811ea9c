/**
 * Two slow places of the engine's graph, mended from outside. Measured with
 * plain HyperFormula 3.5.0: 10,000 formulas that use one block of 1,500 cells
 * make it join each cell with the block 10,000 times over, and 100,000 that use
 * one cell make it look through that cell's list of dependents from the start
 * each time.
 */
import { AbsoluteCellRange } from './internals.ts';
import type { Inside, Vertex } from './internals.ts';

/** From so many dependents on, a set is kept beside the list of them. */
const MANY = 64;

export function quicken(graphs: Inside['_dependencyGraph']): void {
  quickenBlocks(graphs);
  quickenEdges(graphs.graph);
}

/**
 * Joins a vertex with one that uses it and is joined with everything it uses in
 * one go, nothing else meanwhile: then only the last edge can be the same one.
 */
export function appendEdge(graph: Inside['_dependencyGraph']['graph'], from: Vertex, to: Vertex): void {
  const toId = to.idInGraph!;
  const edges = graph.edgesSparseArray[from.idInGraph!]!;
  if (edges[edges.length - 1] !== toId) edges.push(toId);
}

/** A block that is known is joined with its cells already; only the formula is new to it. */
function quickenBlocks(graphs: Inside['_dependencyGraph']): void {
  const join = graphs.processCellDependencies.bind(graphs);
  const { graph } = graphs;
  graphs.processCellDependencies = (dependencies, formula) => {
    for (const dependency of dependencies) {
      if (dependency instanceof AbsoluteCellRange) {
        const block = graphs.getRange(dependency.start, dependency.end);
        if (block?.idInGraph === undefined) join([dependency], formula);
        else graph.addEdge(block, formula);
      } else if ('row' in dependency) {
        graph.addEdge(graphs.fetchCellOrCreateEmpty(dependency).vertex, formula);
      } else {
        join([dependency], formula);
      }
    }
  };
}

function quickenEdges(graph: Inside['_dependencyGraph']['graph']): void {
  /** By the list itself: the engine puts another in its place when it tidies up. */
  const sets = new WeakMap<object, { readonly ids: Set<number | undefined>; upTo: number }>();
  const idOf = (vertex: Vertex | number): number => {
    const id = typeof vertex === 'number' ? vertex : vertex.idInGraph;
    if (id === undefined) throw new Error('A vertex that is not in the graph cannot be joined.');
    return id;
  };
  const [remove, removeIfExists] = [graph.removeEdge.bind(graph), graph.removeEdgeIfExists.bind(graph)];

  graph.addEdge = (from, to) => {
    const toId = idOf(to);
    const edges = graph.edgesSparseArray[idOf(from)]!;
    if (edges.length < MANY) {
      if (!edges.includes(toId)) edges.push(toId);
      return;
    }
    let known = sets.get(edges);
    if (known === undefined) sets.set(edges, known = { ids: new Set(), upTo: 0 });
    for (; known.upTo < edges.length; known.upTo++) known.ids.add(edges[known.upTo]);
    if (!known.ids.has(toId)) edges.push(toId);
  };
  const forget = (from: Vertex | number, to: Vertex | number): void => {
    const [fromId, toId] = [from, to].map((vertex) => (typeof vertex === 'number' ? vertex : vertex.idInGraph));
    const edges = fromId === undefined ? undefined : graph.edgesSparseArray[fromId];
    if (edges !== undefined && toId !== undefined) sets.get(edges)?.ids.delete(toId);
  };
  graph.removeEdge = (from, to) => {
    remove(from, to);
    forget(from, to);
  };
  graph.removeEdgeIfExists = (from, to) => {
    removeIfExists(from, to);
    forget(from, to);
  };
}
