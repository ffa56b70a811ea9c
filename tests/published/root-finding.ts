/**
 * Test problems with known zeros for finding them between two ends:
 * G. E. Alefeld, F. A. Potra, Yixun Shi, "Algorithm 748: Enclosing Zeros of
 * Continuous Functions", ACM Transactions on Mathematical Software 21(3), 1995,
 * 327–344 (https://doi.org/10.1145/210089.210111), the first table of problems;
 * zeros to 14 figures as the authors' program prints them.
 */
export interface ZeroProblem {
  readonly name: string;
  readonly f: (x: number) => number;
  readonly low: number;
  readonly high: number;
  readonly zero: number;
  /** Every input within so much of the zero gives 0 in double precision. */
  readonly about?: number;
}

const poles = (x: number): number => {
  let sum = 0;
  for (let i = 1; i <= 20; i++) sum += (2 * i - 5) ** 2 / (x - i * i) ** 3;
  return -2 * sum;
};

type Row = readonly [n: number, zero: number];
const each = (name: string, rows: readonly Row[], low: number, high: number, f: (n: number) => (x: number) => number): ZeroProblem[] =>
  rows.map(([n, zero]) => ({ name: `${name}, n = ${n}`, f: f(n), low, high, zero }));
const power = (a: number) => (n: number) => (x: number) => x ** n - a;

export const ZERO_PROBLEMS: readonly ZeroProblem[] = [
  { name: 'sin x − x/2', f: (x) => Math.sin(x) - x / 2, low: Math.PI / 2, high: Math.PI, zero: 1.8954942670340 },
  ...[3.0229153472731, 6.6837535608081, 11.238701655002, 19.676000080623, 29.828227326505, 41.906116195289, 55.953595800143, 71.985665586588, 90.008868539167, 110.02653274833]
    .map((zero, i): ZeroProblem => ({ name: `between the poles at ${(i + 1) ** 2} and ${(i + 2) ** 2}`, f: poles, low: (i + 1) ** 2 + 1e-9, high: (i + 2) ** 2 - 1e-9, zero })),
  ...each('a x e^(b x)', [[-40, 0], [-100, 0], [-200, 0]], -9, 31, (a) => (x) => a * x * Math.exp(a === -40 ? -x : a === -100 ? -2 * x : -3 * x)),
  ...each('x^n − 0.2', [[4, 0.66874030497642], [6, 0.76472449133173], [8, 0.81776543395794], [10, 0.85133992252078], [12, 0.87448527222117]], 0, 5, power(0.2)),
  ...each('x^n − 1', [[4, 1], [6, 1], [8, 1], [10, 1], [12, 1]], 0, 5, power(1)),
  ...each('x^n − 1 from below 0', [[8, 1], [10, 1], [12, 1], [14, 1]], -0.95, 4.05, power(1)),
  { name: 'sin x − 0.5', f: (x) => Math.sin(x) - 0.5, low: 0, high: 1.5, zero: 0.52359877559830 },
  ...each('2 x e^−n − 2 e^(−n x) + 1', [
    [1, 0.42247770964124], [2, 0.30669941048320], [3, 0.22370545765466], [4, 0.17171914751951], [5, 0.13825715505682],
    [20, 3.4657359020854e-2], [40, 1.7328679513999e-2], [60, 1.1552453009332e-2], [80, 8.6643397569993e-3], [100, 6.9314718055995e-3],
  ], 0, 1, (n) => (x) => 2 * x * Math.exp(-n) - 2 * Math.exp(-n * x) + 1),
  ...each('(1 + (1−n)²) x − (1−n x)²', [[5, 3.8402551840622e-2], [10, 9.9000099980005e-3], [20, 2.4937500390620e-3]], 0, 1, (n) => (x) => (1 + (1 - n) ** 2) * x - (1 - n * x) ** 2),
  ...each('x² − (1−x)^n', [[2, 0.5], [5, 0.34595481584824], [10, 0.24512233375331], [15, 0.19554762353657], [20, 0.16492095727644]], 0, 1, (n) => (x) => x * x - (1 - x) ** n),
  ...each('(1 + (1−n)⁴) x − (1−n x)⁴', [
    [1, 0.27550804099948], [2, 0.13775402049974], [4, 1.0305283778156e-2], [5, 3.6171081789041e-3], [8, 4.1087291849640e-4], [15, 2.5989575892908e-5], [20, 7.6685951221853e-6],
  ], 0, 1, (n) => (x) => (1 + (1 - n) ** 4) * x - (1 - n * x) ** 4),
  ...each('(x−1) e^(−n x) + x^n', [[1, 0.40105813754155], [5, 0.51615351875793], [10, 0.53952222690842], [15, 0.54818229434066], [20, 0.55270466667849]], 0, 1, (n) => (x) => (x - 1) * Math.exp(-n * x) + x ** n),
  ...each('(n x − 1) / ((n−1) x)', [[2, 1 / 2], [5, 1 / 5], [15, 1 / 15], [20, 1 / 20]], 0.01, 1, (n) => (x) => (n * x - 1) / ((n - 1) * x)),
  ...each('x^(1/n) − n^(1/n)', [2, 3, 4, 5, 6, 7, 9, 11, 13, 15, 17, 19, 21, 23, 25, 27, 29, 31, 33].map((n): Row => [n, n]), 1, 100, (n) => (x) => x ** (1 / n) - n ** (1 / n)),
  { name: 'x e^(−1/x²)', f: (x) => (x === 0 ? 0 : x / Math.exp(1 / (x * x))), low: -1, high: 4, zero: 0, about: 0.03768 },
  ...each('n/20 (x/1.5 + sin x − 1), level below 0', Array.from({ length: 40 }, (_, i): Row => [i + 1, 0.62380651896161]), -1e4, Math.PI / 2, (n) => (x) => (n / 20) * (x >= 0 ? x / 1.5 + Math.sin(x) - 1 : -1)),
  ...each('e^((n+1) x/2 · 10³) − 1.859 between two levels', [
    [20, 5.9051305594220e-5], [25, 4.7695285287639e-5], [30, 4.0002497338020e-5], [35, 3.4446594929961e-5], [40, 3.0245790670210e-5],
    [100, 1.2277994232462e-5], [200, 6.1695393904409e-6], [500, 2.4752044261050e-6], [1000, 1.2388385788997e-6],
  ], -1e4, 1e4, (n) => (x) => (x > 0.002 / (1 + n) ? Math.E - 1.859 : x >= 0 ? Math.exp(((n + 1) * x * 1000) / 2) - 1.859 : -0.859)),
];
