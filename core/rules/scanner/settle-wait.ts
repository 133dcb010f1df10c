import type { ScannerState } from '../../record/state.ts';
import { zoneOf } from '../../record/where.ts';
import { placeWords } from '../../words/place-words.ts';
import { today } from '../clock.ts';
import type { Matter, Rule, View } from '../matter.ts';
import { weeklyDue } from '../readiness/weekly-due.ts';
import { chatRoomFor } from '../room-of.ts';
import { type DueCause, dueCauses } from './due-causes.ts';
import { type RequestTime, requestTime } from './request-time.ts';
import { onlyOnce } from './stages.ts';
import { celsiusWords, timeAt } from './time-words.ts';

const RULE = 'settle-wait';

/** On the day of the weekly calibration, while the room still changes: one post at 10:30 says why nothing is asked yet. */
export const settleWaitRule: Rule = (view) => {
  const bySite = new Map<string, ScannerState[]>();
  for (const scanner of view.state.scanners.values()) {
    if (scanner.site === null || scanner.departed !== null || !isWeeklyToday(view, scanner)) continue;
    bySite.set(scanner.site, [...(bySite.get(scanner.site) ?? []), scanner]);
  }
  return [...bySite].flatMap(([site, scanners]) => waitOf(view, site, scanners));
};

function isWeeklyToday(view: View, scanner: ScannerState): boolean {
  return weeklyDue(view, scanner)?.day === today(view, zoneOf(view.practice, scanner.site));
}

function waitOf(view: View, site: string, scanners: readonly ScannerState[]): readonly Matter[] {
  const day = today(view, zoneOf(view.practice, site));
  const key = `${RULE}|site:${site}|${day}`;
  const room = chatRoomFor(view, site);
  if (room === null) return [];
  const waiting = scanners.filter((scanner) => isUnasked(view, scanner, site));
  const waits = waiting.flatMap((scanner) => {
    const time = requestTime(view, scanner, site, day);
    return time.waitsFor === null ? [] : [{ id: scanner.id, time }];
  });
  const time = waits[0]?.time;
  const posted = view.said.saidAt(key, 'first') !== null;
  // Once said it stands until the passes are noted, or the day is over.
  if (time === undefined && !posted) return [];
  const items = (time === undefined ? scanners : waits).map(({ id }) => `scanner:${id}`);
  const since = time?.base ?? view.said.saidAt(key, 'first') ?? view.now;
  return [
    {
      key,
      rule: RULE,
      about: 'settle',
      site,
      room,
      items,
      stages: onlyOnce(view, site, key, since),
      since,
      group: `settle@${site}`,
      get line() {
        return waitWords(view, site, time);
      },
      leads: [],
    },
  ];
}

/** Nothing has been said yet of its calibration of today, and nothing else than the room's air is waited for. */
function isUnasked(view: View, scanner: ScannerState, site: string): boolean {
  const due: readonly DueCause[] = dueCauses(view, scanner, site);
  return due.every(({ key }) => view.said.saidAt(key, 'first') === null);
}

function waitWords(view: View, site: string, time: RequestTime | undefined): Matter['line'] {
  const waits = time?.waitsFor ?? null;
  if (waits === null)
    return [
      { line: [{ strong: 'The room was still settling' }, ` at ${placeWords(view.practice, site, null)}.`] },
    ];
  const { earlier, later } = waits.trend;
  const told = [earlier, later].map(({ celsius, mark }) => {
    return `${celsiusWords(celsius)} at ${timeAt(view, site, mark.at)}`;
  });
  return [
    {
      line: [
        { strong: 'The room is still settling' },
        ` at ${placeWords(view.practice, site, null)}: ${told.join(', ')}.`,
      ],
    },
    {
      line: [
        `Calibration is asked for when a reading is calmer, at ${timeAt(view, site, waits.until)} at the latest. A pass before then counts.`,
      ],
    },
  ];
}
