import { itemSlots, itemsOf } from '../roles/items.ts';
import { isDenied } from '../roles/outcome.ts';
import { placeOf, placeSlots } from '../roles/place.ts';
import { type Frame, made, result } from './frame.ts';

export const missing: Frame = {
  name: 'missing',
  on: ['lose'],
  read(c) {
    const verb = c.form('lose', 'dg');
    if (verb < 0) return null;
    if (
      c.has('disconnect', 'connect') ||
      c.word(/^(signal|connection|power|image|patience|count|track)$/) >= 0
    )
      return null;
    c.use(verb);
    c.useTags('lose', 'go', 'shelf', 'be');
    const items = itemsOf(c, { bare: true });
    if (items === null) return null;
    const place = placeOf(c, (prep) => prep === 'in' || prep === 'at');
    const finding = c.parts[verb]?.text ?? '';
    if (isDenied(c, verb) && !/(n't|not|cannot|cant|no |unable|nowhere|couldnt)/.test(finding)) return null;
    return {
      ...result(
        [made('missing', { ...itemSlots(items), ...placeSlots(place) }, { items: items.said })],
        verb,
        items.missing,
      ),
      anyMood: true,
    };
  },
};

export const found: Frame = {
  name: 'found',
  on: ['find', 'word:got'],
  read(c) {
    const got = c.word(/^got$/) === 0 && c.word(/^was$/) > 1 ? 0 : -1;
    const verb = c.form('find', 'd') >= 0 ? c.form('find', 'd') : got;
    if (got === 0) c.use(c.word(/^was$/));
    // "Found debris on tip 5" is of the tip's look.
    if (verb < 0 || c.has('debris', 'crack')) return null;
    c.use(verb);
    c.useTags('find', 'shelf', 'be', 'bag');
    const items = itemsOf(c, { bare: true });
    if (items === null) return null;
    const place = placeOf(c);
    return result(
      [made('found', { ...itemSlots(items), ...placeSlots(place) }, { items: items.said })],
      verb,
      items.missing ?? place?.missing,
    );
  },
};
