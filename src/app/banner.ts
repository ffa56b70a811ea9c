/** What stands in the way of trusting the page, and how the sums are going. */
import { html, nothing, type TemplateResult } from 'lit';
import { readQuantity } from '../quantities/index.ts';
import type { Desk } from './desk.ts';
import type { NewVersion } from './new-version.ts';

/**
 * With the things to do about it.
 *
 * @param run runs a command by its id
 */
export function banner(desk: Desk, run: (id: string) => void, newVersion: NewVersion | null = null): TemplateResult | typeof nothing {
  if (desk.engine?.state === 'stopped') {
    return html`<p class="banner fault" role="alert">The figures cannot be worked out just now. Nothing typed is lost.
      <button @click=${() => desk.engine?.open()}>Try again</button></p>`;
  }
  if (desk.keepState.state === 'not kept') {
    return html`<p class="banner fault" role="alert">Not kept: ${desk.keepState.sentence} <button @click=${() => desk.tryKeeping()}>Try again</button>
      <button @click=${() => run('book-save')}>Save a copy as a file</button></p>`;
  }
  if (desk.engine?.state === 'restarting') {
    return html`<p class="banner note" role="status">The sums stopped and are being started again. What you type is kept meanwhile.</p>`;
  }
  if (desk.setAside > 0) {
    return html`<p class="banner note" role="status">Part of this workbook could not be read and was set aside. <button @click=${() => run('set-aside')}>Look at it</button></p>`;
  }
  if (newVersion && newVersion.state !== 'none') {
    return html`<p class="banner note" role="status">${newVersion.sentence || (newVersion.state === 'waiting' ? 'A new version is ready.' : 'Another tab uses a new version.')}
      <button @click=${() => void newVersion.use()}>${newVersion.state === 'waiting' ? 'Use it now' : 'Load this page again'}</button></p>`;
  }
  return nothing;
}

export function engineInWords(desk: Desk): string {
  switch (desk.engine?.state) {
    case 'ready': return `Worked out in ${desk.took < 1 ? 'under 1' : Math.round(desk.took)} ms`;
    case 'working': return 'Working it out…';
    case 'stopped': return 'Results have stopped: reload the page.';
    case 'restarting': return 'Starting the sums again…';
    default: return desk.results.areLast ? 'As worked out last time; working it out again…' : 'Getting ready…';
  }
}

/** Why a text that starts like a figure is kept as text. */
export function remarkOn(raw: string): string {
  if (raw.startsWith('=') || raw.startsWith("'")) return '';
  const reading = readQuantity(raw);
  return reading.kind === 'refused' && reading.meant === 'text' ? reading.sentence : '';
}
