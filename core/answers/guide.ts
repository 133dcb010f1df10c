import type { HowTopic } from '../reading/ask.ts';
import { SET_UP_STEPS } from '../rules/scanner/arrival.ts';
import { PACK_STEPS } from '../rules/scanner/departure.ts';
import type { AskView } from './answer-view.ts';

/** How something is done, as common practice has it. */
export interface Guide {
  readonly title: string;
  readonly steps: readonly string[];
  /** What to do when it does not work. */
  readonly otherwise: readonly string[];
  /** Whose word comes before ours. */
  readonly first: string;
}

const FIRST = 'The maker’s instructions and your local rules come first.';

/** The guide of a topic, adjusted to the sites that are asked about. */
export function guideFor(topic: HowTopic, _view: AskView, _sites: readonly string[]): Guide {
  return { ...GUIDES[topic], first: FIRST };
}

const GUIDES: Readonly<Record<HowTopic, Omit<Guide, 'first'>>> = {
  calibrate: {
    title: 'To calibrate',
    steps: [
      'Let scanner and calibration tip settle in the room.',
      'Calibration tip on, pushed fully home.',
      'Run it: keep still for 2 to 3 minutes.',
      'Tell me: passed or failed.',
    ],
    otherwise: [
      'Failed: look into the calibration tip and at the lens for dust or hair, clean both, let them settle, try again.',
    ],
  },
  'warm-up': {
    title: 'To warm a tip',
    steps: ['Sterile tip on, pushed fully home.', 'Wait 30 to 60 s just before scanning.'],
    otherwise: [],
  },
  clean: {
    title: 'Between patients',
    steps: ['Tip off, to reprocessing.', 'Wipe scanner and base.', 'Look at the lens.', 'Cover on.'],
    otherwise: [],
  },
  move: { title: 'To move a scanner', steps: [...PACK_STEPS], otherwise: [] },
  'set-up': { title: 'To set up a scanner', steps: [...SET_UP_STEPS], otherwise: [] },
  fogging: {
    title: 'When it mists up',
    steps: ['Warm the tip longer.', 'Push it fully home.', 'Mirror clean and dry.'],
    otherwise: [],
  },
  load: {
    title: 'A load',
    steps: [
      'Tell me the number and the tips.',
      'Check figures, indicator and dryness.',
      'Tell me: passed or failed.',
    ],
    otherwise: [],
  },
  tips: {
    title: 'The way of a tip',
    steps: ['Used: off, washed, looked at.', 'Bagged, sent.', 'Load passed: sterile.'],
    otherwise: [],
  },
};
