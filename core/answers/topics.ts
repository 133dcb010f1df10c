import { type HowTopic, howTopic } from '../reading/ask.ts';

/** What each topic is called: at the head of its guide, and behind "showed Tom". */
export const TOPICS: Readonly<Record<HowTopic, { readonly title: string; readonly shown: string }>> = {
  calibrate: { title: 'Calibrating', shown: 'how to calibrate' },
  'warm-up': { title: 'Warming a tip', shown: 'how to warm a tip' },
  clean: { title: 'Between patients', shown: 'how to wipe down' },
  move: { title: 'Taking a scanner elsewhere', shown: 'how to move the scanner' },
  'set-up': { title: 'Setting up a scanner', shown: 'how to set up the scanner' },
  fogging: { title: 'A mirror that mists up', shown: 'how to stop fogging' },
  load: { title: 'A load of tips', shown: 'how to run a load' },
  tips: { title: 'The way of a tip', shown: 'how to do the tips' },
};

/** "how to calibrate"; a topic of another name as it was said. */
export function shownWords(topic: string): string {
  const known = howTopic.safeParse(topic);
  return known.success ? TOPICS[known.data].shown : topic;
}
