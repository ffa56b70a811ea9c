/** Lets the entry line and the grid work as one: each shows what is typed in the other, and cells can be pointed at for either. */
import type { EntryLine } from './entry-line.ts';
import type { GridEvent } from './events.ts';
import type { Grid } from './grid.ts';

/** Call once, when both are in the document. */
export function joinEntryLine(line: EntryLine, grid: Grid): void {
  const mirror = ({ detail }: GridEvent<'tt-edit-change'>): void => {
    line.draft = detail.text;
  };
  grid.addEventListener('tt-edit-start', mirror);
  grid.addEventListener('tt-edit-change', mirror);
  grid.addEventListener('tt-edit-end', ({ detail }) => {
    // A text that was handed over is taken by the line when the focus arrives there.
    if (detail.then !== null) line.draft = null;
  });

  const draw = ({ detail }: GridEvent<'tt-edit-change'>): void => {
    grid.draft = detail;
  };
  line.addEventListener('tt-edit-start', draw);
  line.addEventListener('tt-edit-change', draw);
  line.addEventListener('tt-edit-end', ({ detail }) => {
    grid.draft = null;
    if (detail.then === null) return;
    grid.focus();
    grid.go(detail.then);
  });
  grid.pointElsewhere = (reference) => line.point(reference);
}

