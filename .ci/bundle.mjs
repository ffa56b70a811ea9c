import { leanSources } from './lean-sources.mjs';
export const pagePlugins = () => [leanSources()];
