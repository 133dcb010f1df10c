import type { Practice, RuleOverrides, ScannerNote, Site } from '../practice.ts';
import type { WeeklyHours } from './hours-leaf.ts';
import type { PracticeFile } from './schema.ts';

/**
 * A site whose file gives no hours is taken to keep the common working week, and says that it was assumed: with no
 * hours at all it would be closed for ever and nothing would be asked there.
 */
const ASSUMED = [{ open: '09:00', shut: '17:00' }];
const ASSUMED_WEEK: WeeklyHours = {
  mon: ASSUMED,
  tue: ASSUMED,
  wed: ASSUMED,
  thu: ASSUMED,
  fri: ASSUMED,
  sat: [],
  sun: [],
};

/** The practice out of a file in which no mistake was found. Things without a home stand at the one site there is. */
export function buildPractice(file: PracticeFile, rules: RuleOverrides): Practice {
  const zone = file.timezone ?? file.sites.find((site) => site.timezone !== undefined)?.timezone ?? 'UTC';
  const only = file.sites[0]?.id ?? '';
  return {
    name: file.practice,
    timezone: zone,
    dates: file.dates,
    sites: file.sites.map((site): Site => {
      const { id, name = id, also, timezone = zone, rooms, closed } = site;
      const named = rooms.map((room) => ({ id: room.id, name: room.name ?? room.id, also: room.also }));
      const common = { id, name, also, timezone, rooms: named, closed };
      return site.hours === undefined
        ? { ...common, hours: ASSUMED_WEEK, hoursAssumed: true }
        : { ...common, hours: site.hours };
    }),
    scanners: file.scanners.map(({ id, name = id, also, home = only, notes }) => {
      return { id, name, also, home, notes: notes ?? NO_NOTES };
    }),
    autoclaves: file.autoclaves.map(({ id, name = id, also, site = only, cycles }) => {
      return { id, name, also, site, cycles };
    }),
    tips: file.tips.flatMap(({ ids, home = only, cycles, cyclesSoFar }) => {
      return ids.map((id) => ({ id, home, cycles, cyclesSoFar }));
    }),
    people: file.people,
    chat: file.chat,
    ...(file.servers.length === 0 ? {} : { servers: file.servers }),
    rules,
  };
}

const NO_NOTES: Readonly<Record<ScannerNote, readonly string[]>> = {
  'set-up': [],
  pack: [],
  clean: [],
  calibrate: [],
};
