/** Puts the helper panel under its field, or over it where there is more room; and shows or hides it. */
const GAP = 4;
const EDGE = 8;

export function placeHelper(panel: HTMLElement | null, field: HTMLElement, show: boolean): void {
  if (!panel) return;
  const open = panel.matches(':popover-open');
  if (!show) {
    if (open) panel.hidePopover();
    return;
  }
  if (!open) panel.showPopover();
  const at = field.getBoundingClientRect();
  // The part of the window that an on-screen keyboard leaves.
  const seen = window.visualViewport;
  const width = seen?.width ?? window.innerWidth;
  const height = seen?.height ?? window.innerHeight;
  const below = height - at.bottom - GAP - EDGE;
  const above = at.top - GAP - EDGE;
  const under = below >= Math.min(panel.scrollHeight, 220) || below >= above;
  panel.style.maxHeight = `${Math.max(80, Math.min(320, under ? below : above))}px`;
  panel.style.maxWidth = `${width - 2 * EDGE}px`;
  const box = panel.getBoundingClientRect();
  panel.style.left = `${Math.max(EDGE, Math.min(at.left, width - box.width - EDGE))}px`;
  panel.style.top = `${under ? at.bottom + GAP : at.top - GAP - box.height}px`;
}
