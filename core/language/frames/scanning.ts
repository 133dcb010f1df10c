import type { Clause } from '../clause.ts';
import type { Missing, Result } from '../result.ts';
import { placeOf, placeSlots } from '../roles/place.ts';
import { scannersOf } from '../roles/scanner.ts';
import { tipsOf } from '../roles/tips.ts';
import { withScanner } from './each-scanner.ts';
import { type Frame, made, result } from './frame.ts';

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

/** "Started with blue", "blue going": where no scan is said, a scanner and its start are. */
function startsScanner(c: Clause): boolean {
  const starts = c.exactly('start', 'gd') >= 0 || c.word(/^going$/) >= 0;
  return starts && c.entities('scanner').length > 0 && c.entities('load').length === 0;
}

/** "Same patient, back on Ruby with 6": the scanning goes on. */
function backOnPatient(c: Clause): number {
  const tipped = c.entities('scanner').length === 1 && c.entities('tips').length === 1;
  return tipped && c.has('samept') ? c.word(/^back on$/) : -1;
}

export const scanStarted: Frame = {
  name: 'scan-started',
  on: ['scan', 'start', 'word:going', 'samept'],
  read(c) {
    const scan = c.at('scan');
    const again = backOnPatient(c);
    if (again >= 0) {
      c.use(again);
      return scanFact(c, 'scan-started', again);
    }
    if (scan < 0 && !startsScanner(c)) return null;
    const start = c.form('start', scan >= 0 ? 'dgns' : 'dgn');
    const begin = c.form('start', 'b');
    const doing = c.form('scan', 'g');
    if (c.has('finish', 'book', 'cancel') || c.exactly('scan', 'd') >= 0) return null;
    const anew = start < 0 && doing < 0 && begin < 0 && c.has('samept') ? scan : -1;
    const going = start < 0 && (scan >= 0 || c.entities('tips').length > 0) ? c.word(/^going$/) : -1;
    if (going >= 0) {
      c.use(scan, going);
      return scanFact(c, 'scan-started', going);
    }
    if (start < 0 && doing < 0 && begin < 0 && anew < 0) return null;
    if (start < 0 && doing >= 0 && !/^(re)?scanning$/.test(c.parts[doing]?.text ?? '')) return null;
    c.use(scan, start, begin);
    c.useTags('scan', 'start', 'go', 'be', 'patient', 'do');
    return scanFact(c, 'scan-started', [start, doing, begin].find((i) => i >= 0) ?? anew);
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
