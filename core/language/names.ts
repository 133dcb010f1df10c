import type { Autoclave, Practice, Room } from '../practice/practice.ts';
import { phraseOf } from './lexicon/compile.ts';
import type { LearnedWord } from './read.ts';
import type { Table } from './table.ts';
import { TipIds } from './tip-ids.ts';

/** The practice as the reader needs it: lookups that are made once. */
export interface Names {
  readonly practice: Practice;
  readonly tips: TipIds;
  readonly scannerIds: readonly string[];
  readonly siteIds: readonly string[];
  /** `site/room` of rooms where autoclaving is done. */
  readonly sterileRooms: ReadonlySet<string>;
  readonly siteOfChat: ReadonlyMap<string, readonly string[]>;
  /** Ids of single letters: "a" is one only where it cannot be the article. */
  readonly letterIds: ReadonlyMap<string, string>;
}

const ROOM_WORDS = ['surgery', 'surg', 'room', 'rm', 'op', 'operatory', 'chair', 's', 'treatment room', 'sx'];
const NUMBERED_ROOM =
  /^(?:dental )?(?:surgery|surg|room|rm|op|operatory|chair|treatment room|sx|suite|bay)\.? ?(\d+|one|two|three|four|five|six|seven|eight|nine|ten)$/i;
const STERILE_ROOM = /\b(steri|steril|decon|autoclav|cssd|hssu|lds|ldu|clean room|dirty room|instrument)/i;
const NUMBERS = ['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];
const STERI_WORDS = [
  'steri',
  'steri room',
  'decon',
  'decon room',
  'sterilisation',
  'sterilization',
  'sterilisation room',
  'sterilization room',
  'sterile room',
  'decontamination',
  'decontamination room',
  'cssd',
  'hssu',
  'the autoclave room',
  'autoclave room',
  'lds',
  'ldu',
  'steri centre',
  'steri center',
  'sterile services',
  'dirty room',
  'steralisation',
  'steri bay',
  'decon unit',
  'steri area',
  'sterilising room',
  'sterilising',
  'sterilizing',
  'reprocessing',
  'be sterilised',
  'be sterilized',
  'be autoclaved',
  'get sterilised',
  'get autoclaved',
  'sterilisation unit',
  'lab steri',
  'the steri',
];

/** Puts the practice's names into the table and makes the lookups. */
export function addNames(table: Table, practice: Practice, learned: readonly LearnedWord[]): Names {
  const name = (words: string, tag: string, ref: string) => {
    const phrase = phraseOf(words);
    if (phrase.length === 0) return;
    // "The back" without its article is the adverb.
    const adverb = phrase.length === 2 && phrase[0] === 'the' && table.isGlue(phrase[1] ?? '');
    const first = phrase[0] === 'the' && !adverb ? phrase.slice(1) : phrase;
    for (const form of [phrase, first, phrase[0] === 'the' ? phrase : ['the', ...first]]) {
      if (form.length > 0) table.add(form, { sort: 'name', tag, form: '', ref });
    }
  };
  const letterIds = new Map<string, string>();
  const byId = (id: string, tag: string, ref: string) => {
    if (!table.isSmall(id.toLowerCase())) name(id, tag, ref);
  };
  addScanners(practice, { name, byId }, letterIds);
  const sterileRooms = addPlaces(practice, { name, byId });
  for (const words of STERI_WORDS) name(words, 'steri', '');
  for (const one of practice.autoclaves) addAutoclave(one, { name, byId });
  for (const person of practice.people) {
    for (const words of [person.name, ...person.also]) name(words, 'person', person.name);
  }
  for (const { words, means } of learned) addLearned(name, words, means);
  return {
    practice,
    tips: new TipIds(practice.tips.map((tip) => tip.id)),
    scannerIds: practice.scanners.map((scanner) => scanner.id),
    siteIds: practice.sites.map((site) => site.id),
    sterileRooms,
    siteOfChat: new Map(practice.chat.map((chat) => [chat.room, chat.sites])),
    letterIds,
  };
}

/** A name as others may write it: gray for grey, "no 2" for "number two". */
function spellings(words: string): string[] {
  const list = [words];
  if (/grey/i.test(words)) list.push(words.replace(/grey/i, 'gray'));
  if (/gray/i.test(words)) list.push(words.replace(/gray/i, 'grey'));
  const [, stem, last] = /^(.*?)[ -]?(\d{1,2})$/.exec(words) ?? [];
  const spoken = NUMBERS[Number(last)];
  if (stem !== undefined && stem !== '' && spoken !== undefined && Number(last) > 0)
    list.push(`${stem} ${spoken}`);
  const [, digit] = /^number (\w+)$/i.exec(words) ?? [];
  if (digit !== undefined) {
    const at = NUMBERS.indexOf(digit.toLowerCase());
    const figure = at >= 0 ? String(at) : digit;
    list.push(
      `no ${figure}`,
      `no. ${figure}`,
      `number ${figure}`,
      `num ${figure}`,
      ...(NUMBERS[Number(figure)] === undefined ? [] : [`number ${NUMBERS[Number(figure)]}`]),
    );
  }
  return list;
}

type AddName = (words: string, tag: string, ref: string) => void;

/** `byId` leaves out ids that are small words of English. */
interface Adding {
  readonly name: AddName;
  readonly byId: AddName;
}

const STERILISERS = ['autoclave', 'one', 'steriliser', 'sterilizer', 'ac', 'clave'];

function addAutoclave(one: Autoclave, { name, byId }: Adding): void {
  const add = (words: string) => name(words, 'autoclave-name', one.id);
  for (const words of [one.name, ...one.also]) {
    add(words);
    const short = words.replace(/ (autoclave|steriliser|sterilizer)$/i, '');
    if (!/one$/i.test(words)) for (const noun of STERILISERS) add(`${short} ${noun}`);
  }
  for (const noun of STERILISERS) if (noun !== 'one') add(`${noun} ${one.id}`);
  if (one.id.length > 1 && !/^\d+$/.test(one.id)) byId(one.id, 'autoclave-name', one.id);
}

function addScanners(practice: Practice, { name, byId }: Adding, letterIds: Map<string, string>): void {
  for (const scanner of practice.scanners) {
    for (const words of [scanner.name, ...scanner.also, scanner.id].flatMap(spellings)) {
      const bare = words.replace(/^the /i, '');
      for (const pattern of patternsOf(bare)) name(pattern, 'scanner-name', scanner.id);
      if (/^[a-z]$/i.test(bare)) letterIds.set(bare.toLowerCase(), scanner.id);
      else if (!/^(\d+|scanner)$/i.test(bare)) {
        const add = words === scanner.id ? byId : name;
        add(bare, /scanner$/i.test(bare) ? 'scanner-name' : 'scanner-bare', scanner.id);
      }
    }
  }
}

/** What a scanner of this name is called besides: "scanner B", "the blue one". */
function patternsOf(bare: string): string[] {
  const short = bare.replace(/ ?scanner$/i, '');
  const loose =
    short === '' || /^[a-z]$/i.test(short)
      ? []
      : ['unit', 'one', 'machine', 'wand'].map((noun) => `${short} ${noun}`);
  if (short !== bare) return loose;
  return [...loose, `scanner ${bare}`, `${bare} scanner`, `unit ${bare}`, `intraoral scanner ${bare}`];
}

function addPlaces(practice: Practice, adding: Adding): Set<string> {
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

function addLearned(name: AddName, words: string, means: string): void {
  const at = means.indexOf(':');
  const sort = means.slice(0, at);
  const ref = means.slice(at + 1);
  const tags: Readonly<Record<string, string>> = {
    scanner: 'scanner-name',
    site: 'site',
    room: 'room',
    autoclave: 'autoclave-name',
    tip: 'tip-name',
    person: 'person',
  };
  const tag = tags[sort];
  if (tag !== undefined) name(words, tag, ref);
}
