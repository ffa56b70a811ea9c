/**
 * Rules for the browser's pages: only the paper is printed, in the middle of
 * white margins, with the workbook's title and the page's number below.
 */
export interface PaperSize {
  readonly paper: 'A4' | 'Letter';
  readonly across: boolean;
}

/** @param size `null`: whatever paper the browser has */
export function pageRules(title: string, size: PaperSize | null): string {
  return `
    body > tt-paper { display: none; }
    @media print {
      :root, body { background: #fff; color: #000; color-scheme: light; }
      body { margin: 0; }
      body > :not(tt-paper) { display: none !important; }
      body > tt-paper { display: block; }
    }
    @page {
      ${size ? `size: ${size.paper} ${size.across ? 'landscape' : 'portrait'};` : ''}
      margin: 12mm;
      @bottom-left { content: ${quoted(title)}; font: 7pt sans-serif; color: #000; }
      @bottom-right { content: "page " counter(page) " of " counter(pages); font: 7pt sans-serif; color: #000; }
    }`;
}

/** A string of CSS; nothing in a title may end it. */
export function quoted(text: string): string {
  return `"${text.replace(/["\\]|\p{Cc}/gu, (character) => `\\${character.codePointAt(0)!.toString(16)} `)}"`;
}
