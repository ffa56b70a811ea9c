/**
 * The second door of this folder: panels and dialogs that the first sight of the
 * page does without. Each is a module of its own, fetched when it is first asked
 * for; until then its element stands in the page empty and keeps what it was given.
 */
export const LATER = {
  'tt-people': () => import('./people.ts'),
  'tt-worked-form': () => import('./worked-form.ts'),
  'tt-start-own': () => import('./start-own.ts'),
  'tt-side-by-side': () => import('./side-by-side.ts'),
  'tt-work-back': () => import('./work-back.ts'),
  'tt-run-of-values': () => import('./run-of-values.ts'),
  'tt-find': () => import('./find.ts'),
  'tt-cell-format': () => import('./cell-format.ts'),
  'tt-history': () => import('./history.ts'),
  'tt-pins': () => import('./pins.ts'),
  'tt-note': () => import('./note.ts'),
  'tt-sort': () => import('./sort.ts'),
  'tt-filter': () => import('./filter.ts'),
  'tt-templates': () => import('./templates.ts'),
  'tt-import-chart': () => import('./import-chart.ts'),
  'tt-export-table': () => import('./export-table.ts'),
  'tt-names': () => import('./names.ts'),
  'tt-rename': () => import('./rename.ts'),
  'tt-reference': () => import('./reference.ts'),
  'tt-shelf': () => import('./shelf.ts'),
  'tt-set-aside': () => import('./set-aside.ts'),
  'tt-losses': () => import('./losses.ts'),
  'tt-two-readings': () => import('./two-readings.ts'),
  'tt-print': () => import('./print.ts'),
  'tt-picture': () => import('./picture.ts'),
  'tt-lay': () => import('./lay.ts'),
  'tt-shapes': () => import('./shape.ts'),
  'tt-size-choice': () => import('./size-choice.ts'),
  'tt-to-buy': () => import('./to-buy.ts'),
  'tt-at-the-table': () => import('./at-the-table.ts'),
} as const satisfies Readonly<Partial<Record<keyof HTMLElementTagNameMap, () => Promise<unknown>>>>;

export type LaterTag = keyof typeof LATER;
