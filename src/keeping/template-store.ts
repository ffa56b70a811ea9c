/** The templates that she made herself, on this device. */
import { readTemplate, type Template } from '../workbook/index.ts';
import type { Database } from './database.ts';

export interface OwnTemplate {
  readonly id: string;
  readonly savedAt: string;
  readonly template: Template;
}

export class TemplateStore {
  readonly #database: Database;
  #problems: readonly string[] = [];

  constructor(database: Database) {
    this.#database = database;
  }

  /** What the last `list` could not read, one sentence each. It stays stored. */
  get problems(): readonly string[] {
    return this.#problems;
  }

  /**
   * All that can be read, by name.
   *
   * @throws {KeepingTrouble}
   */
  async list(): Promise<readonly OwnTemplate[]> {
    const stored = await this.#database.read(['templates'], (transaction) => transaction.objectStore('templates').getAll());
    const problems: string[] = [];
    const templates: OwnTemplate[] = [];
    for (const { id, savedAt, template: json } of stored) {
      const { template, problems: found } = readTemplate(json);
      if (template) templates.push({ id, savedAt, template });
      const name = (json as { name?: unknown } | null)?.name;
      const called = typeof name === 'string' ? `The template “${name}”` : 'A template';
      problems.push(...found.map((problem) => `${called}: ${problem}`));
    }
    this.#problems = problems;
    return templates.sort((a, b) => a.template.name.localeCompare(b.template.name) || a.savedAt.localeCompare(b.savedAt));
  }

  /**
   * Keeps a template and gives its id; with the id of another, in its place.
   *
   * @throws {KeepingTrouble}
   */
  async put(template: Template, id = crypto.getRandomValues(new Uint32Array(4)).join('-')): Promise<string> {
    await this.#database.write(['templates'], (transaction) =>
      transaction.objectStore('templates').put({ id, savedAt: new Date().toISOString(), template }));
    return id;
  }

  /** @throws {KeepingTrouble} */
  async remove(id: string): Promise<void> {
    await this.#database.write(['templates'], (transaction) => transaction.objectStore('templates').delete(id));
  }
}
