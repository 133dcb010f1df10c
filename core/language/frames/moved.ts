import type { Clause } from '../clause.ts';
import { hasTag } from '../part.ts';
import { type ItemsSaid, itemSlots, itemsOf } from '../roles/items.ts';
import { type PlaceSaid, placeOf, placeSlots } from '../roles/place.ts';
import { type Frame, made, result } from './frame.ts';
import { leftFrom } from './left-from.ts';

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

const STILL = /^(now|back|at|in|is|are|'s|over|over at|here|currently|home|safely|safe|up|sitting)$/;

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

/** "Moving purple to op 3": from room to room is done as it is said. */
function movingToRoom(c: Clause, place: PlaceSaid): number | undefined {
  if (place.room === undefined || c.entities('site').length > 0) return undefined;
  return ['move', 'take', 'bring', 'put'].map((tag) => c.form(tag, 'g')).find((i) => i >= 0);
}

/** "Otter's base is at Weir": the base is no scanner. */
function isOfBase(c: Clause, onBase: boolean): boolean {
  const base = c.at('base');
  const verb = c.word(/^(is|'s|are|was|left|in|at|moved|went|gone)$/, base);
  return (
    !onBase &&
    base > 0 &&
    c.parts[base - 1]?.text === "'s" &&
    c.parts[base - 2]?.entity?.is === 'scanner' &&
    verb > base
  );
}

export const moved: Frame = {
  name: 'moved',
  on: ['site', 'room', 'come', 'scanner', 'get', 'bring'],
  read(c) {
    const onBase = c.word(/^back on$/) >= 0 && c.has('base');
    if (
      c.has(...NOT_MOVING.filter((tag) => !(onBase && tag === 'release'))) ||
      isOver(c) ||
      c.entities('celsius').length + c.entities('load').length > 0
    )
      return null;
    const place = placeOf(c, (prep) => prep !== 'from' && prep !== 'of') ?? hereOf(c);
    if (place === null || wearsTips(c) || leftFrom(c) >= 0) return null;
    // "Got tip 3, it was in bay 1": found there.
    if (c.word(/^got$/) === 0 && c.word(/^was$/) > 0) return null;
    const verb =
      MOVING.map((tag) => c.form(tag, 'ds')).find((i) => i >= 0) ??
      movingToRoom(c, place) ??
      holdingRoom(c) ??
      c.word(STILL);
    if (!isArrival(c, place, verb)) return null;
    if (isOfBase(c, onBase)) return null;
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
export function useOrigins(c: Clause): void {
  for (const { at } of [...c.entities('site'), ...c.entities('room')]) if (c.prep(at) === 'from') c.use(at);
}
