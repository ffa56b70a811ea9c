/** Which cells' results depend on others. */
import { isFormulaVertex } from './host.ts';
import type { Host } from './host.ts';
import type { Place, Vertex } from './internals.ts';

/** Every cell with a formula whose result depends on any of these, through any number of steps. Not in order. */
export function dependentsOf(host: Host, places: readonly Place[]): readonly Place[] {
  const { graph, addressMapping } = host.graphs;
  const seen = new Set<Vertex>();
  const waiting: Vertex[] = [];
  const follow = (vertices: Iterable<Vertex>): void => {
    for (const vertex of vertices) {
      if (seen.has(vertex)) continue;
      seen.add(vertex);
      waiting.push(vertex);
    }
  };
  for (const place of places) {
    const vertex = addressMapping.getCell(place);
    if (vertex !== undefined) follow(graph.adjacentNodes(vertex));
    // A cell that holds nothing has no place in the graph, though a whole column that is used has it.
    else follow(graph.getInfiniteRanges().filter((range) => range.range.addressInRange(place)));
  }
  const found: Place[] = [];
  for (let vertex = waiting.pop(); vertex !== undefined; vertex = waiting.pop()) {
    if (isFormulaVertex(vertex)) {
      const place = vertex.getAddress(host.inside._lazilyTransformingAstService);
      if (place.sheet >= 0) found.push(place);
    }
    follow(graph.adjacentNodes(vertex));
  }
  return found;
}
