/** What is read on the page: words, names of controls, addresses. */

export const words = (text: string | null | undefined): string => (text ?? '').replace(/\s+/g, ' ').trim();

/** What a control is called, as far as the app's own mark-up goes. */
export function nameOf(element: Element): string {
  const label = element.getAttribute('aria-label');
  if (label) return words(label);
  const labels = 'labels' in element ? (element as HTMLInputElement).labels : null;
  if (labels?.length) return words(labels[0]!.textContent);
  return words(element.textContent);
}

/** A module of the app or of a package it uses, from where the page itself came. */
export function isOwnCode(address: string): boolean {
  const { origin, pathname } = new URL(address);
  return origin === location.origin && (/^\/(?:src\/|workers\/|sheets\/|node_modules\/|__).*\.(?:[mc]?js|ts|json)$/.test(pathname) || /^\/src\/(?:icon\.svg|look\/fonts\/[\w.-]+\.(?:css|woff2))$/.test(pathname));
}

/** An element's words, with a space where a part of it begins, as they are seen. */
export function spaced(element: Element): string {
  return [...element.childNodes].filter((node) => node.nodeType !== Node.COMMENT_NODE).map((node) => words(node.textContent)).filter(Boolean).join(' ');
}

/** Without what stands small below it. */
export function ownText(element: Element): string {
  return words([...element.childNodes].filter((node) => node.nodeType === Node.TEXT_NODE).map((node) => node.textContent).join(''));
}

export function columnLetters(col: number): string {
  return col < 26 ? String.fromCharCode(65 + col) : `${columnLetters(Math.floor(col / 26) - 1)}${columnLetters(col % 26)}`;
}
