/**
 * A command for journeys: what a screen reader has of the page, from the
 * browser's own accessibility tree. Names, roles and states, nothing else.
 */
const FOCUSED = `(() => {
  let at = document.activeElement;
  for (;;) {
    if (at?.localName === 'iframe') at = at.contentDocument.activeElement;
    else if (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
    else return at;
  }
})()`;

const value = (part) => part?.value ?? '';

function told(node) {
  if (!node) return null;
  const states = Object.fromEntries((node.properties ?? []).map(({ name, value: { value: is } }) => [name, is]).filter(([, is]) => is !== undefined));
  return { role: value(node.role), name: value(node.name), description: value(node.description), value: String(value(node.value)), states };
}

export function screenReader() {
  const clients = new Map();
  const clientOf = async (session) => {
    const page = session.browser.getPage(session.id);
    if (!clients.has(page)) {
      const client = await page.createCDPSession();
      await client.send('Accessibility.enable');
      clients.set(page, client);
    }
    return clients.get(page);
  };

  /** The node alone, without what is around it. */
  const nodeOf = async (client, which) => {
    const { nodes } = await client.send('Accessibility.getPartialAXTree', { ...which, fetchRelatives: false });
    return nodes[0];
  };

  /** Where a cell is: screen readers take it from the numbers of its row and column. */
  const placeOf = async (client, backendNodeId) => {
    const { object } = await client.send('DOM.resolveNode', { backendNodeId });
    const { result } = await client.send('Runtime.callFunctionOn', {
      objectId: object.objectId, returnByValue: true,
      functionDeclaration: "function () { return { row: Number(this.closest('[aria-rowindex]')?.ariaRowIndex ?? 0), col: Number(this.ariaColIndex ?? 0) }; }",
    });
    return result.value;
  };

  const focus = async (client) => {
    const { result } = await client.send('Runtime.evaluate', { expression: FOCUSED });
    if (!result.objectId) return null;
    const node = await nodeOf(client, { objectId: result.objectId });
    const related = node?.properties?.find(({ name }) => name === 'activedescendant')?.value.relatedNodes?.[0];
    if (!related) return told(node);
    const active = await nodeOf(client, { backendNodeId: related.backendDOMNodeId });
    return { ...told(node), active: { ...told(active), ...await placeOf(client, related.backendDOMNodeId) } };
  };

  /** The names of everything with a role, in reading order. */
  const all = async (client, { role }) => {
    const { result } = await client.send('Runtime.evaluate', { expression: "document.querySelector('iframe').contentDocument.body" });
    const { nodes } = await client.send('Accessibility.queryAXTree', { objectId: result.objectId, role });
    return nodes.filter((node) => !node.ignored).map(told);
  };

  return {
    name: 'screen-reader',
    async executeCommand({ command, payload, session }) {
      if (command !== 'read-aloud') return undefined;
      const client = await clientOf(session);
      return (payload.what === 'focus' ? await focus(client) : await all(client, payload)) ?? { role: 'none', name: '', description: '', value: '', states: {} };
    },
  };
}
