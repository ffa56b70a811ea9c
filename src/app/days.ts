/** Days as people write them. A day is ISO 8601, without a time. */

/** By the clock of this device. */
export function today(now = new Date()): string {
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** "3 November 2026", or "3 Nov 2026" where there is little room. */
export function dayInWords(day: string, month: 'long' | 'short' = 'long'): string {
  const date = new Date(`${day}T12:00:00`);
  return Number.isNaN(date.getTime()) ? day : date.toLocaleDateString('en-GB', { day: 'numeric', month, year: 'numeric' });
}
