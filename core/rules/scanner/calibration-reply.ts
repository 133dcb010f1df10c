import { ruleValue } from '../../defaults/rule-value.ts';
import { scannerOf } from '../../practice/look-up.ts';
import type { Entry } from '../../record/entry.ts';
import { lines } from '../../words/message.ts';
import type { View } from '../matter.ts';
import type { Speech } from '../speech.ts';
import { capital, scannerWords } from '../tips/tip-words.ts';
import { readyInstead } from './ready-scanners.ts';
import { timeAt } from './time-words.ts';

/** Common practice when a calibration fails: it is mostly dust, a hair, or parts that are not at room temperature. */
export const TRY_AGAIN_STEPS: readonly string[] = [
  'Look into the calibration tip and at the lens for dust or a hair.',
  'Clean both.',
  'Let scanner and calibration tip settle at room temperature.',
  'Try again.',
];

/** The reply to a failed calibration: what to try, or after the second with no pass between to stop and call support. */
export function calibrationReply(entry: Entry, view: View): readonly Speech[] {
  if (entry.fact.kind !== 'calibrated' || entry.fact.outcome !== 'failed') return [];
  const id = entry.fact.scanner;
  const scanner = view.state.scanners.get(id);
  if (scanner === undefined) return [];
  return [{ about: 'calibration', items: [`scanner:${id}`], message: replyWords(view, id), mentions: [] }];
}

function replyWords(view: View, id: string): Speech['message'] {
  const { practice, state } = view;
  const scanner = state.scanners.get(id);
  const site = scanner?.site ?? null;
  const name = scannerWords(practice, id);
  const passed = scanner?.lastPass ?? null;
  // A failure told late, of a time before a pass that counts.
  if (scanner !== undefined && scanner.failuresInRow === 0 && passed !== null)
    return lines(
      `${capital(name)} passed again ${timeAt(view, site, passed.mark.at)}: it is not due for that failure.`,
    );
  const failures = scanner?.failuresInRow ?? 1;
  const place = { site: site ?? undefined, scanner: id };
  const instead = lines(readyInstead(view, site, id));
  if (failures >= ruleValue(practice, 'calibrationFailuresToSupport', place))
    return [
      ...lines([
        { strong: `Stop using ${name} and call support` },
        `: its calibration failed ${failures === 1 ? '' : `${failures} times `}with no pass between. A later pass makes it ready again.`,
      ]),
      ...instead,
    ];
  const notes = scannerOf(practice, id)?.notes.calibrate ?? [];
  return [
    { line: [{ strong: `${capital(name)} is not ready` }, ': calibration failed. Try this:'] },
    { steps: [...TRY_AGAIN_STEPS, ...notes].map((step) => [step]) },
    ...instead,
  ];
}
