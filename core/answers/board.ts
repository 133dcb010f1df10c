import { siteOf } from '../practice/look-up.ts';
import type { ScannerState } from '../record/state.ts';
import { sitesOfRoom, zoneOf } from '../record/where.ts';
import type { View } from '../rules/matter.ts';
import { readinessOf } from '../rules/readiness.ts';
import { reasonWords } from '../rules/scanner/reason-words.ts';
import { capital, scannerWords } from '../rules/tips/tip-words.ts';
import { clockWords } from '../words/clock-words.ts';
import { idRanges } from '../words/item-words.ts';
import type { Line, Message } from '../words/message.ts';
import { placeWords } from '../words/place-words.ts';
import { answerDue } from './asks/due.ts';
import { tipGroups } from './tip-groups.ts';

/**
 * How things stand for the sites of a chat room: each scanner (where, ready or why not, calibrated when), tips by state,
 * what is due. The last line says of when; `boardWithout` leaves it out, to tell whether anything else changed.
 */
export function board(view: View, room: string): Message {
  const { practice, now } = view;
  const [first] = sitesOfRoom(practice, room);
  const asOf = clockWords(now, now, zoneOf(practice, first ?? null));
  return [...boardWithout(view, room), { line: [`As of ${asOf}. I record and remind; I certify nothing.`] }];
}

/** The board without its last line. */
export function boardWithout(view: View, room: string): Message {
  const sites = sitesOfRoom(view.practice, room);
  const due = answerDue({ kind: 'due' }, { ...view, room, from: '' }).message;
  return [...sites.flatMap((site) => siteBlocks(view, site, sites.length > 1)), ...due];
}

function siteBlocks(view: View, site: string, isNamed: boolean): Message {
  const { practice, state } = view;
  const scanners = [...state.scanners.values()].filter((each) => (each.departed?.to ?? each.site) === site);
  const tips = [...state.tips.values()].filter(
    (tip) => tip.state !== 'retired' && (tip.departed?.to ?? tip.site) === site,
  );
  const points: Line[] = [
    ...scanners.map((scanner) => scannerLine(view, scanner)),
    ...tipGroups(view, tips).map(({ words, tips: some }): Line => {
      return [{ strong: `${capital(words)}, ${some.length}` }, `: ${idRanges(some.map(({ id }) => id))}`];
    }),
  ];
  const name = siteOf(practice, site)?.name ?? site;
  if (points.length === 0) return isNamed ? [{ line: [{ strong: name }, ': nothing here.'] }] : [];
  return [...(isNamed ? [{ line: [{ strong: name }] }] : []), { points }];
}

function scannerLine(view: View, scanner: ScannerState): Line {
  const { practice, now } = view;
  const { id, site, room, departed } = scanner;
  const { ready, because } = readinessOf(view, id);
  const why = because.map((reason) => reasonWords(view, reason, site)).join('; ');
  const at = departed === null ? `, ${placeWords(practice, site, room)}` : '';
  const name = scannerWords(practice, id);
  const pass =
    scanner.lastPass === null ? null : clockWords(scanner.lastPass.mark.at, now, zoneOf(practice, site));
  const told = pass === null ? why : [`calibrated ${pass}`, why].filter((part) => part !== '').join('; ');
  return [{ strong: ready ? 'Ready: ' : 'Not ready: ' }, `${name}${at}${told === '' ? '' : ` (${told})`}`];
}
