import { describe, expect, test } from 'vitest';
import { KeepingTrouble, TemplateStore } from '../../../src/keeping/index.ts';
import { templateFrom } from '../../../src/workbook/index.ts';
import { bookOf } from '../workbook/help.ts';
import { failing, tab, tamper } from './help.ts';

const template = (name: string, note = '') => templateFrom(bookOf([['Waist', '74 cm'], ['Hip', '=B1 + 4 cm']]), 1, name, note);

describe('own templates', () => {
  test('are listed by name after a reload, each as it was put', async () => {
    const store = new TemplateStore(tab().database);
    await store.put(template('Pleated skirt', 'with a deep hem'));
    const id = await store.put(template('Apron'));
    const again = new TemplateStore(tab().database);
    const list = await again.list();
    expect(list.map((each) => each.template)).toEqual([template('Apron'), template('Pleated skirt', 'with a deep hem')]);
    expect(list[0]!.id).toBe(id);
    expect(again.problems).toEqual([]);
  });

  test('two of one name live side by side; one can take another\'s place, or go', async () => {
    const store = new TemplateStore(tab().database);
    const first = await store.put(template('Apron', 'old'));
    const second = await store.put(template('Apron', 'new'));
    expect(second).not.toBe(first);
    await store.put(template('Apron', 'newer'), second);
    expect((await store.list()).map((each) => each.template.note).sort()).toEqual(['newer', 'old']);
    await store.remove(first);
    expect((await store.list()).map((each) => each.template.note)).toEqual(['newer']);
  });

  test('one that cannot be read is said, and stays', async () => {
    const store = new TemplateStore(tab().database);
    await store.put(template('Apron'));
    await tamper('templates', { id: 'bad', savedAt: '2026-01-01T00:00:00Z', template: { ...template('Cape'), format: 'something else' } });
    await tamper('templates', { id: 'worse', savedAt: '2026-01-01T00:00:00Z', template: 7 });
    for (let times = 0; times < 2; times++) {
      expect((await store.list()).map((each) => each.template.name)).toEqual(['Apron']);
      expect(store.problems).toEqual([expect.stringMatching(/^The template “Cape”: /), expect.stringMatching(/^A template: /)]);
    }
  });

  test('a full device is said in words', async () => {
    const store = new TemplateStore(tab().database);
    await store.list();
    failing('put', 'QuotaExceededError');
    const error = await store.put(template('Apron')).catch((thrown: unknown) => thrown);
    expect(error).toBeInstanceOf(KeepingTrouble);
    expect((error as Error).message).toBe('This device has no room left for this page.');
  });
});
