/**
 * Three size charts with bust, waist and hip, as they are typed in cells. They
 * are where 1986 real women are looked for; no figure of them is checked here,
 * so that those from memory hold nothing up.
 */
export { LETTER_SIZES } from './letter-sizes.ts';

/**
 * JIS L 4005, Sizing systems for women’s garments, A type, stature R (158 cm).
 * Bust steps of 3 cm up to 92 and 4 cm after, hip steps of 2 cm, read at
 * fashionquest.nutte.jp/index.php/2016/08/14/understandyoursize; waists are for
 * reference only: 58, 61 and 64 read at ssize-fukuerabi.com/sizeinfo/westsize,
 * 67 at chigai-hikaku.com, the rest from memory; 3AR and 21AR have none.
 */
export const JIS_A = [
  ['code', 'bust_cm', 'waist_cm', 'hip_A_cm'],
  ['3AR', '74 cm', '', '85 cm'],
  ['5AR', '77 cm', '58 cm', '87 cm'],
  ['7AR', '80 cm', '61 cm', '89 cm'],
  ['9AR', '83 cm', '64 cm', '91 cm'],
  ['11AR', '86 cm', '67 cm', '93 cm'],
  ['13AR', '89 cm', '70 cm', '95 cm'],
  ['15AR', '92 cm', '73 cm', '97 cm'],
  ['17AR', '96 cm', '76 cm', '99 cm'],
  ['19AR', '100 cm', '80 cm', '101 cm'],
  ['21AR', '104 cm', '', '103 cm'],
] as const;

/** ASTM D5585-95, Misses, sizes 2 to 20, ASTM, 1995; from memory. */
export const MISSES_1995 = [
  ['size', '2', '4', '6', '8', '10', '12', '14', '16', '18', '20'],
  ['bust', '32 in', '33 in', '34 in', '35 in', '36 in', '37 1/2 in', '39 in', '40 1/2 in', '42 1/2 in', '44 1/2 in'],
  ['waist', '24 in', '25 in', '26 in', '27 in', '28 in', '29 1/2 in', '31 in', '32 1/2 in', '34 1/2 in', '36 1/2 in'],
  ['hip', '34 1/2 in', '35 1/2 in', '36 1/2 in', '37 1/2 in', '38 1/2 in', '40 in', '41 1/2 in', '43 in', '45 in', '47 in'],
] as const;
