import type { Clause } from '../clause.ts';
import { wordsNumber } from '../lexicon/count.ts';
import type { Part } from '../part.ts';
import { outcomeOf } from '../roles/outcome.ts';
import { type ScannersSaid, scannersOf } from '../roles/scanner.ts';
import { each, namesScanner, withScanner } from './each-scanner.ts';
import { type Frame, made, result } from './frame.ts';

export const calibrated: Frame = {
  name: 'calibrated',
  on: ['calibrate', 'scanner'],
  read(c) {
    const verb = toldBy(c);
    if (verb < 0 || c.has('caltip')) return null;
    const past = isPast(c);
    const noun = c.form('calibrate', 'n') >= 0;
    const outcome = outcomeOf(c);
    c.useTags('calibrate', 'finish', 'do', 'take', 'run', 'have', 'turn', 'come', 'go', 'redo', 'get');
    const balks = wouldNot(c, verb);
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
      past && c.at('calibrate') >= 0 ? c.form('calibrate', 'd') : verb,
      scanners.missing,
    );
  },
};

/** The word that tells of it: a calibration, or a result that only one can have. */
function toldBy(c: Clause): number {
  const at = c.at('calibrate');
  return at >= 0 ? at : passesAlone(c);
}

function isPast(c: Clause): boolean {
  return c.form('calibrate', 'd') >= 0 || c.at('calibrate') < 0;
}

const REFUSED =
  /^(wouldn't|wont|won't|wouldnt|couldn't|couldnt|can't|cant|cannot|will not|refuses to|refused to|doesn't|doesnt)$/;

/** "Blue wouldn't calibrate": said of the scanner, not of whoever tried. */
function wouldNot(c: Clause, verb: number): boolean {
  const scanner = c.first('scanner')?.at ?? 99;
  const refuses = c.parts.some(
    (part, i) =>
      i < verb &&
      i >= verb - 5 &&
      (REFUSED.test(part.text) || (/^(didn't|didnt|did not)$/.test(part.text) && scanner < i)),
  );
  return refuses && c.word(/^(i|we)$/) < 0;
}

/** "Gray passed", "Otter failed again": a scanner passes or fails nothing else; −1 where more is said. */
function passesAlone(c: Clause): number {
  const scanners = c.entities('scanner');
  const last = scanners.at(-1);
  const verb = c.word(/^((both |all )?(passed|failed)|pass|passed ok|passed fine|passes|fails)$/);
  if (last === undefined || verb < last.at || c.scope.strange > 0.5) return -1;
  const between = c.parts.slice(last.at + 1, verb);
  const beside = between.length <= 1 && between.every((p) => BEFORE_RESULT.test(p.text));
  if (!beside || scanners.some(({ entity }) => entity.ids.length !== 1) || !c.parts.every(besideResult))
    return -1;
  c.useTags('pass', 'fail');
  return verb;
}

const BEFORE_RESULT = /^(has|have|just|then|now|only|finally|'s|both|all)$/;

function besideResult(part: Part): boolean {
  if (part.entity !== undefined) return /^(scanner|time|number)$/.test(part.entity.is);
  if (part.mark || TRIES.test(part.text)) return true;
  return part.senses.some((s) => s.sort === 'glue' || s.tag === 'pass' || s.tag === 'fail');
}

const TRIES = /^(try|rd|nd|st|th|attempt|go|time|again|retry)$/;

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
