import type { Clause } from '../clause.ts';
import type { Result } from '../result.ts';
import { type ItemsSaid, itemSlots, itemsOf } from '../roles/items.ts';
import { type PlaceSaid, placeOf } from '../roles/place.ts';
import { type Frame, made, result } from './frame.ts';
import { leftFrom } from './left-from.ts';
import { useOrigins } from './moved.ts';

interface Going {
  readonly verb: number;
  /** "Left" alone tells least: much is left that does not leave. */
  readonly onlyLeft: boolean;
  /** "Taking", "moving": a departure only where it says where to. */
  readonly onlyTaking: boolean;
}

/** "Pearl's off to the hills": a thing is off, not a person. */
function offTo(c: Clause): number {
  const at = c.word(/^off to$/);
  const before = c.parts.slice(0, Math.max(at, 0));
  const thing = before.some((p) => p.entity?.is === 'scanner' || p.entity?.is === 'tips');
  return at > 0 && thing && !before.some((p) => /^(i|i'm|we|we're|im)$/.test(p.text)) ? at : -1;
}

function goingOf(c: Clause, toPlace: boolean): Going | null {
  const way = c.form('travel', 'd') >= 0 ? c.form('travel', 'd') : offTo(c);
  const left = c.form('leave', toPlace ? 'dgs' : 'dg');
  const driving = c.form('travel', 'gs');
  const taking =
    ['take', 'bring', 'move', 'go', 'send'].map((tag) => c.form(tag, 'g')).find((i) => i >= 0) ?? -1;
  const sent = toPlace ? c.form('send', 'd') : -1;
  const verb = [way, left, driving, taking, sent].find((i) => i >= 0);
  if (verb === undefined) return null;
  return {
    verb,
    onlyLeft: left >= 0 && way < 0,
    onlyTaking: way < 0 && driving < 0 && left < 0 && taking >= 0,
  };
}

export const departed: Frame = {
  name: 'departed',
  on: ['travel', 'leave', 'take', 'bring', 'go', 'send', 'move', 'word:off to'],
  read(c) {
    if (c.has('start', 'finish', 'hold', 'use', 'fail', 'find', 'lose', 'drop')) return null;
    // "Left the Green for Park Road": where to, of two places.
    const aims = c.entities('site').filter(({ at }) => /^(to|for)$/.test(c.prep(at))).length === 1;
    const place = placeOf(c, (prep) => (aims ? /^(to|for)$/ : /^(to|for|at|in|)$/).test(prep));
    if (!aims && leftFrom(c) >= 0) return leaving(c);
    if (aims) for (const { at } of c.entities('site')) c.use(at);
    const going = goingOf(c, place !== null);
    if (going === null || (going.onlyTaking && place === null)) return null;
    if (staysHere(c, going, place)) return null;
    const items = itemsOf(c, {});
    // "It's at high street now, took it in the car": how it came.
    if (
      items !== null &&
      typeof items.said === 'string' &&
      c.scope.memory.frame === 'moved' &&
      place === null
    )
      return null;
    if (items === null || (going.onlyLeft && place === null && !leavesItself(items, going.verb))) return null;
    c.use(going.verb);
    c.useTags(
      'travel',
      'leave',
      'take',
      'bring',
      'go',
      'car',
      'send',
      'put',
      'be',
      'come',
      'tip',
      'bag',
      'move',
      'get',
    );
    useOrigins(c);
    const site = place?.site === undefined ? {} : { site: place.site };
    const said = { items: items.said, ...(place === null ? {} : { site: place.said }) };
    const lacking = items.missing ?? (place?.missing?.about === 'site' ? place.missing : undefined);
    return result([made('departed', { ...itemSlots(items), ...site }, said)], going.verb, lacking);
  },
};

/** "Left the docks with the scanner": from where, and nothing of where to. */
function leaving(c: Clause): Result | null {
  const verb = c.form('leave', 'd');
  const items = itemsOf(c, {});
  if (items === null) return null;
  c.use(verb, leftFrom(c));
  return result([made('departed', itemSlots(items), { items: items.said })], verb, items.missing);
}

/** "Right scanner going in surgery 2", "left blue at North", "moving purple to op 3": it never leaves the house. */
function staysHere(c: Clause, going: Going, place: PlaceSaid | null): boolean {
  if (place === null) return false;
  const still =
    (going.onlyTaking && /^(in|at)$/.test(c.prep(place.at))) ||
    (going.onlyLeft && /^(at|in)$/.test(c.prep(place.at)));
  return still || (going.onlyTaking && place.room !== undefined && c.entities('site').length === 0);
}

/** "Left blue on the side": somebody left it, it did not leave. */
function leavesItself(items: ItemsSaid, verb: number): boolean {
  return typeof items.said !== 'string' && (items.said[0] ?? 0) < verb;
}
