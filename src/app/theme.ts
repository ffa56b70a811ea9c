/** Light or dark: as the device is, or as was chosen on it. */
export type Theme = 'auto' | 'light' | 'dark';

const KEPT_AS = 'tape-and-tally theme';

export function setTheme(theme: Theme): void {
  wear(theme);
  try {
    if (theme === 'auto') localStorage.removeItem(KEPT_AS);
    else localStorage.setItem(KEPT_AS, theme);
  } catch {
    // A browser that keeps nothing asks again next time.
  }
}

/** At the start, before anything is drawn. */
export function restoreTheme(): void {
  try {
    const kept = localStorage.getItem(KEPT_AS);
    if (kept === 'light' || kept === 'dark') wear(kept);
  } catch {
    // As the device is.
  }
}

function wear(theme: Theme): void {
  const { dataset } = document.documentElement;
  if (theme === 'auto') delete dataset.theme;
  else dataset.theme = theme;
}
