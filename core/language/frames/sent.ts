import type { Clause } from '../clause.ts';
import { type Frame, tipFact } from './frame.ts';

/** Where autoclaving is done: the words for it, an autoclave, or one of the practice's own rooms for it. */
export function sterilePlace(c: Clause): number {
  const steri = c.at('steri');
  if (steri >= 0) return steri;
  const autoclave = c.at('autoclave');
  if (autoclave >= 0) return autoclave;
  const named = c.first('autoclave');
  if (named !== null) return named.at;
  const room = c
    .entities('room')
    .find(({ entity }) => entity.rooms.some((ref) => c.names.sterileRooms.has(ref)));
  return room?.at ?? -1;
}

const GOING = [
  'send',
  'go',
  'take',
  'put',
  'bring',
  'dropoff',
  'be',
  'drop',
  'leave',
  'move',
  'come',
  'load',
  'get',
  'give',
  'travel',
  'fit',
];

export const sent: Frame = {
  name: 'sent',
  on: ['send', 'steri', 'autoclave', 'room', 'sterilise'],
  read(c) {
    const send = c.form('send', 'd');
    const place = sterilePlace(c);
    const cooking = c.form('sterilise', 'g');
    if (send < 0 && place < 0 && cooking < 0) return null;
    if (place >= 0 && send < 0 && (c.prep(place) === 'from' || c.word(/^out$/) >= 0)) return null;
    if (send >= 0 && place < 0 && (c.entities('site').length > 0 || c.entities('room').length > 0))
      return null;
    if (tellsElse(c, place)) return null;
    const verb = send >= 0 ? send : motionVerb(c, place);
    if (verb < 0 && !/^(to|in|at)$/.test(c.prep(place))) return null;
    c.use(send, place, cooking);
    if (verb >= 0) c.use(verb);
    c.useTags('autoclave', 'load', 'send', 'sterilise');
    if (place >= 0) for (const room of c.entities('room')) c.use(room.at);
    if (c.parts[place - 1]?.entity?.is === 'site') c.use(place - 1);
    return tipFact(c, 'sent', verb >= 0 ? verb : place, { bare: true });
  },
};

const ELSE = [
  'hold',
  'release',
  'fail',
  'repair',
  'scan',
  'find',
  'lose',
  'use',
  'spore',
  'penetration',
  'leak',
  'control',
];

/** A result, a fault or a load: something other than that tips were sent. */
function tellsElse(c: Clause, place: number): boolean {
  return c.has(...ELSE) || (c.has('pass') && !handsOver(c, place)) || c.entities('load').length > 0;
}

/** "Passed M1 and M2 to the LDU": handed on, with no result in it. */
function handsOver(c: Clause, place: number): boolean {
  return place >= 0 && c.word(/^passed$/) >= 0 && c.prep(place) === 'to';
}

function motionVerb(c: Clause, place: number): number {
  // "Passed M1 to the LDU".
  const handed = c.word(/^(passed|handed)$/);
  if (handed >= 0 && /^(to|on to|over to|down to)$/.test(c.prep(place))) return handed;
  for (const tag of GOING) {
    const at = c.form(tag, 'dgs');
    if (at >= 0 && (tag !== 'be' || /^(in|at|to)$/.test(c.prep(place)))) return at;
  }
  return c.word(/^('s|gone|are|is|was|were|going|went|been)$/);
}
