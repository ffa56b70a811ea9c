/** The same measuring in a browser's worker. */
import { measure, type Case } from './measure.ts';

onmessage = ({ data }: MessageEvent<{ each: Case; seed: number; marks: number[] }>): void => {
  postMessage(measure(data.each, data.seed, data.marks, () => performance.now() / 1000));
};
