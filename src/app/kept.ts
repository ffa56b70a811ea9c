/** The truth about what is kept, in words. */
import type { Desk } from './desk.ts';

export function keptInWords(desk: Desk): { readonly words: string; readonly trouble: boolean } {
  if (desk.reading) return { words: `only to be read here: ${desk.reading}`, trouble: true };
  const { keepState } = desk;
  switch (keepState.state) {
    case 'kept':
      return { words: keepState.at ? `kept on this device, ${clock(keepState.at)}` : 'kept on this device', trouble: false };
    case 'keeping':
      return { words: 'keeping…', trouble: false };
    case 'not kept':
      return { words: `not kept: ${keepState.sentence}`, trouble: true };
  }
}

function clock(at: string): string {
  return new Date(at).toLocaleTimeString('en', { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' });
}
