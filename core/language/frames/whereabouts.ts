import type { Clause } from '../clause.ts';
import { hasTag } from '../part.ts';
import { autoclaveItem } from '../roles/autoclave.ts';
import { type ItemsSaid, itemSlots, itemsOf } from '../roles/items.ts';
import { isDenied } from '../roles/outcome.ts';
import { type PlaceSaid, placeOf, placeSlots } from '../roles/place.ts';
import { type Frame, made, result } from './frame.ts';

const MOVING = [
  'move',
  'take',
  'bring',
  'go',
  'come',
  'put',
  'dropoff',
  'travel',
  'swap',
  'drop',
  'get',
  'give',
  'leave',
  'send',
  'be',
];
const STILL = /^(now|back|at|in|is|are|'s|over|over at|here|currently|home|safely|safe|up)$/;

function movable(c: Clause): ItemsSaid | null {
  const several = c
    .entities('tips')
    .some(({ entity }) => entity.ids.length > 1 && entity.unknown.length === 0);
  return itemsOf(c, { bare: several && c.word(/^(are|were|gone|now)$/) >= 0 });
}

/** "Green is here", "green has arrived": the one site that this chat room serves. */
function hereOf(c: Clause): PlaceSaid | null {
  const [site, more] = c.scope.chatSites;
  const here = c.word(/^(here|over here|in here|back here)$/);
  const come = c.parts.findIndex((p) => /^(arrived|here|got here|arrives|landed)$/.test(p.text));
  if (site === undefined || more !== undefined || (here < 0 && come < 0)) return null;
  if (c.entities('tips').length > 0 && c.word(/^(new|brand new)$/) >= 0) return null;
  c.use(here, come);
  return { site, said: [here >= 0 ? here : come], at: here >= 0 ? here : come };
}

/** What is said of a thing at a place besides its being there. */
const NOT_MOVING = [
  ...[
    'temp',
    'degree',
    'use',
    'booking',
    'find',
    'lose',
    'wipe',
    'calibrate',
    'open',
    'shut',
    'crack',
    'fog',
    'spore',
  ],
  ...['start', 'bag', 'wash', 'retire', 'hold', 'release', 'add', 'sterile', 'cancel', 'book', 'fall'],
];

/** Something has ended; "over in surgery 2" tells where. */
function isOver(c: Clause): boolean {
  return c.parts.some((p) => p.entity === undefined && p.text !== 'over' && hasTag(p, 'finish'));
}

/** "Bay 2 has blue": the room that has it. */
function holdingRoom(c: Clause): number | undefined {
  const first = c.parts[0]?.entity?.is;
  const at = first === 'room' || first === 'site' ? c.word(/^(has|have|'s got|got)$/) : -1;
  return at > 0 && at <= 2 ? at : undefined;
}

export const moved: Frame = {
  name: 'moved',
  on: ['site', 'room', 'come', 'scanner', 'get', 'bring'],
  read(c) {
    if (c.has(...NOT_MOVING) || isOver(c) || c.entities('celsius').length + c.entities('load').length > 0)
      return null;
    const place = placeOf(c, (prep) => prep !== 'from' && prep !== 'of') ?? hereOf(c);
    if (place === null || wearsTips(c)) return null;
    const verb =
      MOVING.map((tag) => c.form(tag, 'ds')).find((i) => i >= 0) ?? holdingRoom(c) ?? c.word(STILL);
    if (!isArrival(c, place, verb)) return null;
    const items = movable(c);
    if (items === null || isForSterilising(c, place, items)) return null;
    c.use(verb);
    c.useTags(...MOVING, 'tip', 'base');
    useOrigins(c);
    const slots = { ...itemSlots(items), ...placeSlots(place) };
    const bonus = c.word(/^(here|there|arrived|got here)$/) >= 0 ? 0.5 : 0;
    return result(
      [made('moved', slots, { items: items.said, site: place.said })],
      verb >= 0 ? verb : place.at,
      items.missing ?? place.missing,
      bonus,
    );
  },
};

/** "Tip 2 on blue in room 2" tells where it was fitted. */
function wearsTips(c: Clause): boolean {
  const scanner = c.first('scanner');
  return scanner !== null && c.prep(scanner.at) === 'on' && c.entities('tips').length > 0;
}

/** True where the place is one that something came to, not one that it left for. */
function isArrival(c: Clause, place: PlaceSaid, verb: number): boolean {
  const prep = /there$/.test(c.parts[place.at]?.text ?? '') ? 'in' : c.prep(place.at);
  if (!/^(to|at|in|on|own|)$/.test(prep)) return false;
  if (c.form('leave', 'd') >= 0 && (prep === 'for' || prep === 'to')) return false;
  return verb >= 0 || prep === 'to';
}

/** Tips gone to the room where autoclaving is done are sent, not moved. */
function isForSterilising(c: Clause, place: PlaceSaid, items: ItemsSaid): boolean {
  if (place.room === undefined || !c.names.sterileRooms.has(`${place.site}/${place.room}`)) return false;
  return items.items.length > 0 && items.items.every((item) => item.startsWith('tip:'));
}

/** A place that something came from says no more. */
function useOrigins(c: Clause): void {
  for (const { at } of [...c.entities('site'), ...c.entities('room')]) if (c.prep(at) === 'from') c.use(at);
}

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
  on: ['travel', 'leave', 'take', 'bring', 'go', 'send', 'move'],
  read(c) {
    if (c.has('start', 'finish', 'hold', 'use', 'fail', 'find', 'lose', 'drop')) return null;
    // "Left the Green for Park Road": where to, of two places.
    const aims = c.entities('site').filter(({ at }) => /^(to|for)$/.test(c.prep(at))).length === 1;
    const place = placeOf(c, (prep) => (aims ? /^(to|for)$/ : /^(to|for|at|in|)$/).test(prep));
    if (aims) for (const { at } of c.entities('site')) c.use(at);
    const going = goingOf(c, place !== null);
    if (going === null || (going.onlyTaking && place === null)) return null;
    // "Right scanner going in surgery 2" goes nowhere.
    if (going.onlyTaking && place !== null && /^(in|at)$/.test(c.prep(place.at))) return null;
    if (going.onlyLeft && place !== null && /^(at|in)$/.test(c.prep(place.at))) return null;
    const items = itemsOf(c, {});
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

/** "Left blue on the side": somebody left it, it did not leave. */
function leavesItself(items: ItemsSaid, verb: number): boolean {
  return typeof items.said !== 'string' && (items.said[0] ?? 0) < verb;
}

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
  on: ['find'],
  read(c) {
    const verb = c.form('find', 'd');
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

export const repaired: Frame = {
  name: 'repaired',
  on: ['repair'],
  read(c) {
    const done = c.form('repair', 'd');
    const noun = c.has('finish') ? c.form('repair', 'n') : -1;
    const verb = done >= 0 ? done : noun;
    if (verb < 0) return null;
    c.use(verb);
    c.useTags('finish', 'repair', 'come', 'get', 'be', 'have');
    const items = itemsOf(c, { autoclaves: true }) ?? loneScanner(c);
    if (items === null) return null;
    if (items.items.length === 0 && autoclaveItem(c) === null && items.missing === undefined) return null;
    return result([made('repaired', itemSlots(items), { items: items.said })], verb, items.missing);
  },
};

function loneScanner(_c: Clause): ItemsSaid | null {
  return null;
}
