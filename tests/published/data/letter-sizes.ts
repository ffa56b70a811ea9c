/**
 * Letter sizes of women with the girths from which and up to which they go, in
 * the manner of EN 13402-3, Size designation of clothes, Measurements and
 * intervals (CEN, 2004). From memory; the middles of XS to XXL agree with
 * those printed in a public source file, XXS and 3XL are from memory alone.
 */
export const LETTER_SIZES = [
  ['code', 'bust_from_cm', 'bust_to_cm', 'waist_from_cm', 'waist_to_cm', 'hip_from_cm', 'hip_to_cm'],
  ['XXS', '66 cm', '74 cm', '50 cm', '58 cm', '74 cm', '82 cm'],
  ['XS', '74 cm', '82 cm', '58 cm', '66 cm', '82 cm', '90 cm'],
  ['S', '82 cm', '90 cm', '66 cm', '74 cm', '90 cm', '98 cm'],
  ['M', '90 cm', '98 cm', '74 cm', '82 cm', '98 cm', '106 cm'],
  ['L', '98 cm', '107 cm', '82 cm', '91 cm', '106 cm', '115 cm'],
  ['XL', '107 cm', '119 cm', '91 cm', '103 cm', '115 cm', '125 cm'],
  ['XXL', '119 cm', '131 cm', '103 cm', '115 cm', '125 cm', '135 cm'],
  ['3XL', '131 cm', '143 cm', '115 cm', '127 cm', '135 cm', '145 cm'],
] as const;

export const LETTERS = LETTER_SIZES.slice(1).map((row) => row[0]);
