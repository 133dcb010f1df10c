import type { Clause } from '../clause.ts';
import type { TipsSaid } from '../part.ts';
import { scannersOf } from '../roles/scanner.ts';
import { type Frame, made, result } from './frame.ts';

interface Said {
  readonly at: number;
  readonly id: string;
}

/** The one tip that a mention names. */
function single(at: number, entity: TipsSaid): Said | null {
  const [id, more] = entity.ids;
  if (id === undefined || more !== undefined || entity.unknown.length > 0 || entity.which !== undefined)
    return null;
  return { at, id };
}

/** "Swapped tip 4 for 9 on blue", "changed blue from tip 4 to tip 9": one tip came off, another went on. */
export const swapped: Frame = {
  name: 'swapped',
  on: ['swap'],
  read(c) {
    const verb = c.exactly('swap', 'd');
    const tips = c.entities('tips').map(({ at, entity }) => single(at, entity));
    const [first, second, third] = tips;
    if (verb < 0 || !first || !second || third !== undefined) return null;
    const between = c.word(/^(for|with|to|->|by)$/, first.at);
    if (between < 0 || between > second.at) return null;
    const named = c.entities('tips').some(({ entity }) => entity.named) || c.at('tip') >= 0;
    const scanner = scannersOf(c);
    if (!named && !scanner.spoken) return null;
    const [off, on] = putsInFirst(c, verb, first.at) ? [second, first] : [first, second];
    const [id, more] = scanner.ids;
    c.use(verb, between, first.at, second.at, c.at('tip'), c.word(/^(out|in|over)$/));
    const slots = { tip: on.id, ...(id === undefined || more !== undefined ? {} : { scanner: id }) };
    return result(
      [
        made('removed', { tips: [off.id] }, { tips: [off.at] }),
        made('fitted', slots, { tip: [on.at], scanner: scanner.said }),
      ],
      verb,
      scanner.missing,
    );
  },
};

/** "Swapped in 9 for 4": what comes first is what went on. */
function putsInFirst(c: Clause, verb: number, first: number): boolean {
  const at = c.word(/^in$/, verb);
  return at > verb && at < first;
}
