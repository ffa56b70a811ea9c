/** Garments that can be started: which templates each is made of, and which of their cells take what is known of the person. */

/** What a sheet started from a template is filled with. Cells by their names. */
export interface SheetUse {
  readonly template: string;
  readonly name: string;
  readonly about: string;
  /** Over what the template has. A formula that is one measure and nothing else is left out where that was not measured. */
  readonly fill: Readonly<Record<string, string>>;
  /** Cells whose figure is the template’s, with what it has to be instead. */
  readonly notes?: Readonly<Record<string, string>>;
  /** Where the ease that she liked goes, by level, and the length. */
  readonly ease?: Readonly<Record<string, string>>;
  readonly length?: string;
}

export interface Garment {
  readonly id: string;
  readonly name: string;
  readonly about: string;
  /** Measures without which nothing can be worked out. */
  readonly asks: readonly string[];
  /** Works with the size chart of a pattern. */
  readonly chart: boolean;
  readonly sheets: readonly SheetUse[];
  /** The cell of the length of cloth, for the list of what to buy. */
  readonly cloth?: string;
}

const usual = (garment: string, level: string, fit: string): string => `=SPAN.LOW(EASE.USUAL(usual ease, "${garment}", "${level}", "${fit}"))`;

const DRAWN_IN = 'Begins as a usual figure, not this pattern’s: type what its envelope or its pieces measure beyond the chart’s body.';

const fit = (ease: Readonly<Record<string, string>>): SheetUse => ({
  template: 'fit', name: 'Fit', about: 'size, ease and blend',
  fill: { B2: '=bust', C2: '=waist', D2: '=hip', B25: '=waist to hip', ...ease },
  notes: { B11: DRAWN_IN, C11: DRAWN_IN, D11: DRAWN_IN },
  ease: { bust: 'B17', waist: 'C17', hip: 'D17' },
});

const ALTERATIONS: SheetUse = {
  template: 'alterations', name: 'Alterations', about: 'the waist, seam by seam',
  fill: { B2: '=Fit!C12', B3: '=waist + Fit!C17', D9: '=SEAM.SHARE(B4, 50 %, C9)', D10: '0 cm', B24: '0 cm' },
};

/** Size, ease and blend without the bust: for what hangs from the waist. */
const WITHOUT_BUST: Readonly<Record<string, string>> = {
  ...Object.fromEntries([...[2, 3, 4, 5, 6, 7, 10, 11, 12, 13, 14, 17, 18, 19, 20, 21, 31, 32, 33, 34, 35, 36, 37, 40].map((row) => `B${row}`),
    ...[30, 31, 32, 33, 34, 35, 36, 37].map((row) => `A${row}`)].map((cell) => [cell, ''])),
  B1: '', B41: '=SIZE.FIT(chart, C2:D3, C40:D40)', B42: '=SIZE.MISFIT(chart, C2:D3, B41, C40:D40)',
};

const skirt = (id: string, name: string, about: string, fill: SheetUse['fill'], ease: SheetUse['ease'], length: string, cloth: string): Garment => ({
  id, name, about, asks: ['waist', 'hip'], chart: false, cloth: `=Skirt!${cloth}`,
  sheets: [{ template: id, name: 'Skirt', about: name.toLowerCase(), fill, ...(ease && { ease }), length }],
});

export const GARMENTS: readonly Garment[] = [
  {
    id: 'dress', name: 'Dress', about: 'From a pattern with a size chart: size at bust, waist and hip, ease, seams.', asks: ['bust', 'waist', 'hip'], chart: true,
    sheets: [fit({ B17: usual('dress', 'bust', 'average'), C17: usual('dress', 'waist', 'average'), D17: usual('dress', 'hip', 'average') }), ALTERATIONS],
  },
  {
    id: 'blouse', name: 'Blouse', about: 'From a pattern with a size chart, with the usual ease of a blouse at the bust.', asks: ['bust', 'waist', 'hip'], chart: true,
    sheets: [fit({ B17: usual('blouse', 'bust', 'loose'), C17: usual('dress', 'waist', 'average'), D17: usual('dress', 'hip', 'average') }), ALTERATIONS],
  },
  {
    id: 'skirt', name: 'Skirt from a pattern', about: 'From a pattern with a size chart: size at waist and hip.', asks: ['waist', 'hip'], chart: true,
    sheets: [fit({ ...WITHOUT_BUST, C17: usual('skirt', 'waist', 'fitted'), D17: usual('skirt', 'hip', 'fitted') }), ALTERATIONS],
  },
  {
    id: 'trousers', name: 'Trousers', about: 'From a pattern with a size chart: size at waist and hip.', asks: ['waist', 'hip'], chart: true,
    sheets: [fit({ ...WITHOUT_BUST, C17: usual('trousers', 'waist', 'fitted'), D17: usual('trousers', 'hip', 'fitted') }), ALTERATIONS],
  },
  skirt('pleated-skirt', 'Pleated skirt', 'How many pleats, how deep, and the cloth. No pattern needed.', { B2: '=waist', B3: '=hip' }, { waist: 'B4', hip: 'B5' }, 'B20', 'B26'),
  skirt('circle-skirt', 'Circle skirt', 'Whole circle or a part of one: radius, sweep and cloth. No pattern needed.', { B2: '=waist', B22: '=hip' }, { waist: 'B3' }, 'B8', 'B19'),
  skirt('gathered-and-tiered', 'Gathered skirt', 'Gathered, or in tiers: fullness, strips and cloth. No pattern needed.', { B2: '=waist', B33: '=hip' }, { waist: 'B3' }, 'B10', 'B14'),
  skirt('gored-skirt', 'Gored skirt', 'Widths of each gore and the cloth. No pattern needed.', { B2: '=waist', B3: '=hip', B6: '=waist to hip' }, { waist: 'B4', hip: 'B5' }, 'B7', 'B26'),
  {
    id: 'knit-top', name: 'Knit top', about: 'How the knit stretches, widths, neckband and elastic.', asks: ['bust', 'waist', 'hip'], chart: false,
    sheets: [{ template: 'knit-top', name: 'Knit top', about: 'stretch, widths, neckband', fill: { B7: '=bust', C7: '=waist', D7: '=hip', B20: '=head', B27: '=waist', B31: '=hip' } }],
  },
];

/** Sheets that can come besides. */
export const MORE_SHEETS: readonly (SheetUse & { readonly label: string })[] = [
  { label: 'Bodice and sleeve', template: 'bodice-and-sleeve', name: 'Bodice and sleeve', about: 'shoulders, fuller bust, darts, cap ease', fill: { B3: '=shoulder length', B9: '=bust' } },
  { label: 'Front fastening', template: 'front-fastening', name: 'Front fastening', about: 'buttons and their gaps', fill: {} },
  { label: 'Contrast band', template: 'contrast-band', name: 'Contrast band', about: 'a band and its interfacing', fill: {} },
  { label: 'Bias binding', template: 'bias-binding', name: 'Bias binding', about: 'strips on the bias', fill: {} },
];
