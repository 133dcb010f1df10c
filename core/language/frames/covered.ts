import { isDenied } from '../roles/outcome.ts';
import { scannersOf } from '../roles/scanner.ts';
import { each, withScanner } from './each-scanner.ts';
import { type Frame, made, result } from './frame.ts';

export const covered: Frame = {
  name: 'covered',
  on: ['cover'],
  read(c) {
    const noun = c.form('cover', 'b') >= 0 ? c.form('cover', 'b') : c.at('cover');
    const past = c.form('cover', 'd');
    const on = c.word(/^(on|onto|back on|in place|on again|back)$/);
    const put = noun >= 0 ? Math.max(c.form('put', 'd'), c.exactly('give', 'd')) : -1;
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
