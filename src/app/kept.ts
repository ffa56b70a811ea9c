/** The truth about what is kept, in words. */
import type { Desk } from './desk.ts';

export function keptInWords(desk: Desk): { readonly words: string; readonly trouble: boolean } {
  if (desk.reading) return { words: `only to be read here: ${desk.reading}`, trouble: true };
  const { keepState } = desk;
  switch (keepState.state) {
    case 'kept':
      return { words: keepState.at ? `kept at ${clock(keepState.at)} on this device` : 'kept on this device', trouble: false };
    case 'keeping':
      return { words: 'keeping…', trouble: false };
    case 'not kept':
      return { words: `not kept: ${keepState.sentence}`, trouble: true };
  }
}

/** "25 November 2026, 14:02". */
export function whenInWords(at: string): string {
  const time = new Date(at);
  if (Number.isNaN(time.getTime())) return 'at an unknown time';
  return time.toLocaleString('en-GB', { day: 'numeric', month: 'long', year: 'numeric', hour: '2-digit', minute: '2-digit' }).replace(' at ', ', ');
}

function clock(at: string): string {
  return new Date(at).toLocaleTimeString('en', { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' });
}
