import { Readers } from '../../core/desk/readers.ts';
import { parsePractice } from '../../core/practice/parse.ts';
import type { Practice } from '../../core/practice/practice.ts';
import type { Instant } from '../../core/time/instant.ts';
import { makeTimedReader } from './timed-reader.ts';

/** Where and when generated days begin. Each has two sites (`quay`, `north`), two scanners, five tips, and Rosa as its lead. */
export interface Scene {
  readonly name: string;
  readonly file: string;
  readonly start: Instant;
  readonly practice: Practice;
  /** The words of a practice are compiled once. */
  readonly readers: Readers;
  /** What each site's clock and week are, for checks that take nothing from the core. */
  readonly sites: { readonly quay: SiteHours; readonly north: SiteHours };
}

export interface SiteHours {
  readonly zone: string;
  readonly open: string;
  readonly shut: string;
  /** Weekdays on which it opens, as `Intl` names them. */
  readonly days: readonly string[];
  readonly closed: readonly string[];
}

const WORKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri'];
const EVERY_DAY = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];
const LONDON: SiteHours = {
  zone: 'Europe/London',
  open: '08:30',
  shut: '17:30',
  days: WORKDAYS,
  closed: [],
};

interface SceneParts {
  readonly start: string;
  readonly quay?: Partial<SiteHours>;
  readonly north?: Partial<SiteHours>;
  /** Further lines of the file. */
  readonly more?: string;
  readonly rules?: string;
}

function scene(name: string, { start, quay, north, more = '', rules = '' }: SceneParts): Scene {
  const sites = { quay: { ...LONDON, ...quay }, north: { ...LONDON, ...north } };
  const file = `
practice: Generated days
timezone: ${sites.quay.zone}
sites:
  - {id: quay, name: Quay Street, also: [quay], rooms: [{id: s1, name: Surgery 1}, {id: s2, name: Surgery 2}], ${hoursOf(sites.quay)}}
  - {id: north, name: North Clinic, also: [north], rooms: [{id: n1, name: North 1}], ${hoursOf(sites.north)}}
scanners:
  - {id: A, name: blue scanner, also: [blue], home: quay}
  - {id: B, name: green scanner, also: [green], home: quay}
tips: [{ids: 1-5, home: quay, cycles: 100}]
people:
  - {name: Rosa, id: "@rosa:example.org", part: lead}
  - {name: Tom, id: "@tom:example.org"}
  - {name: Ann, id: "@ann:example.org"}
chat:
  - {room: "!quay:example.org", sites: [quay]}
  - {room: "!north:example.org", sites: [north]}
${more}
rules: {loadTable: uk${rules}}
`;
  const parsed = parsePractice(file);
  if ('mistakes' in parsed)
    throw new Error(`${name}: ${parsed.mistakes.map((each) => JSON.stringify(each)).join('; ')}`);
  return {
    name,
    file,
    start: Date.parse(start),
    practice: parsed.practice,
    readers: new Readers(makeTimedReader),
    sites,
  };
}

function hoursOf({ zone, open, shut, days, closed }: SiteHours): string {
  const hours = days.map((day) => `${day.toLowerCase()}: "${open}-${shut}"`).join(', ');
  return `timezone: ${zone}, hours: {${hours}}, closed: [${closed.join(', ')}]`;
}

/** A Monday in winter: local time is UTC. */
export const PLAIN = scene('a Monday', { start: '2026-11-23T07:30:00Z' });

/** The first is the plainest: what goes wrong is shrunk towards it. */
export const SCENES: readonly Scene[] = [
  PLAIN,
  scene('half-hour zone', {
    start: '2026-11-23T02:40:00Z',
    north: { zone: 'Asia/Kolkata', open: '09:00', shut: '17:00' },
    more: 'autoclaves: [{id: main, name: main autoclave, also: [main], site: quay}]',
  }),
  scene('clocks go back inside the day', {
    start: '2026-10-24T23:20:00Z',
    quay: { open: '00:10', shut: '16:30', days: EVERY_DAY },
    north: { zone: 'America/St_Johns', days: EVERY_DAY },
  }),
  scene('clocks go forward inside the day', {
    start: '2027-03-28T00:05:00Z',
    quay: { open: '00:10', shut: '16:30', days: EVERY_DAY },
    north: { zone: 'Australia/Lord_Howe', days: EVERY_DAY },
  }),
  scene('closed days over the new year, the practice’s own times', {
    start: '2026-12-31T07:30:00Z',
    quay: { closed: ['2027-01-01', '2027-01-04 to 2027-01-08'] },
    rules: `, wrapped: noted, tipsPerScan: 2, wipeAfterMinutes: 3, sporeRecall: first`,
  }),
];

/** What a zone's wall shows, by the runtime's own zones and nothing of the core. */
export function clockAt(zone: string, at: Instant): { date: string; time: string; weekday: string } {
  const parts = new Map(
    formatOf(zone)
      .formatToParts(at)
      .map(({ type, value }) => [type, value]),
  );
  return {
    date: `${parts.get('year')}-${parts.get('month')}-${parts.get('day')}`,
    time: `${parts.get('hour')}:${parts.get('minute')}`,
    weekday: parts.get('weekday') ?? '',
  };
}

const formats = new Map<string, Intl.DateTimeFormat>();

function formatOf(timeZone: string): Intl.DateTimeFormat {
  let format = formats.get(timeZone);
  if (format === undefined) {
    format = new Intl.DateTimeFormat('en-GB', {
      ...{ timeZone, hourCycle: 'h23', weekday: 'short', year: 'numeric' },
      ...{ month: '2-digit', day: '2-digit', hour: '2-digit', minute: '2-digit' },
    });
    formats.set(timeZone, format);
  }
  return format;
}
