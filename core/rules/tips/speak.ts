import type { SpeakTable } from '../speech.ts';
import { speakNearLimit, speakPastLimit } from './cycle-limit.ts';
import { speakInTwoLoads, speakLeftOpenLoad, speakNeverUsed } from './in-loads.ts';
import { speakSterileRefused } from './sterile-refused.ts';
import { speakUnsafeTip } from './unsafe-tip.ts';

/** What is said at once of what the record noticed about tips. */
export const tipSpeak = {
  'unsafe-tip': speakUnsafeTip,
  'sterile-refused': speakSterileRefused,
  'past-limit': speakPastLimit,
  'near-limit': speakNearLimit,
  'never-used-in-two-loads': speakNeverUsed,
  'in-two-loads': speakInTwoLoads,
  'left-open-load': speakLeftOpenLoad,
} as const satisfies Partial<SpeakTable>;
