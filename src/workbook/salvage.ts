/**
 * JSON that does not parse: cut off, or with a damaged place. What stands
 * whole is kept; a text or a number that was cut in two is never kept, because
 * half a measure is a wrong measure.
 */

export interface Salvaged {
  readonly json: unknown;
  /** Lines left out, counted from 1, and whether the end is missing. */
  readonly lines: readonly number[];
  readonly cut: boolean;
}

/** After so many damaged places the rest is left: each takes a search through the whole text. */
const mostPlaces = (text: string): number => Math.min(20, Math.ceil(2_000_000 / text.length));

/** `null` when nothing of it can be used. Never throws. */
export function salvage(text: string): Salvaged | null {
  const { kept, lines: items } = withoutDamagedItems(text);
  const most = mostPlaces(text);
  const lines = new Set(items);
  let rest = kept;
  for (let place = 0; ; place++) {
    const all = rest.join('\n');
    const whole = parsed(all);
    if (whole) return { json: whole.value, lines: ascending(lines), cut: false };
    // Before anything is whole, it is the first entry that is damaged.
    const at = lineAt(rest, longestGood(all)?.end ?? /^[\s{]*/.exec(all)![0].length);
    // Cut off, or all on one line: nothing comes after that could be joined on.
    if (at >= rest.length - 1 || place === most) break;
    const number = numberOf(at, lines);
    rest = rest.filter((_, line) => line !== at);
    lines.add(number);
  }
  const first = longestGood(kept.join('\n'));
  const value = first && parsed(first.json);
  return value && { json: value.value, lines: ascending(items), cut: true };
}

/** A cell stands on a line of its own: one that does not parse costs no other. */
function withoutDamagedItems(text: string): { kept: string[]; lines: Set<number> } {
  const lines = new Set<number>();
  const kept = text.split('\n').filter((line, at) => {
    const item = /^\s*\[\d.*$/.test(line) && line.replace(/,?\s*$/, '');
    if (!item || parsed(item)) return true;
    lines.add(at + 1);
    return false;
  });
  return { kept, lines };
}

function parsed(text: string): { readonly value: unknown } | null {
  try {
    return { value: JSON.parse(text) as unknown };
  } catch {
    return null;
  }
}

/** A text's beginning, closed. `end`: where the first item is that is not in it. */
interface Closed {
  readonly json: string;
  readonly end: number;
}

/** As much of the text, from its beginning, as makes sense when it is closed. */
function longestGood(text: string): Closed | null {
  let best: Closed | null = null;
  let [good, bad] = [0, text.length + 1];
  while (bad - good > 1) {
    const middle = (good + bad) >> 1;
    const found = closed(text.slice(0, middle));
    if (found && !parsed(found.json)) {
      bad = middle;
    } else {
      good = middle;
      best = found;
    }
  }
  if (!best) return null;
  return { json: best.json, end: best.end + /^[\s,]*/.exec(text.slice(best.end))![0].length };
}

/** No file of ours has so many brackets in each other. */
const DEEPEST = 64;

/** Up to the last item that is whole, with every bracket closed; `null` when there is none. */
function closed(text: string): Closed | null {
  const open: string[] = [];
  let [end, depth] = [-1, 0];
  // After the last mark brackets are only opened, so that their number is enough to know them by.
  const mark = (at: number): void => { [end, depth] = [at, open.length]; };
  let inText = false;
  scan: for (let at = 0; at < text.length && open.length <= DEEPEST; at++) {
    const character = text[at]!;
    if (inText) {
      if (character === '\\') at++;
      else if (character === '"') inText = false;
      continue;
    }
    switch (character) {
      case '"': inText = true; break;
      case '[': open.push(']'); break;
      case '{': open.push('}'); break;
      case ',': mark(at); break;
      case ']': case '}':
        if (open.at(-1) !== character) break scan;
        open.pop();
        mark(at + 1);
        break;
    }
  }
  return end < 0 ? null : { json: text.slice(0, end) + open.slice(0, depth).reverse().join(''), end };
}

function lineAt(lines: readonly string[], offset: number): number {
  let end = 0;
  for (const [at, line] of lines.entries()) {
    end += line.length + 1;
    if (offset < end) return at;
  }
  return lines.length - 1;
}

/** The number that a line had before the others were taken out. */
function numberOf(at: number, out: ReadonlySet<number>): number {
  let number = 0;
  for (let left = at; left >= 0; left--) {
    number++;
    while (out.has(number)) number++;
  }
  return number;
}

const ascending = (numbers: ReadonlySet<number>): number[] => [...numbers].sort((a, b) => a - b);
