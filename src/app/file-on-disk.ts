/** Saving where she says: with the browser's own picker where it has one (File System Access), else as a download. */
import { saveFile } from './save-file.ts';

interface Writable { write(data: Blob): Promise<void>; close(): Promise<void>; abort(): Promise<void> }
interface Handle { readonly name: string; createWritable(): Promise<Writable> }
type Picker = (options: object) => Promise<Handle>;

/** The name that the file has now; `null` when she chose none. Rejects when the disk refuses. */
export async function saveToDisk(name: string, content: Blob): Promise<string | null> {
  const picker = (globalThis as { showSaveFilePicker?: Picker }).showSaveFilePicker;
  const handle = picker ? await pick(picker, name) : 'download';
  if (handle === null) return null;
  if (handle === 'download') {
    saveFile(name, content);
    return name;
  }
  const file = await handle.createWritable();
  try {
    await file.write(content);
    await file.close();
  } catch (error) {
    // What stood in the file before stays there.
    await file.abort().catch(() => undefined);
    throw error;
  }
  return handle.name;
}

async function pick(picker: Picker, suggestedName: string): Promise<Handle | 'download' | null> {
  try {
    return await picker({ suggestedName, types: [{ description: 'Workbook of Tape & Tally', accept: { 'application/json': ['.json'] } }] });
  } catch (error) {
    if ((error as { name?: unknown } | null)?.name === 'AbortError') return null;
    // A page in a frame, or one that the browser does not trust with files.
    return 'download';
  }
}
