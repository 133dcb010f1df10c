import type { Clause } from '../clause.ts';
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
const STILL = /^(now|back|at|in|is|are|'s|over|over at|here|currently)$/;

function movable(c: Clause): ItemsSaid | null {
  return itemsOf(c, { bare: false });
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

export const moved: Frame = {
  name: 'moved',
  on: ['site', 'room', 'come', 'scanner', 'get', 'bring'],
  read(c) {
    if (
      c.has(
        'temp',
        'degree',
        'use',
        'booking',
        'find',
        'lose',
        'wipe',
        'calibrate',
        'travel-phrase',
        'open',
        'shut',
        'crack',
        'fog',
        'spore',
        'start',
        'finish',
        'bag',
        'wash',
        'retire',
        'hold',
        'release',
        'add',
        'sterile',
        'cancel',
        'book',
        'fall',
      )
    )
      return null;
    if (c.entities('celsius').length > 0 || c.entities('load').length > 0) return null;
    const place = placeOf(c, (prep) => prep !== 'from' && prep !== 'of') ?? hereOf(c);
    if (place === null) return null;
    const worn = c.first('scanner');
    if (worn !== null && c.prep(worn.at) === 'on' && c.entities('tips').length > 0) return null;
    const verb = MOVING.map((tag) => c.form(tag, 'ds')).find((i) => i >= 0) ?? c.word(STILL);
    const prep = c.prep(place.at);
    const left = c.form('leave', 'd');
    if (left >= 0 && (prep === 'for' || prep === 'to')) return null;
    if (verb < 0 && prep !== 'to') return null;
    if (!/^(to|at|in|on|own|)$/.test(prep)) return null;
    const items = movable(c);
    if (items === null) return null;
    if (
      place.room !== undefined &&
      c.names.sterileRooms.has(`${place.site}/${place.room}`) &&
      items.items.length > 0 &&
      items.items.every((item) => item.startsWith('tip:'))
    )
      return null;
    c.use(verb);
    c.useTags(...MOVING, 'tip');
    // A place once gone to that was only passed through says nothing ("from north").
    for (const one of c.entities('site')) if (c.prep(one.at) === 'from') c.use(one.at);
    for (const one of c.entities('room')) if (c.prep(one.at) === 'from') c.use(one.at);
    return result(
      [made('moved', { ...itemSlots(items), ...placeSlots(place) }, { items: items.said, site: place.said })],
      verb >= 0 ? verb : place.at,
      items.missing ?? place.missing,
      c.word(/^(here|arrived|got here)$/) >= 0 ? 0.5 : 0,
    );
  },
};

export const departed: Frame = {
  name: 'departed',
  on: ['travel', 'leave', 'take', 'bring', 'go', 'send', 'move'],
  read(c) {
    if (c.has('start', 'finish', 'hold', 'use', 'fail', 'find', 'lose', 'drop')) return null;
    const way = c.form('travel', 'd');
    const driving = c.form('travel', 'gs');
    const left = c.form('leave', 'dg');
    const going =
      ['take', 'bring', 'move', 'go', 'send'].map((tag) => c.form(tag, 'g')).find((i) => i >= 0) ?? -1;
    const sent = c.form('send', 'd');
    const place = placeOf(c, (prep) => /^(to|for|at|in|)$/.test(prep));
    const verb = [way, left, driving, going].find((i) => i >= 0) ?? (sent >= 0 && place !== null ? sent : -1);
    if (verb < 0) return null;
    if (left >= 0 && way < 0 && place !== null && /^(at|in)$/.test(c.prep(place.at))) return null;
    if (going >= 0 && way < 0 && driving < 0 && left < 0 && place === null) return null;
    const items = itemsOf(c, {});
    if (items === null) return null;
    if (left >= 0 && way < 0 && place === null && typeof items.said === 'string') return null;
    // "Left blue on the side": somebody left it, it did not leave.
    if (
      left >= 0 &&
      way < 0 &&
      place === null &&
      typeof items.said !== 'string' &&
      (items.said[0] ?? 0) > left
    )
      return null;
    c.use(verb);
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
    for (const one of c.entities('site')) if (c.prep(one.at) === 'from') c.use(one.at);
    const site = place?.site === undefined ? {} : { site: place.site };
    return result(
      [
        made(
          'departed',
          { ...itemSlots(items), ...site },
          { items: items.said, ...(place === null ? {} : { site: place.said }) },
        ),
      ],
      verb,
      items.missing ?? (place?.missing?.about === 'site' ? place.missing : undefined),
    );
  },
};

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
    if (verb < 0) return null;
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
    const verb = c.form('repair', 'd');
    if (verb < 0) return null;
    c.use(verb);
    c.useTags('repair', 'come', 'get', 'be', 'have');
    const items = itemsOf(c, { autoclaves: true }) ?? loneScanner(c);
    if (items === null) return null;
    if (items.items.length === 0 && autoclaveItem(c) === null && items.missing === undefined) return null;
    return result([made('repaired', itemSlots(items), { items: items.said })], verb, items.missing);
  },
};

function loneScanner(_c: Clause): ItemsSaid | null {
  return null;
}
