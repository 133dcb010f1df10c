import type { Clause } from '../clause.ts';
import { hasTag } from '../part.ts';
import { scannersOf } from '../roles/scanner.ts';
import { each, namesScanner, withScanner } from './each-scanner.ts';
import { type Frame, made, result } from './frame.ts';

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
