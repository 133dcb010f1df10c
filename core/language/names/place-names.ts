import type { Practice, Room } from '../../practice/practice.ts';
import { type Adding, type AddName, NUMBERS } from './adding.ts';

const ROOM_WORDS = ['surgery', 'surg', 'room', 'rm', 'op', 'operatory', 'chair', 's', 'treatment room', 'sx'];
const NUMBERED_ROOM =
  /^(?:dental )?(?:surgery|surg|room|rm|op|operatory|chair|treatment room|sx|suite|bay)\.? ?(\d+|one|two|three|four|five|six|seven|eight|nine|ten)$/i;
const STERILE_ROOM = /\b(steri|steril|decon|autoclav|cssd|hssu|lds|ldu|clean room|dirty room|instrument)/i;

/** What sites and rooms are called; gives back `site/room` of those where autoclaving is done. */
export function addPlaces(practice: Practice, adding: Adding): Set<string> {
  const { name, byId } = adding;
  const sterile = new Set<string>();
  for (const site of practice.sites) {
    for (const words of [site.name, ...site.also]) addSiteName(words, site.id, name);
    addSiteName(site.id, site.id, byId);
    const taken = new Set(
      site.rooms.flatMap((room) => [room.name, ...room.also].map((w) => w.toLowerCase())),
    );
    for (const room of site.rooms) {
      const ref = `${site.id}/${room.id}`;
      addRoom(room, ref, adding, taken);
      if ([room.name, ...room.also].some((words) => STERILE_ROOM.test(words))) sterile.add(ref);
    }
  }
  return sterile;
}

function addSiteName(words: string, id: string, name: AddName): void {
  name(words, 'site', id);
  const bare = words.replace(/^the /i, '');
  if (/(clinic|site|branch|practice|house|office|surgery)$/i.test(bare)) return;
  for (const noun of ['clinic', 'site', 'branch', 'practice', 'office', 'surgery'])
    name(`${bare} ${noun}`, 'site', id);
}

function addRoom(room: Room, ref: string, { name, byId }: Adding, taken: ReadonlySet<string>): void {
  for (const words of [room.name, ...room.also]) {
    name(words, 'room', ref);
    const number = /^(surgery|room)$/i.test(words) ? undefined : NUMBERED_ROOM.exec(words)?.[1];
    if (number !== undefined) addNumbered(name, number, ref, taken);
  }
  // An id is typed only where it looks like a code ("s2", "op1"): longer ones are words of their own.
  const code = /[a-z]/i.test(room.id) && (/\d/.test(room.id) || room.id.length === 3 || room.id.length === 2);
  if (code) byId(room.id, 'room', ref);
}

/** "Surgery 1" is "room 1", "surg one" and "s1" too, unless another room of the site has that name. */
function addNumbered(name: AddName, number: string, ref: string, taken: ReadonlySet<string>): void {
  const digit = NUMBERS.includes(number.toLowerCase())
    ? String(NUMBERS.indexOf(number.toLowerCase()))
    : number;
  const word = NUMBERS[Number(digit)];
  for (const noun of ROOM_WORDS) {
    for (const form of [
      `${noun} ${digit}`,
      ...(word === undefined ? [] : [`${noun} ${word}`]),
      `${noun} number ${digit}`,
      `${noun} no ${digit}`,
    ]) {
      if (!taken.has(form)) name(form, 'room', ref);
    }
  }
}
