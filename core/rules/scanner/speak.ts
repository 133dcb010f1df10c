import type { SpeakTable } from '../speech.ts';
import { speakDisplaced } from './speak-displaced.ts';
import { speakEarlyPass } from './speak-early-pass.ts';
import { speakNotReady } from './speak-not-ready.ts';
import { speakNotWiped } from './speak-not-wiped.ts';
import { speakSameTipAgain } from './speak-same-tip.ts';
import { speakTipApart } from './speak-tip-apart.ts';
import { speakUnknownItem } from './speak-unknown-item.ts';

/** Findings of the scanners: what is said of each at once. */
export const scannerSpeak = {
  'not-wiped': speakNotWiped,
  'same-tip-again': speakSameTipAgain,
  'not-ready-scanner': speakNotReady,
  'pass-before-settling': speakEarlyPass,
  // Asked for at once as any cause is (calibration.ts): saying it here too would say it twice.
  'temperature-due': () => [],
  'calibration-tip-apart': speakTipApart,
  displaced: speakDisplaced,
  'unknown-item': speakUnknownItem,
} as const satisfies Partial<SpeakTable>;
