import type { AskOf } from '../../reading/ask.ts';
import type { Item } from '../../reading/slots.ts';
import type { ScannerState } from '../../record/state.ts';
import { readinessOf } from '../../rules/readiness.ts';
import { reasonWords } from '../../rules/scanner/reason-words.ts';
import { celsiusWords } from '../../rules/scanner/time-words.ts';
import { capital, scannerWords } from '../../rules/tips/tip-words.ts';
import { idOf } from '../../words/item-words.ts';
import type { Line, Message } from '../../words/message.ts';
import { placeWords } from '../../words/place-words.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { scannersAt } from '../scanners-at.ts';
import { sitesOfAsk } from '../site-of-ask.ts';
import { whenBy } from '../when-by.ts';
import { whereLine } from './where.ts';

type Of = Exclude<AskOf<'last'>['of'], 'temperature'>;

/** "When was A last calibrated?": when and by whom; with no item named, for every scanner of the sites asked about. */
export function answerLast(ask: AskOf<'last'>, view: AskView): Answer {
  const { of, item } = ask;
  if (of === 'temperature') return temperatures(ask, view);
  if (item !== undefined && !item.startsWith('scanner:')) return ofOtherItem(of, item, view);
  const ids = item === undefined ? scannersAt(ask.site, view).map(({ id }) => id) : [idOf(item)];
  const points = ids.map((id) => {
    const scanner = view.state.scanners.get(id);
    return scanner === undefined ? whereLine(`scanner:${id}`, view) : lineOf(of, scanner, view);
  });
  const message: Message = points.length === 1 ? points.map((line) => ({ line })) : [{ points }];
  return { about: 'answer', message, items: ids.map((id) => `scanner:${id}` as const) };
}

function lineOf(of: Of, scanner: ScannerState, view: AskView): Line {
  const name = { strong: capital(scannerWords(view.practice, scanner.id)) };
  switch (of) {
    case 'calibration':
      return [name, `: ${calibrationWords(scanner, view)}.`];
    case 'scan':
      return [name, `: ${scanWords(scanner, view)}.`];
    case 'wipe':
      return [name, `: ${wipeWords(scanner, view)}.`];
    case 'move':
      return scanner.placed === null && scanner.departed === null
        ? [name, `: no move noted; at ${placeWords(view.practice, scanner.site, scanner.room)}.`]
        : whereLine(`scanner:${scanner.id}`, view);
  }
}

function calibrationWords(scanner: ScannerState, view: AskView): string {
  const { lastPass, lastFailure, site } = scanner;
  const passed = lastPass === null ? 'no pass on record' : `passed ${whenBy(lastPass.mark, site, view)}`;
  const failedSince = lastFailure !== null && (lastPass === null || lastFailure.at > lastPass.mark.at);
  const failed = failedSince ? `; failed ${whenBy(lastFailure, site, view)}` : '';
  const { calibrationDue, because } = readinessOf(view, scanner.id);
  const reason = because.find(({ word }) => word === calibrationDue);
  // A failure and a pass that never was are told already.
  if (reason === undefined || reason.word === 'failed' || reason.word === 'never') return passed + failed;
  return `${passed}${failed}. Due: ${reasonWords(view, reason, site)}`;
}

function scanWords({ lastScan, scan, site }: ScannerState, view: AskView): string {
  if (lastScan === null) return 'no scan on record';
  const mark = lastScan.finished ?? lastScan.started;
  const what = scan === null ? 'last scan ended' : 'scan under way since';
  const tip = lastScan.tip === null ? '' : `, tip ${lastScan.tip}`;
  return `${what} ${whenBy(mark, lastScan.site ?? site, view)}${tip}, ${placeWords(view.practice, lastScan.site, lastScan.room)}`;
}

function wipeWords({ lastWipe, dirtySince, site }: ScannerState, view: AskView): string {
  const wiped = lastWipe === null ? 'no wipe-down on record' : `wiped down ${whenBy(lastWipe, site, view)}`;
  if (dirtySince === null) return wiped;
  const ended = dirtySince.finished ?? dirtySince.started;
  return `${wiped}. Not since the scan that ended ${whenBy(ended, site, view)}`;
}

/** Of a tip its last use is told; of anything else where it is. */
function ofOtherItem(of: Of, item: Item, view: AskView): Answer {
  const id = idOf(item);
  const use = view.state.history.uses.get(id)?.at(-1);
  if (of !== 'scan' || !item.startsWith('tip:') || use === undefined) {
    const never: Message =
      of === 'scan' && item.startsWith('tip:')
        ? [{ line: [{ strong: `Tip ${id}` }, ': no use on record.'] }]
        : [];
    return { about: 'answer', message: [...never, { line: whereLine(item, view) }], items: [item] };
  }
  const on = use.scanner === null ? '' : ` on ${scannerWords(view.practice, use.scanner)}`;
  const line: Line = [
    { strong: `Tip ${id}` },
    `: last used ${whenBy(use.mark, use.site, view)}${on}, ${placeWords(view.practice, use.site, use.room)}.`,
  ];
  return { about: 'answer', message: [{ line }], items: [item] };
}

/** The latest reading of each site, and of each of its rooms that has one of its own. */
function temperatures(ask: AskOf<'last'>, view: AskView): Answer {
  const points = sitesOfAsk(view.practice, ask.site, view.room).flatMap((id): Line[] => {
    const readings = view.state.sites.get(id)?.readings ?? [];
    const latest = new Map(readings.map((reading) => [reading.room, reading]));
    if (latest.size === 0)
      return [[{ strong: placeWords(view.practice, id, null) }, ': no temperature noted.']];
    return [...latest.values()]
      .sort((one, other) => other.mark.at - one.mark.at)
      .map(({ celsius, room, mark }) => [
        { strong: celsiusWords(celsius) },
        ` ${placeWords(view.practice, id, room)}, ${whenBy(mark, id, view)}`,
      ]);
  });
  const message: Message = points.length === 1 ? points.map((line) => ({ line })) : [{ points }];
  return { about: 'answer', message, items: [] };
}
