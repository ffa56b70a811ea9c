/** The reference as Markdown, as its script writes it. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { DIFFERENCES } from '../../../src/formula/standard/index.ts';
import { Engine } from '../../../workers/reckon/engine.ts';

const folder = mkdtempSync(join(tmpdir(), 'reference-'));
const file = join(folder, 'deep', 'reference.md');
execFileSync('node', ['.ci/reference.mjs', file], { cwd: new URL('../../..', import.meta.url) });
const text = readFileSync(file, 'utf8');
const cards = new Engine().catalogue();

afterAll(() => rmSync(folder, { recursive: true }));

it('tells of every function, with an example that has a result', () => {
  const headings = text.split('\n').filter((line) => line.startsWith('### ')).map((line) => line.slice(4));
  expect(cards.filter(({ name }) => !headings.includes(name))).toEqual([]);
  for (const { example, source, about } of cards) {
    expect(text).toContain(`Example: \`${example}\` `);
    expect(text).toContain(source);
    expect(text).toContain(about);
  }
  expect(text).not.toMatch(/undefined|NaN|\[object/);
});

it('has no link that leads nowhere', () => {
  const anchor = (heading: string) => heading.toLowerCase().replace(/[^\p{L}\p{N} -]/gu, '').replaceAll(' ', '-');
  const anchors = new Set(text.split('\n').flatMap((line) => /^#+ (.*)$/.exec(line)?.[1] ?? []).map(anchor));
  const links = [...text.matchAll(/\]\(#([^)]+)\)/g)].map(([, to]) => to!);
  expect(links.length).toBeGreaterThan(cards.length);
  expect(links.filter((to) => !anchors.has(to))).toEqual([]);
});

it('says where we differ, and why', () => {
  const section = text.slice(text.indexOf('## Where we differ'));
  for (const { sentence, why, shown } of DIFFERENCES) {
    for (const part of [sentence, why, ...shown.map(({ formula }) => formula)]) expect(section).toContain(part);
  }
});
