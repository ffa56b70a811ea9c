/** The worker died, or did not answer in time, and starting it anew did not help. */
export class WorkerLost extends Error {
  override readonly name = 'WorkerLost';

  constructor(readonly sentence: string, options?: ErrorOptions) {
    super(sentence, options);
  }
}
