/** Thrown by `apply` for an edit that cannot be done; the workbook stays as it is. */
export class EditRefused extends Error {
  /** One sentence for the person: what is wrong, where, and what to do. */
  readonly sentence: string;

  constructor(sentence: string) {
    super(sentence);
    this.name = 'EditRefused';
    this.sentence = sentence;
  }
}
