import type { MakeReader } from '../../core/language/read.ts';
import { makeReader } from '../../core/language/reader.ts';

/** Processor time of this thread, in milliseconds: other work beside it is not counted. */
export function processorTime(): number {
  const { user, system } = process.threadCpuUsage();
  return (user + system) / 1000;
}

/** What reading notes has taken since the start: a day of the core alone is told without it. */
export const reading = { notes: 0, milliseconds: 0 };

export const makeTimedReader: MakeReader = (practice, learned) => {
  const read = makeReader(practice, learned);
  return (text, context) => {
    const start = processorTime();
    const note = read(text, context);
    reading.milliseconds += processorTime() - start;
    reading.notes += 1;
    return note;
  };
};
