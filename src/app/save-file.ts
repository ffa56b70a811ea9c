/** Hands a file to the browser's own download. */
export function saveFile(name: string, content: Blob): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(content);
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  // The download has taken hold of the address by then.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/** A name that every file system takes. */
export function fileName(title: string, ending: string): string {
  const safe = title.normalize('NFKD').replace(/[^\w -]/g, '').trim().replace(/\s+/g, '-').slice(0, 60);
  return `${safe || 'workbook'}.${ending}`;
}
