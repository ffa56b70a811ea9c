/** What the tests of the panels share: the look, and keys pressed as a person presses them. */
import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import type { LitElement } from 'lit';
import { tokens } from '../../../src/look/index.ts';

document.adoptedStyleSheets = [...document.adoptedStyleSheets, tokens.styleSheet!];

const MOST_TABS = 60;

/** "Shift+Tab" holds what comes first. */
export async function press(...keys: string[]): Promise<void> {
  for (const key of keys) {
    const parts = key.split('+');
    const last = parts.pop()!;
    for (const part of parts) await sendKeys({ down: part });
    await sendKeys({ press: last });
    for (const part of parts.reverse()) await sendKeys({ up: part });
  }
}

export const words = (text: string | null | undefined): string => (text ?? '').replace(/\s+/g, ' ').trim();

export function find<T extends HTMLElement = HTMLElement>(panel: LitElement, selector: string): T {
  const found = panel.renderRoot.querySelector<T>(selector);
  if (!found) throw new Error(`There is no ${selector}.`);
  return found;
}

export const texts = (panel: LitElement, selector: string): string[] => [...panel.renderRoot.querySelectorAll(selector)].map((each) => words(each.textContent));

export const focused = (panel: LitElement): HTMLElement | null => (panel.renderRoot as ShadowRoot).activeElement as HTMLElement | null;

/** The button with this name, as it is said. */
export function button(panel: LitElement, name: string): HTMLButtonElement {
  const found = [...panel.renderRoot.querySelectorAll('button')].find((each) => words(each.getAttribute('aria-label') ?? each.textContent) === name);
  if (!found) throw new Error(`There is no button “${name}”.`);
  return found;
}

/** By the Tab key, as far as it takes. */
export async function tabTo(panel: LitElement, target: Element): Promise<void> {
  for (let tabs = 0; tabs < MOST_TABS && focused(panel) !== target; tabs++) await press('Tab');
  // Not by `expect`: it would write two whole elements out.
  if (focused(panel) !== target) throw new Error(`The Tab key does not come to ${target.outerHTML.slice(0, 120)}.`);
}

/** Every event of a kind that the panel sends, with what it bears. */
export function heard<T>(panel: LitElement, type: string): T[] {
  const found: T[] = [];
  panel.addEventListener(type, (event) => {
    expect([event.bubbles, event.composed], `${type} reaches the page`).to.deep.equal([true, true]);
    found.push((event as CustomEvent<T>).detail);
  });
  return found;
}

/** After buttons have faded from one colour to another. */
export async function accessible(panel: LitElement): Promise<void> {
  await new Promise((done) => setTimeout(done, 200));
  await expect(panel).to.be.accessible();
  expect(panel.renderRoot.querySelector('[style]')?.outerHTML, 'the policy allows no style attribute').to.equal(undefined);
}
