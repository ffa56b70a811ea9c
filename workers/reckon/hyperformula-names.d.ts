/** How a formula that has no name in its text can depend on one. */
declare module '*/hyperformula/es/parser/RelativeDependency.mjs' {
  import type { Dependency } from '*/hyperformula/es/shapes.mjs';

  /** A formula's use of a name. */
  export class NamedExpressionDependency {
    constructor(name: string);
    readonly name: string;
    absolutize(): Dependency;
  }
}
