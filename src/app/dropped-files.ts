/** A file dropped anywhere on the page: opened when it is a workbook. Left to itself, the browser would leave the page for it. */
import type { Desk } from './desk.ts';
import type { KeepDialogs } from './keep-dialogs.ts';

export function takeDroppedFiles(page: EventTarget, keep: KeepDialogs, desk: Desk): void {
  // A dialog that takes files itself has said so already.
  const free = (event: Event): boolean => !event.defaultPrevented && ((event as DragEvent).dataTransfer?.types.includes('Files') ?? false);
  page.addEventListener('dragover', (event) => { if (free(event)) event.preventDefault(); });
  page.addEventListener('drop', (event) => {
    if (!free(event)) return;
    event.preventDefault();
    const files = [...(event as DragEvent).dataTransfer!.files];
    const [file] = files;
    if (!file) return;
    if (files.length > 1) desk.say('Drop one file at a time.');
    else if (/\.(csv|tsv|txt)$/i.test(file.name)) desk.say('A table is brought in with “Size chart from a CSV file…”, where it can be looked at first.');
    else keep.takeFile(file);
  });
}
