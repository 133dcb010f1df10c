import type { Clause } from '../clause.ts';
import { wordsNumber } from '../lexicon/count.ts';
import { outcomeOf } from '../roles/outcome.ts';
import { type ScannersSaid, scannersOf } from '../roles/scanner.ts';
import { each, namesScanner, withScanner } from './each-scanner.ts';
import { type Frame, made, result } from './frame.ts';

export const calibrated: Frame = {
  name: 'calibrated',
  on: ['calibrate'],
  read(c) {
    const verb = c.at('calibrate');
    if (verb < 0 || c.has('caltip')) return null;
    const past = c.form('calibrate', 'd') >= 0;
    const noun = c.form('calibrate', 'n') >= 0;
    const outcome = outcomeOf(c);
    c.useTags('calibrate', 'finish', 'do', 'take', 'run', 'have', 'turn', 'come', 'go', 'redo', 'get');
    const refused =
      /^(wouldn't|wont|won't|wouldnt|couldn't|couldnt|can't|cant|cannot|will not|refuses to|refused to|doesn't|doesnt)$/;
    const balks =
      c.parts.some(
        (part, i) =>
          i < verb &&
          i >= verb - 5 &&
          (refused.test(part.text) ||
            (/^(didn't|didnt|did not)$/.test(part.text) && (c.first('scanner')?.at ?? 99) < i)),
      ) && c.word(/^(i|we)$/) < 0;
    const scanners = everyOne(c) ?? scannersOf(c);
    const retried = balks ? null : passedAfterAll(c);
    if (retried !== null) {
      const twice = (['failed', 'passed'] as const).flatMap((said) =>
        each(scanners, (id) =>
          made('calibrated', { ...withScanner(id), outcome: said }, { scanner: scanners.said }),
        ),
      );
      return { ...result(twice, retried, scanners.missing), anyMood: true };
    }
    if (balks || outcome?.outcome === 'failed') {
      return {
        ...result(
          each(scanners, (id) =>
            made('calibrated', { ...withScanner(id), outcome: 'failed' }, { scanner: scanners.said }),
          ),
          verb,
          scanners.missing,
        ),
        anyMood: true,
      };
    }
    const done =
      past ||
      (c.form('calibrate', 's') >= 0 && outcome !== null) ||
      (noun &&
        (c.has('finish', 'do') ||
          /^(had|has had|'s had)$/.test(c.parts[verb - 1]?.text ?? '') ||
          outcome !== null ||
          c.word(/^(done|complete|sorted|did|ok|✅)$/) >= 0));
    if (!done) return null;
    const mild =
      outcome !== null &&
      /^(nice|great|brilliant|lovely|fab|perfect|good|well)$/.test(c.parts[outcome.at]?.text ?? '');
    if (!past && mild && scanners.missing !== undefined && !scanners.spoken) return null;
    return result(
      each(scanners, (id) =>
        made(
          'calibrated',
          { ...withScanner(id), outcome: 'passed' },
          {
            scanner: scanners.said,
            outcome: outcome === null ? 'passed unless the note says otherwise' : [outcome.at],
          },
        ),
      ),
      past ? c.form('calibrate', 'd') : verb,
      scanners.missing,
    );
  },
};

/** "Calibrated all 3": as many as there are; nothing else is calibrated. */
function everyOne(c: Clause): ScannersSaid | null {
  const all = c.names.scannerIds;
  const at = c.word(/^(all|both|all of them|all three|the lot)$/);
  if (at < 0 || all.length < 2 || namesScanner(c)) return null;
  const next = c.parts[at + 1];
  const count = next === undefined ? null : wordsNumber(next);
  const both = c.parts[at]?.text === 'both' && all.length === 2;
  if (!both && count !== all.length) return null;
  c.use(at, both ? -1 : at + 1);
  return { ids: all, said: [at], spoken: true };
}

/** "Failed first time, passed second": where both are told, and that it was tried again; the place of the pass. */
function passedAfterAll(c: Clause): number | null {
  const failed = c.at('fail');
  if (failed < 0 || c.has('neg')) return null;
  const passed = c.parts.findIndex(
    (p, i) =>
      i > failed && p.entity === undefined && /^(passed|pass|ok|okay|fine|good|passed ok)$/.test(p.text),
  );
  if (passed < 0) return null;
  return c.word(
    /^(then|second|second time|second one|second attempt|retry|on retry|again|next|redo|redone|retried|the second time)$/,
  ) >= 0
    ? passed
    : null;
}
