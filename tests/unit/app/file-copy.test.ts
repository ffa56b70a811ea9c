import { expect, test, vi } from 'vitest';
import { FileCopy } from '../../../src/app/file-copy.ts';
import { pickFile, writeTo, type FileHandle } from '../../../src/app/file-on-disk.ts';
import { apply, bookText, emptyBook, readBookText } from '../../../src/workbook/index.ts';

/** A file as the browser gives it: what was written counts when it is closed. */
function file(failing: { on: 'open' | 'write' | 'close' | null } = { on: null }) {
  const disk = { text: 'before', writes: 0, aborted: 0 };
  const handle: FileHandle = {
    name: 'skirt.json',
    createWritable: async () => {
      if (failing.on === 'open') throw new Error('not allowed');
      let held = '';
      return {
        write: async (data: Blob) => {
          held = await data.text();
          if (failing.on === 'write') throw new Error('disk full');
        },
        close: async () => {
          if (failing.on === 'close') throw new Error('disk gone');
          disk.text = held;
          disk.writes++;
        },
        abort: async () => { disk.aborted++; },
      };
    },
  };
  return { disk, handle };
}

test('it follows the workbook, once for many changes, and what it holds opens', async () => {
  const { disk, handle } = file();
  let book = emptyBook('a');
  const copy = new FileCopy(handle, () => book, 5);
  await copy.write();
  expect(disk.text).toBe(bookText(book));
  for (let row = 0; row < 20; row++) {
    book = apply({ do: 'setCells', sheet: 1, cells: [{ row, col: 0, cell: { raw: `${row} cm` } }] }, book).book;
    copy.changed();
  }
  await vi.waitFor(() => expect(disk.writes).toBe(2));
  expect(readBookText(disk.text)).toEqual({ book, problems: [] });
  expect(copy.state).toMatchObject({ state: 'following', name: 'skirt.json' });
  // Nothing new, nothing written.
  copy.changed();
  await copy.write();
  expect(disk.writes).toBe(2);
});

test.each(['open', 'write', 'close'] as const)('when the disk fails at “%s”, what stood there stays, it says so, and goes on with the next change', async (on) => {
  const failing: { on: typeof on | null } = { on };
  const { disk, handle } = file(failing);
  let book = emptyBook('a');
  const copy = new FileCopy(handle, () => book, 1);
  await copy.write();
  expect([disk.text, copy.state.state]).toEqual(['before', 'failed']);
  expect(disk.aborted).toBe(on === 'open' ? 0 : 1);
  failing.on = null;
  book = { ...book, title: 'Skirt' };
  copy.changed();
  await vi.waitFor(() => expect(copy.state.state).toBe('following'));
  expect(disk.text).toBe(bookText(book));
});

test('after it was ended nothing is written any more', async () => {
  const { disk, handle } = file();
  const copy = new FileCopy(handle, () => emptyBook('a'), 1);
  copy.changed();
  copy.end();
  await copy.write();
  await new Promise((resolve) => { setTimeout(resolve, 10); });
  expect(disk.text).toBe('before');
});

test('choosing: a file, none, and a browser that lets the page choose none', async () => {
  const { handle } = file();
  const choosing = (answer: () => Promise<FileHandle>) => { vi.stubGlobal('showSaveFilePicker', answer); };
  choosing(async () => handle);
  expect(await pickFile('skirt.json')).toBe(handle);
  choosing(async () => { throw new DOMException('', 'AbortError'); });
  expect(await pickFile('skirt.json')).toBeNull();
  choosing(async () => { throw new DOMException('', 'SecurityError'); });
  expect(await pickFile('skirt.json')).toBe('none');
  vi.stubGlobal('showSaveFilePicker', undefined);
  expect(await pickFile('skirt.json')).toBe('none');
  vi.unstubAllGlobals();
  await expect(writeTo(file({ on: 'write' }).handle, new Blob(['x']))).rejects.toThrow('disk full');
});
