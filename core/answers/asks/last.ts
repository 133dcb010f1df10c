import type { AskOf } from '../../reading/ask.ts';
import type { Mark, ScannerState } from '../../record/state.ts';
import { zoneOf } from '../../record/where.ts';
import { placeWords } from '../../rules/tips/place-words.ts';
import { capital } from '../../rules/tips/tip-words.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { clockWords } from '../clock-words.ts';
import { itemWords } from '../item-words.ts';
import { type Line, lines } from '../message.ts';
import { nameOf } from '../people-words.ts';
import { sitesOfAsk } from '../site-of-ask.ts';
import { whereLine } from './where.ts';

const NAMES = {
  calibration: 'calibrated',
  scan: 'scanned',
  wipe: 'wiped',
  move: 'moved',
  temperature: 'read',
} as const;

/** "When was A last calibrated?": when and by whom; with no item named, for every scanner. */
export function answerLast(ask: AskOf<'last'>, view: AskView): Answer {
  if (ask.of === 'temperature') return temperatures(ask, view);
  if (ask.item !== undefined && !ask.item.startsWith('scanner:')) {
    return { about: 'answer', message: lines(whereLine(ask.item, view)), items: [ask.item] };
  }
  const ids = ask.item === undefined ? [...view.state.scanners.keys()] : [ask.item.slice('scanner:'.length)];
  const points = ids.flatMap((id) => {
    const scanner = view.state.scanners.get(id);
    return scanner === undefined ? [] : [lineOf(ask.of, scanner, view)];
  });
  const message = points.length === 1 ? points.map((line) => ({ line })) : [{ points }];
  return { about: 'answer', message, items: ids.map((id) => `scanner:${id}` as const) };
}

function lineOf(of: keyof typeof NAMES, scanner: ScannerState, view: AskView): Line {
  const name = capital(itemWords(view.practice, `scanner:${scanner.id}`));
  const mark = markOf(of, scanner);
  if (mark === null) return [{ strong: name }, `: not ${NAMES[of]} on this record.`];
  const by = mark.by === null ? '' : ` by ${nameOf(view.practice, mark.by)}`;
  const place = of === 'move' ? ` to ${placeWords(view.practice, scanner.site, scanner.room)}` : '';
  const when = clockWords(mark.at, view.now, zoneOf(view.practice, scanner.site));
  return [{ strong: name }, `: ${NAMES[of]}${place} ${when}${by}.`];
}

function markOf(of: keyof typeof NAMES, scanner: ScannerState): Mark | null {
  switch (of) {
    case 'calibration':
      return scanner.lastPass?.mark ?? null;
    case 'scan':
      return scanner.lastScan?.finished ?? scanner.lastScan?.started ?? null;
    case 'wipe':
      return scanner.lastWipe;
    default:
      return scanner.placed;
  }
}

function temperatures(ask: AskOf<'last'>, view: AskView): Answer {
  const points = sitesOfAsk(view.practice, ask.site, view.room).map((id): Line => {
    const reading = view.state.sites.get(id)?.readings.at(-1);
    if (reading === undefined)
      return [{ strong: placeWords(view.practice, id, null) }, ': no temperature noted.'];
    const when = clockWords(reading.mark.at, view.now, zoneOf(view.practice, id));
    return [
      { strong: `${reading.celsius.toFixed(1)} °C` },
      ` ${placeWords(view.practice, id, reading.room)}, ${when}.`,
    ];
  });
  return { about: 'answer', message: [{ points }], items: [] };
}
