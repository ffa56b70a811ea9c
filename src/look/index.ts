/** The look: design tokens and the shared styles of controls. No logic. */
export { tokens } from './tokens.ts';
export { controls } from './controls.ts';
