import { ruleValue } from '../../defaults/rule-value.ts';
import { scannerOf } from '../../practice/look-up.ts';
import type { Block, Message } from '../../words/message.ts';
import { type CalibrationWord, type Moment, type Reason, readinessOf } from '../readiness.ts';
import { capital, scannerWords } from '../tips/tip-words.ts';
import { reasonWords } from './reason-words.ts';

const CALIBRATION_WORDS: readonly string[] = [
  'failed',
  'dropped',
  'repaired',
  'moved',
  'temperature',
  'never',
  'weekly',
] satisfies readonly CalibrationWord[];

/** The request for one scanner, every cause there is in it, and what the practice file wants said of calibrating it. */
export function calibrationLine(moment: Moment, scanner: string, site: string): Message {
  const { practice } = moment;
  const reasons = calibrationReasons(moment, scanner);
  // Nothing is due yet where the next week's is looked ahead to.
  const why = reasons.map((reason) => reasonWords(moment, reason, site)).join('; ') || 'weekly calibration';
  const failures = moment.state.scanners.get(scanner)?.failuresInRow ?? 0;
  if (failures >= ruleValue(practice, 'calibrationFailuresToSupport', { site, scanner })) {
    const name = capital(scannerWords(practice, scanner));
    return [{ line: [{ strong: `${name}: do not use it, call support` }, `: ${why}.`] }];
  }
  const line: Block = {
    line: [
      { strong: `Calibrate ${scannerWords(practice, scanner)}` },
      ` (${minutesWords(moment, scanner, site)}): ${why}.`,
    ],
  };
  const notes = scannerOf(practice, scanner)?.notes.calibrate ?? [];
  return notes.length === 0 ? [line] : [line, { points: notes.map((note) => [note]) }];
}

/** The reasons of a scanner that calibration would settle, as they are named. */
export function calibrationReasons(moment: Moment, scanner: string): readonly Reason[] {
  const because = readinessOf(moment, scanner).because.filter(({ word }) => CALIBRATION_WORDS.includes(word));
  return because.toSorted((a, b) => CALIBRATION_WORDS.indexOf(a.word) - CALIBRATION_WORDS.indexOf(b.word));
}

function minutesWords({ practice }: Moment, scanner: string, site: string): string {
  const from = ruleValue(practice, 'calibrationTakesFromMinutes', { site, scanner });
  const to = ruleValue(practice, 'calibrationTakesToMinutes', { site, scanner });
  return from < to ? `${from} to ${to} minutes` : `${from} minutes`;
}
