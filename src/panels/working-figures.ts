/** Figures of a working as text: as the cell shows them, and in the other system. */
import { html, nothing, type TemplateResult } from 'lit';
import { UNITS, inBase, show, type ShowAs } from '../quantities/index.ts';
import type { Result } from '../reckoning/index.ts';
import { shownResult } from './shown.ts';

export class Figures {
  constructor(private readonly as: ShowAs) {}

  main(result: Result): string {
    return shownResult(result, this.#one).main;
  }

  /** The same in the other system, where there is one. */
  other(result: Result, main = this.main(result)): string | undefined {
    const both = shownResult(result, { ...this.as, system: 'both' });
    return [both.main, both.also].find((text) => text !== undefined && text !== main);
  }

  second(result: Result): TemplateResult | typeof nothing {
    const other = this.other(result);
    return other ? html` <span class="second">(${other})</span>` : nothing;
  }

  /** What rounding was applied for show, and the exact figure; nothing is rounded in a sum. */
  rounding(result: Result): string {
    if (result.kind !== 'quantity') return '';
    const quantity = inBase(result.value, result.unit);
    if (shownResult(result, this.#one).exact) return 'Shown exactly.';
    const exact = show(quantity, { ...this.#one, decimals: 4 }).main;
    const inches = UNITS[result.unit].dimension === 'length' && this.as.decimals === undefined && / in$/.test(exact);
    return `${inches ? `Shown to the nearest 1/${this.as.inchStep} in` : 'Rounded for show'}; exact ${exact}. Nothing is rounded in the sum.`;
  }

  get #one(): ShowAs {
    return { ...this.as, system: this.as.system === 'both' ? 'own' : this.as.system };
  }
}
