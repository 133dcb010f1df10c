import type { Clause } from '../clause.ts';
import { hasTag } from '../part.ts';
import type { Result } from '../result.ts';
import { type ItemsSaid, itemsOf } from '../roles/items.ts';
import { isDenied } from '../roles/outcome.ts';
import { scannersOf } from '../roles/scanner.ts';
import { tipsOf } from '../roles/tips.ts';
import { type Sort, signs } from './fault-signs.ts';
import { type Frame, made, result } from './frame.ts';

/** What heats is the scanner, whatever tip it is said of. */
function scannerOnly(c: Clause): ItemsSaid | null {
  const found = scannersOf(c, 'item', 'item');
  c.use(c.at('tip'));
  return {
    items: found.ids.map((id) => `scanner:${id}`),
    except: [],
    said: found.said,
    ...(found.missing === undefined ? {} : { missing: found.missing }),
  };
}

function itemOfFault(c: Clause, sort: Sort): ItemsSaid | null {
  if (sort === 'heating' && c.entities('scanner').length > 0) return scannerOnly(c);
  // "Blue fogging even with a warm tip": which tip does not matter.
  const noun = c.at('tip');
  const anyTip =
    noun > 0 && c.entities('tips').length === 0 && c.parts.slice(0, noun).some((p) => p.text === 'with');
  // "Silver makes fog on tip 30": it is the tip that fogs.
  if (
    sort === 'fogging' &&
    c.entities('tips').some(({ at, entity }) => entity.named && c.prep(at) === 'on')
  ) {
    const tips = tipsOf(c, {});
    c.use(...c.entities('scanner').map(({ at }) => at));
    if (tips !== null && tips.missing === undefined)
      return { items: tips.ids.map((id) => `tip:${id}`), except: [], said: tips.said };
  }
  // "9 keeps fogging up on Heron".
  const bare = c.entities('tips').find(({ at, entity }) => at === 0 && entity.ids.length === 1);
  if (bare !== undefined && c.entities('scanner').some(({ at }) => c.prep(at) === 'on')) {
    c.use(bare.at, ...c.entities('scanner').map(({ at }) => at));
    return { items: bare.entity.ids.map((id) => `tip:${id}`), except: [], said: [bare.at] };
  }
  if (anyTip && c.entities('scanner').length > 0) return scannerOnly(c);
  // "Scanner cable frayed": whose it is is said in the word itself.
  const its = c.word(/^scanner (cable|lens|glass|window)$/) >= 0 && c.entities('scanner').length === 0;
  if (its && c.entities('tips').length === 0) return scannerOnly(c);
  return itemsOf(c, { autoclaves: true, bare: true });
}

/** "Throws error 17": which one is no tip. */
function useErrorNumber(c: Clause): void {
  for (const { at, entity } of c.entities('tips'))
    if (!entity.named && /error$/.test(c.parts[at - 1]?.text ?? '')) c.use(at);
}

/** "Only 15.5 in the attic, too cold for scanning" goes on speaking of the room. */
function isOfTheAir(c: Clause, sort: Sort): boolean {
  const things = c.entities('scanner').length + c.entities('tips').length;
  return sort === 'heating' && c.scope.memory.frame === 'temperature' && things === 0;
}

export const fault: Frame = {
  name: 'fault',
  on: [
    'fog',
    'drop',
    'fall',
    'crack',
    'scratch',
    'tear',
    'fray',
    'disconnect',
    'cold',
    'sick',
    'strip',
    'pouch',
    'seal',
    'mirror',
    'lens',
    'cable',
    'dead',
  ],
  read(c): Result | null {
    const sign = signs(c);
    if (sign === null || (sign.denies === undefined && isDenied(c, sign.at)) || isOfTheAir(c, sign.sort))
      return null;
    if (c.has('calibrate', 'debris') || (c.entities('load').length > 0 && sign.sort !== 'other')) return null;
    c.use(sign.at, ...(sign.also ?? []));
    c.useTags(
      'keep',
      'start',
      'be',
      'go',
      'come',
      'neg',
      'unit',
      'button',
      'pouch',
      'mirror',
      'crack',
      'tear',
      'sick',
      'fog',
      'scratch',
      'have',
      'get',
      'shelf',
      'turn',
      'find',
      'see',
      'dead',
      'patient',
      'take',
      'swap',
      'disconnect',
      'base',
    );
    useErrorNumber(c);
    const items = itemOfFault(c, sign.sort);
    if (items === null || items.which !== undefined) return null;
    // "The lens is cracked, cracked right across" says it twice.
    if (sign.sort === 'other' && typeof items.said === 'string' && c.scope.memory.frame === 'fault')
      return null;
    const sort = sign.sort;
    const facts = items.items.map((item) =>
      made('fault', { item, sort }, { item: items.said, sort: [sign.at] }),
    );
    if (facts.length === 0 && items.missing === undefined) return null;
    const missing =
      items.missing === undefined ? undefined : { ...items.missing, slot: 'item', form: 'item' as const };
    const list = facts.length > 0 ? facts : [made('fault', { sort }, {})];
    const base = result(list, sign.at, missing);
    return sign.denies && hasTag(c.parts[sign.at], 'neg')
      ? { ...base, anyMood: true }
      : { ...base, ...(sign.denies ? { anyMood: true as const } : {}) };
  },
};
