export interface Difference { readonly functions: readonly string[]; readonly sentence: string }
export const DIFFERENCES: readonly Difference[] = [];
