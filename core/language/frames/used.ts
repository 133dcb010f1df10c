import type { Clause } from '../clause.ts';
import { scannersOf } from '../roles/scanner.ts';
import { tipSlots, tipsOf } from '../roles/tips.ts';
import { type Frame, made, result } from './frame.ts';

/** The scanner that a clause names beside its tips ("used tip 4 on Robin"), if it names one. */
export function namedScanner(c: Clause) {
  if (c.entities('scanner').length === 0 && c.at('scanner') < 0 && c.entities('no-scanner').length === 0)
    return null;
  return scannersOf(c);
}

/** "Pulled 23 off, in the dirty box", "3 didn't pass, still dirty": no more than what the clause before said of it. */
function saysNoMore(c: Clause, verb: number, carried: boolean): boolean {
  const text = c.parts[verb]?.text ?? '';
  const { frame } = c.scope.memory;
  const put = frame === 'removed' && /^in the /.test(text);
  return carried && (put || (frame === 'inspected' && /^(dirty|mucky|manky)$/.test(text)));
}

export const used: Frame = {
  name: 'used',
  on: ['use'],
  read(c) {
    const verb = c.form('use', 'd');
    if (verb < 0) return null;
    c.use(verb);
    const tips = tipsOf(c, { bare: true, before: false });
    const before =
      tips ?? (c.word(/^(it|them|that|this|those)$/) >= 0 || c.parts.length <= 3 ? tipsOf(c, {}) : null);
    if (before === null || saysNoMore(c, verb, typeof before.said === 'string')) return null;
    const scanner = namedScanner(c);
    const [id, second] = scanner?.ids ?? [];
    const slots = {
      ...tipSlots(before),
      ...(id !== undefined && second === undefined && scanner?.missing === undefined ? { scanner: id } : {}),
    };
    const ones = /^ones$/.test(c.parts[verb + 1]?.text ?? '');
    if (ones) c.useTags('unit', 'shelf', 'be');
    c.useTags('use');
    return result(
      [made('used', slots, { tips: before.said, ...(scanner === null ? {} : { scanner: scanner.said }) })],
      verb,
      before.missing ?? (scanner?.spoken && typeof scanner.said !== 'string' ? scanner.missing : undefined),
      // "Used ones are 1 and 5".
      ones ? 0.8 : 0,
    );
  },
};
