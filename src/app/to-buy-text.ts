/** The list for the shop as text, as a table and for paper. Pure. */
import type { PaperHead, Shopping, ShoppingItem, ShoppingList, ShownFigure } from '../panels/index.ts';
import type { OutCell } from '../tables/index.ts';

const both = ({ main, also }: ShownFigure): string => (also ? `${main} (${also})` : main);

const amountOf = ({ buy, by }: ShoppingItem): string => (by === '' ? both(buy) : `${both(buy)} × ${by}`);

/** A line a thing, to send or to copy. What there is enough of is not to be asked for. */
export function shoppingText(list: ShoppingList, title: string): string {
  const lines = list.items.filter(({ enough }) => !enough).map((item) => {
    const words = [`${item.what}${item.width ? `, ${both(item.width)} wide` : ''}: ${amountOf(item)}`];
    if (item.cost !== '') words.push(item.cost);
    if (item.bought.state === 'yes') words.push('bought');
    return [`- ${words.join('; ')}`, ...item.cautions.map((caution) => `  Look at this first: ${caution}`)].join('\n');
  });
  const missing = list.unlisted.map(({ what, words, ...figure }) => `- ${what}${words ? ` for ${words}` : ''}: ${both(figure)} needed; how much to buy is not worked out`);
  return [`To buy: ${title}`, ...lines, ...missing, totalLine(list)].join('\n');
}

export function totalLine({ total, unpriced }: ShoppingList): string {
  if (unpriced === 0) return `Together: ${total}`;
  return unpriced === 1 ? `Together: ${total}, without one thing that has no price yet` : `Together: ${total}, without ${unpriced} things that have no price yet`;
}

export function shoppingTable(list: ShoppingList): OutCell[][] {
  const text = (words: string): OutCell => (words === '' ? { kind: 'empty' } : { kind: 'text', text: words });
  const rows = list.items.map((item) => [
    item.what, item.width ? both(item.width) : '', amountOf(item), both(item.needed), item.home ? both(item.home) : '', item.cost,
    item.needs.map(({ words, ...figure }) => `${words ? `${words} ` : ''}${both(figure)}`).join('; '), item.bought.state === 'yes' ? 'bought' : '', item.cautions.join(' '),
  ]);
  return [['Ask for', 'Width', 'To buy', 'Needed', 'At home', 'Cost', 'For', 'Bought', 'Look at'], ...rows, ['Together', '', '', '', '', list.total]].map((row) => row.map(text));
}

export const shoppingPage = (list: ShoppingList, head: PaperHead): Shopping => ({ what: 'shopping', ...head, list });
