/**
 * Someone who cannot see the page: she has what the browser tells a screen
 * reader (names, roles, states, what is announced), and the keyboard.
 */
import { expect, waitUntil } from '@open-wc/testing';
import { executeServerCommand, sendKeys } from '@web/test-runner-commands';
import type { App } from './app.ts';
import { press } from './keys.ts';
import { columnLetters, words } from './words.ts';

export interface Heard {
  readonly role: string;
  readonly name: string;
  readonly description: string;
  readonly value: string;
  readonly states: Readonly<Record<string, unknown>>;
  /** What the control with the focus says is the active one of its cells or options. */
  readonly active?: Omit<Heard, 'active'> & { readonly row: number; readonly col: number };
}

const MOST_TABS = 300;
const PATIENCE = { timeout: 30_000, interval: 60 };

export class Reader {
  #announced: string[] = [];

  constructor(private readonly app: App) {
    this.#listen(app.page);
  }

  /** Live regions, in every shadow, those that come later too. */
  #listen(root: ShadowRoot): void {
    const heard = new Set<Element>();
    const hear = (region: Element): void => {
      if (heard.has(region)) return;
      heard.add(region);
      new (this.app.window as unknown as { MutationObserver: typeof MutationObserver }).MutationObserver(() => {
        const text = words(region.textContent);
        if (text !== '') this.#announced.push(text);
      }).observe(region, { childList: true, characterData: true, subtree: true });
    };
    const look = (inside: ParentNode): void => {
      for (const element of inside.querySelectorAll('*')) {
        if (element.matches('[role=status], [role=alert], [aria-live]')) hear(element);
        if (element.shadowRoot) look(element.shadowRoot);
      }
    };
    look(root);
  }

  /** What was announced since this was asked last. */
  announced(): string[] {
    const said = this.#announced;
    this.#announced = [];
    return said;
  }

  async heard(): Promise<Heard> {
    return await executeServerCommand('read-aloud', { what: 'focus' }) as Heard;
  }

  /** The names of everything of a role, as they come one after another. */
  async all(role: string): Promise<string[]> {
    return (await executeServerCommand('read-aloud', { what: 'all', role }) as readonly Heard[]).map(({ name }) => words(name));
  }

  /** Role and name of what has the focus: "button Commands". */
  async at(): Promise<string> {
    const { role, name } = await this.heard();
    return `${role} ${words(name)}`;
  }

  /** Goes from control to control until one is announced so. */
  async tabTo(role: string, name: string, { back = false } = {}): Promise<void> {
    const passed: string[] = [];
    for (let tabs = 0; tabs < MOST_TABS; tabs++) {
      await press(back ? 'Shift+Tab' : 'Tab');
      const at = await this.at();
      if (at.startsWith(`${role} ${name}`)) return;
      passed.push(at);
    }
    throw new Error(`Tab does not come to ${role} “${name}”, only to ${[...new Set(passed)].join(' | ')}.`);
  }

  async press(...keys: string[]): Promise<void> {
    await press(...keys);
    await this.app.settled();
  }

  async say(text: string): Promise<void> {
    await sendKeys({ type: text });
  }

  /** The active cell, as it is read: its place by row and column, and what it says. */
  async cell(): Promise<{ readonly place: string; readonly says: string }> {
    const { active } = await this.heard();
    if (active?.role !== 'gridcell') throw new Error(`She is not in the cells but at ${await this.at()}.`);
    return { place: `${columnLetters(active.col - 2)}${active.row - 1}`, says: words(active.name) };
  }

  /** By the field that is called so. */
  async go(place: string): Promise<void> {
    await press('Escape');
    await this.tabTo('combobox', 'Go to a cell or a name', { back: true });
    await this.say(place);
    await this.press('Enter');
    expect((await this.cell()).place).to.equal(place);
  }

  /** Types into cells: along a row with Tab, on to the next with Enter. */
  async fill(place: string, rows: readonly (readonly string[])[]): Promise<void> {
    await this.go(place);
    for (const row of rows) {
      for (const [at, text] of row.entries()) {
        await this.say(text);
        await this.press(at === row.length - 1 ? 'Enter' : 'Tab');
      }
    }
  }

  /** What a cell says, by going to it. */
  async read(place: string): Promise<string> {
    await this.go(place);
    return (await this.cell()).says;
  }

  /** By the list of commands, until the option is announced so. */
  async run(command: string): Promise<void> {
    await press('Control+.');
    await waitUntil(async () => (await this.at()).startsWith('combobox What do you want to do?'), 'the list of commands does not open', PATIENCE);
    await this.say(command.replace(/…$/, ''));
    await waitUntil(async () => words((await this.heard()).active?.name ?? '').startsWith(command), `the list does not offer “${command}”`, PATIENCE);
    await this.press('Enter');
  }
}
