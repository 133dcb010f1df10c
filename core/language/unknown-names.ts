import { strangeIn } from './evidence/strange.ts';
import type { Names } from './names.ts';
import { type Entity, hasTag, type Part } from './part.ts';
import type { Gap, NoteRead } from './read.ts';
import { closeness } from './spelling/closeness.ts';

/** Words that nobody knows, standing where a name of ours would: "the gun", "big blue", "Fiona's room". */
interface Run {
  readonly from: number;
  /** One past its last part. */
  readonly to: number;
  /** How it hangs on what stands before: in or to a place, else a thing. */
  readonly sort: 'scanner' | 'site' | 'room';
}

/** What a note would say if the words were a name. */
type Reread = (parts: readonly Part[]) => NoteRead;

/** Longer notes speak of more than one thing: a word in them may be anything. */
const LONGEST = 14;
/** A name has two words at most besides its article. */
const MOST_WORDS = 2;

/**
 * A note that would tell one fact if words that nobody knows were a name of ours: the fact with that slot left open, to ask
 * which one is meant ("calibrated the gun", "moved blue to Fiona's room"). `null` where it would not, or is no such note.
 */
export function askOfUnknown(
  parts: readonly Part[],
  names: Names,
  typed: (from: Part, to: Part) => string,
  reread: Reread,
): NoteRead | null {
  if (parts.length > LONGEST) return null;
  const [run, more] = runsIn(parts);
  if (run === undefined || more !== undefined || isNearName(parts, run, names)) return null;
  const entity = standIn(run, names);
  if (entity === null || !couldBe(run, parts)) return null;
  const first = parts[run.from];
  const last = parts[run.to - 1];
  if (first === undefined || last === undefined) return null;
  const named: Part = {
    from: first.from,
    to: last.to,
    text: '',
    senses: [],
    entity,
    mark: false,
    unknown: false,
  };
  const others = [...parts.slice(0, run.from), named, ...parts.slice(run.to)];
  if (strangeIn(others) > 0) return null;
  return openFor(run, entity, reread(others), typed(first, last), names);
}

function runsIn(parts: readonly Part[]): Run[] {
  const runs: Run[] = [];
  for (let at = 0; at < parts.length; at++) {
    const run = runAt(parts, at);
    if (run === null) continue;
    runs.push(run);
    at = run.to;
  }
  return runs;
}

function runAt(parts: readonly Part[], from: number): Run | null {
  const article = /^(the|our|my)$/.test(parts[from]?.text ?? '') ? 1 : 0;
  let to = from + article;
  while (to - from - article < MOST_WORDS && isStrange(parts[to], article === 1)) to++;
  const own = parts[to];
  const owner = parts[to - 1];
  if (owner === undefined) return null;
  const owned = own?.entity === undefined && own?.text === "'s" ? 1 : 0;
  const room = hasTag(parts[to + owned], 'roomword') || hasTag(parts[to + owned], 'clinic');
  if (to === from + article || (!parts.slice(from, to).some((p) => p.unknown) && !room)) return null;
  if (room) {
    const is = hasTag(parts[to + owned], 'roomword') ? 'room' : 'site';
    return { from, to: to + owned + 1, sort: is };
  }
  if (owned > 0 || isStrange(own, false)) return null;
  const before = parts[from - 1]?.text ?? '';
  return {
    from,
    to,
    sort: /^(in|to|at|into|inside|over to|over in|over at|back to|back in|back at)$/.test(before)
      ? 'site'
      : 'scanner',
  };
}

const BESIDE = /^(other|new|old|back|front|big|small|little|far|top|end|corner|upstairs|downstairs)$/;

