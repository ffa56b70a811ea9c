/** True for an event on the open editor or on its helper: they have their own keys, clicks and menu. */
export const inEditor = (event: Event): boolean => (event.composedPath()[0] as Element).closest?.('.cell-editor.open, .helper') != null;
