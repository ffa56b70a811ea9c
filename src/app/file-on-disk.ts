/** Saving where she says: with the browser's own picker where it has one (File System Access), else as a download. */
import { saveFile } from './save-file.ts';

interface Writable { write(data: Blob): Promise<void>; close(): Promise<void>; abort(): Promise<void> }
export interface FileHandle { readonly name: string; createWritable(): Promise<Writable> }
type Picker = (options: object) => Promise<FileHandle>;

const picker = (): Picker | undefined => (globalThis as { showSaveFilePicker?: Picker }).showSaveFilePicker;

/** Whether a file can be kept hold of. */
export const canFollowFiles = (): boolean => picker() !== undefined;

/** The name that the file has now; `null` when she chose none. Rejects when the disk refuses. */
export async function saveToDisk(name: string, content: Blob): Promise<string | null> {
  const handle = await pickFile(name);
  if (handle === null) return null;
  if (handle === 'none') {
    saveFile(name, content);
    return name;
  }
  await writeTo(handle, content);
  return handle.name;
}

/** `null` when she chose no file; `none` when the browser lets this page choose none: one in a frame, or one that it does not trust. */
export async function pickFile(suggestedName: string): Promise<FileHandle | 'none' | null> {
  try {
    return await picker()?.({ suggestedName, types: [{ description: 'Workbook of Tape & Tally', accept: { 'application/json': ['.json'] } }] }) ?? 'none';
  } catch (error) {
    return (error as { name?: unknown } | null)?.name === 'AbortError' ? null : 'none';
  }
}

/** All or nothing: when it fails, what stood in the file before stays there. */
export async function writeTo(handle: FileHandle, content: Blob): Promise<void> {
  const file = await handle.createWritable();
  try {
    await file.write(content);
    await file.close();
  } catch (error) {
    await file.abort().catch(() => undefined);
    throw error;
  }
}
