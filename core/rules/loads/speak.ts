import type { SpeakTable } from '../speech.ts';
import {
  speakAutoclaveHeld,
  speakAutoclaveUnsaid,
  speakTestFailed,
  speakUntested,
} from './autoclave-tests.ts';
import { speakCountsFailed, speakNoValue, speakWet } from './bad-result.ts';
import { speakLoadFailed } from './load-failed.ts';
import { speakRefused } from './refused.ts';
import { speakSporePositive } from './spore-positive.ts';
import { speakAmbiguous, speakNumberAgain, speakWithoutTips } from './which-load.ts';

/** What is said at once of what the record noticed about loads, autoclaves and who may release. */
export const loadSpeak = {
  'load-counts-failed': speakCountsFailed,
  'load-no-value': speakNoValue,
  'load-wet': speakWet,
  'load-failed': speakLoadFailed,
  'load-without-tips': speakWithoutTips,
  'load-ambiguous': speakAmbiguous,
  'load-number-again': speakNumberAgain,
  refused: speakRefused,
  'autoclave-held': speakAutoclaveHeld,
  untested: speakUntested,
  'autoclave-test-failed': speakTestFailed,
  'autoclave-unsaid': speakAutoclaveUnsaid,
  'spore-positive': speakSporePositive,
} as const satisfies Partial<SpeakTable>;
