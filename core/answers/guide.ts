import type { HowTopic } from '../reading/ask.ts';
import type { View } from '../rules/matter.ts';
import { calibrateGuide } from './guides/calibrate.ts';
import { cleanGuide } from './guides/clean.ts';
import { foggingGuide } from './guides/fogging.ts';
import { type GuidePlace, guidePlace } from './guides/guide-place.ts';
import { loadGuide } from './guides/load.ts';
import { moveGuide } from './guides/move.ts';
import { setUpGuide } from './guides/set-up.ts';
import { tipsGuide } from './guides/tips.ts';
import { warmUpGuide } from './guides/warm-up.ts';
import { TOPICS } from './topics.ts';

/** How something is done, as common practice has it, with this practice's own rooms, times and notes in it. */
export interface Guide {
  readonly title: string;
  /** When it is due or called for; `null` where the title says enough. */
  readonly when: string | null;
  /** In order, each one thing to do with its caution; told one by one they are a walk-through. */
  readonly steps: readonly string[];
  /** When it does not work. */
  readonly otherwise: readonly string[];
}

/** Whose word comes before every step here; said under each guide. */
export const WHOSE_WORD = 'The maker’s instructions, your local rules and licences come first.';

const GUIDES: Readonly<Record<HowTopic, (place: GuidePlace) => Omit<Guide, 'title'>>> = {
  calibrate: calibrateGuide,
  'warm-up': warmUpGuide,
  clean: cleanGuide,
  move: moveGuide,
  'set-up': setUpGuide,
  fogging: foggingGuide,
  load: loadGuide,
  tips: tipsGuide,
};

/**
 * The guide of a topic for those sites. From common practice and this practice's own file alone: nothing of any maker's
 * procedure is in it.
 */
export function guideFor(topic: HowTopic, view: View, sites: readonly string[]): Guide {
  return { title: TOPICS[topic].title, ...GUIDES[topic](guidePlace(view, sites)) };
}
