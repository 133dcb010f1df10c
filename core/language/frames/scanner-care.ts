import type { Clause } from '../clause.ts';
import { wordsNumber } from '../lexicon/count.ts';
import { hasTag } from '../part.ts';
import type { Made, Missing, Result } from '../result.ts';
import { isDenied, outcomeOf } from '../roles/outcome.ts';
import { placeOf, placeSlots } from '../roles/place.ts';
import { type ScannersSaid, scannersOf } from '../roles/scanner.ts';
import { tipsOf } from '../roles/tips.ts';
import { type Frame, made, result } from './frame.ts';

/** One fact for each scanner said; one without, and what is missing, where it cannot be told. */
function each(scanners: ScannersSaid, make: (id: string | undefined) => Made): Made[] {
  return scanners.ids.length === 0 ? [make(undefined)] : scanners.ids.map(make);
}

function withScanner(id: string | undefined): Record<string, unknown> {
  return id === undefined ? {} : { scanner: id };
}

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

function scanSlots(
  c: Clause,
  id: string | undefined,
): { slots: Record<string, unknown>; missing: Missing | undefined } {
  const tips =
    c.entities('tips').length > 0 || c.at('tip') >= 0 ? tipsOf(c, { bare: true, before: false }) : null;
  const place = placeOf(c);
  const [tip, more] = tips?.ids ?? [];
  const tipMissing: Missing | undefined =
    tips?.unknown.length || more !== undefined ? { about: 'tip', slot: 'tip', form: 'id' } : undefined;
  return {
    slots: {
      ...withScanner(id),
      ...(tip === undefined || more !== undefined ? {} : { tip }),
      ...placeSlots(place),
    },
    missing: tipMissing ?? place?.missing,
  };
}

function scanFact(c: Clause, kind: string, verb: number): Result | null {
  const scanners = scannersOf(c);
  if (scanners.ids.length > 1) return null;
  const { slots, missing } = scanSlots(c, scanners.ids[0]);
  return result(
    [made(kind, slots, { scanner: scanners.said })],
    verb,
    scanners.missing ?? missing,
    c.parts.length <= 4 && (scanners.missing !== undefined || c.at('scan') < 0) ? 0.8 : 0,
  );
}

export const scanStarted: Frame = {
  name: 'scan-started',
  on: ['scan', 'start', 'word:going'],
  read(c) {
    const scan = c.at('scan');
    if (
      scan < 0 &&
      ((c.exactly('start', 'gd') < 0 && c.word(/^going$/) < 0) ||
        c.entities('scanner').length === 0 ||
        c.entities('load').length > 0)
    )
      return null;
    const start = c.form('start', scan >= 0 ? 'dgns' : 'dgn');
    const begin = c.form('start', 'b');
    const doing = c.form('scan', 'g');
    if (c.has('finish', 'book', 'cancel') || c.exactly('scan', 'd') >= 0) return null;
    const again = start < 0 && doing < 0 && begin < 0 && c.has('samept') ? scan : -1;
    const going = c.word(/^going$/);
    if (start < 0 && going >= 0 && (scan >= 0 || c.entities('tips').length > 0)) {
      c.use(scan, going);
      return scanFact(c, 'scan-started', going);
    }
    if (start < 0 && doing < 0 && begin < 0 && again < 0) return null;
    if (start < 0 && doing >= 0 && !/^(re)?scanning$/.test(c.parts[doing]?.text ?? '')) return null;
    c.use(scan, start, begin);
    c.useTags('scan', 'start', 'go', 'be', 'patient', 'do');
    return scanFact(c, 'scan-started', start >= 0 ? start : doing >= 0 ? doing : begin >= 0 ? begin : again);
  },
};

