/** The package's own types point to a file that TypeScript does not look for. */
declare module '@web/test-runner-visual-regression' {
  /** Compares the element, as it is on the page, with the reference of this name; throws where they differ. */
  export function visualDiff(element: Node, name: string): Promise<void>;
}