/** A word that nobody knows, a name of somebody before "'s room", an adjective behind an article. */
function isStrange(part: Part | undefined, articled: boolean): boolean {
  if (part === undefined || part.mark) return false;
  if (part.entity !== undefined) return part.entity.is === 'person' && !part.entity.known;
  if (articled && BESIDE.test(part.text)) return true;
  return part.unknown && /^\p{L}[\p{L}'-]+$/u.test(part.text) && !NEVER.test(part.text);
}

/** What else is calibrated, worn or spoken of in a practice: never a scanner, never a place. */
const NEVER =
  /^(light|lights|lamp|chair|chairs|sensor|sensors|thermometer|scale|scales|watch|monitor|screen|camera|compressor|pump|mill|furnace|laser|probe|meter|telly|tv|car|phone|van|equipment|kit|everything|everyone|yesterday|today|please|bin|sink|drawer|bag|box|tray|cupboard|floor|table|door|meeting|course|party|lab|hospital|pub|shop|shops|vet|school|bank|patient|patients|dentist|nurse|doctor|boss|morning|afternoon|lunch|weekend|end|way|manual|instructions|protocol|rules|time|temperature|can|would|could|available|allowed|readings?|clock|oven|bath)$/;

/** Made once for a practice: making them for each note took 4 % of all reading. */
const OWN_WORDS = new WeakMap<Names['practice'], readonly string[]>();

function ownWords(practice: Names['practice']): readonly string[] {
  const known = OWN_WORDS.get(practice);
  if (known !== undefined) return known;
  const own = [...practice.scanners, ...practice.sites, ...practice.sites.flatMap(({ rooms }) => rooms)]
    .flatMap(({ name, also }) => [name, ...also])
    .flatMap((words) => words.toLowerCase().split(/\s+/));
  OWN_WORDS.set(practice, own);
  return own;
}

/** A slip of one of our own names is for the spelling. */
function isNearName(parts: readonly Part[], run: Run, { practice }: Names): boolean {
  const own = ownWords(practice);
  return parts
    .slice(run.from, run.to)
    .some((p) => p.unknown && own.some((word) => word.length > 2 && closeness(p.text, word) > 0));
}

function standIn({ sort }: Run, { practice, scannerIds }: Names): Entity | null {
  const [site] = practice.sites;
  const withRooms = practice.sites.find(({ rooms }) => rooms.length > 0);
  const [room] = withRooms?.rooms ?? [];
  if (sort === 'scanner') {
    const [id] = scannerIds;
    return id === undefined ? null : { is: 'scanner', ids: [id], named: 'name' };
  }
  if (sort === 'site') return site === undefined ? null : { is: 'site', id: site.id, bare: false };
  if (withRooms === undefined || room === undefined) return null;
  return { is: 'room', rooms: [`${withRooms.id}/${room.id}`], said: '' };
}

/** Verbs that are of scanners alone, and those that carry one of ours somewhere. */
function couldBe(run: Run, parts: readonly Part[]): boolean {
  if (run.sort === 'scanner') {
    const on = /^(on|with|using|w)$/.test(parts[run.from - 1]?.text ?? '');
    const tip = parts.some((p) => p.entity?.is === 'tips' && p.entity.named);
    return nearCalibrated(run, parts) || (on && (tip || parts.some((p) => hasTag(p, 'scan'))));
  }
  const scanner = parts.findIndex((p) => p.entity?.is === 'scanner');
  const carried = parts.findIndex((p) => ['move', 'take', 'bring', 'put'].some((tag) => hasTag(p, tag)));
  if (scanner < 0) return false;
  return (carried >= 0 && (carried < scanner || hasTag(parts[carried], 'move'))) || run.sort === 'room';
}

/** "Calibrated the gun", "the gun has been calibrated": nothing much between the two. */
function nearCalibrated(run: Run, parts: readonly Part[]): boolean {
  const at = parts.findIndex((p) => hasTag(p, 'calibrate'));
  return at >= 0 && (at < run.from ? run.from - at <= 2 : at - run.to <= 3);
}

const OF_SCANNER = new Set(['calibrated', 'scan-started', 'scan-finished', 'fitted']);
const OF_PLACE = new Set(['moved', 'departed']);

/** The one fact with the slot that the words stood for taken out again. */
function openFor(run: Run, entity: Entity, read: NoteRead, words: string, names: Names): NoteRead | null {
  const { facts, asks, acts, plans, unclear } = read.reading;
  const [fact, more] = facts;
  if (
    fact === undefined ||
    more !== undefined ||
    asks.length + acts.length + plans.length + unclear.length > 0
  )
    return null;
  const [why] = read.why;
  const { scanner: _scanner, site: _site, room: _room, ...placeless } = fact as Record<string, unknown>;
  const entry: Record<string, unknown> = { ...fact };
  if (run.sort === 'scanner') {
    if (!OF_SCANNER.has(fact.kind) || entity.is !== 'scanner' || entry.scanner !== entity.ids[0]) return null;
    delete entry.scanner;
  } else if (!OF_PLACE.has(fact.kind) || entry.site === undefined) return null;
  const about = run.sort;
  const gap: Gap = {
    unclear: { kind: 'unclear', about, ...(about === 'scanner' ? { choices: [...names.scannerIds] } : {}) },
    draft: { list: 'facts', entry: run.sort === 'scanner' ? entry : placeless },
    slot: about,
    form: 'id',
    words,
  };
  return {
    reading: { facts: [], asks: [], acts: [], plans: [], unclear: [gap.unclear] },
    gaps: [gap],
    why: [{ list: 'unclear', index: 0, rule: why?.rule ?? fact.kind, slots: { note: { said: words } } }],
  };
}