export const scanFinished: Frame = {
  name: 'scan-finished',
  on: ['scan', 'finish'],
  read(c) {
    const past = c.exactly('scan', 'd');
    const noun = c.form('scan', 'ng');
    const finish =
      c.form('finish', 'dn') >= 0
        ? c.form('finish', 'dn')
        : /^(is|'s)$/.test(c.parts[c.at('finish') - 1]?.text ?? '')
          ? c.at('finish')
          : -1;
    const did = c.form('do', 'd') >= 0 ? c.form('do', 'd') : c.word(/^(done|over|did)$/);
    if (c.has('start', 'book', 'cancel', 'fail')) return null;
    const bare =
      noun < 0 &&
      past < 0 &&
      c.parts.length <= 5 &&
      c.entities('scanner').length === 1 &&
      c.word(/^(done|fin|finished)$/) >= 0 &&
      !c.parts.some((p) => p.unknown)
        ? c.word(/^(done|fin|finished)$/)
        : -1;
    const singular = noun >= 0 && c.parts[noun]?.text !== 'scans';
    const verb = past >= 0 ? past : singular && finish >= 0 ? finish : singular && did >= 0 ? did : bare;
    if (verb < 0) return null;
    c.use(past, noun, finish, did);
    c.useTags('scan', 'finish', 'do', 'go', 'patient', 'pass');
    if (
      past >= 0 &&
      c.entities('scanner').length === 0 &&
      c.at('scanner') < 0 &&
      c.entities('tips').length === 0
    )
      return null;
    return scanFact(c, 'scan-finished', verb);
  },
};

/** The part that says that something was wiped: a past form, or a noun that was done. */
function wipedAt(c: Clause): number {
  const past = [c.form('wipe', 'd'), c.form('clean', 'd')].find((i) => i >= 0);
  if (past !== undefined) return past;
  // "Did the lens on blue".
  const did = c.word(/^(did|done|i did|we did)$/);
  const lens = c.at('lens');
  if (did >= 0 && lens >= 0 && c.entities('scanner').length > 0 && (lens > did || c.parts.length <= 5))
    return did;
  const noun = [c.form('wipe', 'n'), c.form('clean', 'n')].find((i) => i >= 0) ?? -1;
  const done =
    c.has('finish', 'do', 'give', 'have', 'get') ||
    c.word(/^(done|gave it a|given it a|had a|gave|complete)$/) >= 0;
  return done ? noun : -1;
}

function namesScanner(c: Clause): boolean {
  const kinds = ['scanner', 'some', 'no-scanner'] as const;
  return c.at('scanner') >= 0 || kinds.some((kind) => c.entities(kind).length > 0);
}

/** True where what was wiped can be one of ours: it, or a part of it, is named here or was just before. */
function maySpeakOfScanner(c: Clause, verb: number): boolean {
  if (namesScanner(c) || c.has('lens', 'base') || c.scope.memory.scanners.length > 0) return true;
  if (!hasTag(c.parts[verb], 'wipe')) return false;
  const firm = /down|disinfect|clinell|over/.test(c.parts[verb]?.text ?? '');
  return c.word(/^down$/) >= 0 || (firm && c.names.scannerIds.length === 1);
}

export const wiped: Frame = {
  name: 'wiped',
  on: ['wipe', 'clean', 'wash', 'lens'],
  read(c) {
    const verb = wipedAt(c);
    if (verb < 0 || !maySpeakOfScanner(c, verb)) return null;
    const lens = c.at('lens');
    const base = c.at('base');
    const ofTips =
      c.entities('tips').some(({ entity }) => entity.named) || (c.at('tip') >= 0 && lens < 0 && base < 0);
    if (ofTips) return null;
    const named = namesScanner(c) && !hasTag(c.parts[lens], 'scanner');
    c.useTags('wipe', 'clean', 'do', 'finish', 'give', 'lens', 'base', 'get', 'have', 'wash');
    const scanners = scannersOf(c);
    const where = [lens, base].filter((i) => i >= 0);
    const facts = partsWiped(c, lens, base, named).flatMap((part) =>
      each(scanners, (id) =>
        made('wiped', { ...withScanner(id), part }, { scanner: scanners.said, part: where }),
      ),
    );
    const down = hasTag(c.parts[verb], 'wipe') && c.word(/^down$/) >= 0;
    return result(facts, verb, scanners.missing, down ? 0.6 : 0);
  },
};

/** Scanner and base together are `all`; "the base of the scanner" and "the lens on blue" name the part alone. */
function partsWiped(c: Clause, lens: number, base: number, named: boolean): ('all' | 'lens' | 'base')[] {
  if (lens < 0 && base < 0) return ['all'];
  if (
    base >= 0 &&
    (c.word(/^(and all|too|as well|aswell|n all)$/) >= 0 ||
      (c.parts[base + 1]?.text === 'and' && c.parts[base + 2]?.text === 'all'))
  )
    return ['all'];
  if (c.word(/^(only|just)$/) >= 0)
    return [...(lens >= 0 ? (['lens'] as const) : []), ...(base >= 0 ? (['base'] as const) : [])];
  const scannerAt = c.first('scanner')?.at ?? c.at('scanner');
  const first = Math.min(...[lens, base].filter((i) => i >= 0));
  const joined = c.parts
    .slice(Math.min(scannerAt, first), Math.max(scannerAt, first))
    .some((p) => /^(and|&|\+|plus|with|inc|incl|including|n|then|also)$/.test(p.text));
  if (named && scannerAt >= 0 && joined && base >= 0) return ['all'];
  if (named && scannerAt >= 0 && joined && lens >= 0 && base < 0) return ['all'];
  if (c.word(/^(everything|all over|whole)$/) >= 0) return ['all'];
  return [...(lens >= 0 ? (['lens'] as const) : []), ...(base >= 0 ? (['base'] as const) : [])];
}

export const covered: Frame = {
  name: 'covered',
  on: ['cover'],
  read(c) {
    const noun = c.form('cover', 'b') >= 0 ? c.form('cover', 'b') : c.at('cover');
    const past = c.form('cover', 'd');
    const on = c.word(/^(on|onto|back on|in place|on again|back)$/);
    const put = noun >= 0 ? c.form('put', 'd') : -1;
    if (past < 0 && (noun < 0 || (on < 0 && put < 0))) return null;
    if (c.word(/^off$/) >= 0 || c.has('fall', 'remove', 'lose', 'crack', 'wipe', 'find', 'clean'))
      return null;
    c.use(noun, past, on);
    c.useTags('cover', 'put', 'get', 'go', 'give', 'fit', 'have', 'tip');
    const scanners = scannersOf(c);
    if (past >= 0 && !scanners.spoken && typeof scanners.said !== 'string') return null;
    if (past >= 0 && isDenied(c, past)) return null;
    return result(
      each(scanners, (id) => made('covered', withScanner(id), { scanner: scanners.said })),
      past >= 0 ? past : put >= 0 ? put : on,
      scanners.missing,
    );
  },
};
