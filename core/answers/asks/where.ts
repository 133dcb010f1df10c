import { autoclaveOf } from '../../practice/look-up.ts';
import type { AskOf } from '../../reading/ask.ts';
import type { Item } from '../../reading/slots.ts';
import type { Departure, Mark, ScannerState, TipState } from '../../record/state.ts';
import { zoneOf } from '../../record/where.ts';
import { capital, scannerWords } from '../../rules/tips/tip-words.ts';
import { clockWords } from '../../words/clock-words.ts';
import { idOf, itemWords } from '../../words/item-words.ts';
import type { Line, Message } from '../../words/message.ts';
import { nameOf } from '../../words/people-words.ts';
import { placeWords } from '../../words/place-words.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { tipStateWords } from '../tip-groups.ts';
import { answerLoad } from './load.ts';
import { answerPlace } from './place.ts';

/** Where something is, since when and by whose word; with no item every scanner, or what is at the place named. */
export function answerWhere({ item, site, room }: AskOf<'where'>, view: AskView): Answer {
  if (item === undefined) return site === undefined ? everyScanner(view) : answerPlace(site, room, view);
  if (item.startsWith('load:')) return answerLoad({ kind: 'load', load: idOf(item) }, view);
  return { about: 'answer', message: [{ line: whereLine(item, view) }], items: [item] };
}

function everyScanner(view: AskView): Answer {
  const items = [...view.state.scanners.keys()].map((id) => `scanner:${id}` as const);
  const points = items.map((item) => whereLine(item, view));
  const message: Message = points.length === 1 ? points.map((line) => ({ line })) : [{ points }];
  return { about: 'answer', message, items };
}

/** One line that tells where an item is; starts with its name. */
export function whereLine(item: Item, view: AskView): Line {
  const id = idOf(item);
  return [{ strong: capital(itemWords(view.practice, item)) }, `: ${whereWords(item, id, view)}.`];
}

function whereWords(item: Item, id: string, view: AskView): string {
  const { state, practice } = view;
  if (item.startsWith('scanner:')) {
    const scanner = state.scanners.get(id);
    return scanner === undefined ? UNKNOWN : scannerPlace(scanner, view);
  }
  if (item.startsWith('calibration-tip:')) {
    const scanner = state.scanners.get(id);
    return scanner === undefined ? UNKNOWN : calibrationTipPlace(scanner, view);
  }
  if (item.startsWith('tip:')) {
    const tip = state.tips.get(id);
    return tip === undefined ? UNKNOWN : tipPlace(tip, view);
  }
  const site = autoclaveOf(practice, id)?.site ?? state.autoclaves.get(id)?.site ?? null;
  return site === null ? 'the practice file does not say where' : placeWords(practice, site, null);
}

const UNKNOWN = 'not in the practice file';

function scannerPlace(scanner: ScannerState, view: AskView): string {
  const { practice } = view;
  const { site, room, missing, departed } = scanner;
  if (missing !== null) return `missing${sinceBy(view, site, missing)}${lastKnown(view, site, room)}`;
  if (departed !== null) {
    const from = departed.from === null ? '' : `, from ${placeWords(practice, departed.from, null)}`;
    return `${onItsWay(departed, view)}${from}${sinceBy(view, departed.from, departed.mark)}`;
  }
  const tip = scanner.tip === null ? '' : `, with tip ${scanner.tip} on`;
  const home = room === null ? ', its home: no note has moved it' : noted(view, site, scanner.lastNoted);
  const since = scanner.placed === null ? home : sinceBy(view, site, scanner.placed);
  return `${placeWords(practice, site, room)}${since}${tip}`;
}

function onItsWay({ to }: Departure, { practice }: AskView): string {
  return `on its way${to === null ? '' : ` to ${placeWords(practice, to, null)}`}`;
}

function calibrationTipPlace(scanner: ScannerState, view: AskView): string {
  const { site, room, mark, missing } = scanner.calibrationTip;
  if (missing !== null) return `missing${sinceBy(view, site, missing)}${lastKnown(view, site, room)}`;
  // It travels along with its scanner unless a note says otherwise.
  const isAlong = scanner.departed !== null && (site === null || site === scanner.departed.from);
  if (isAlong || site === null) return `on its way with ${scannerWords(view.practice, scanner.id)}`;
  const apart = scanner.site === site ? '' : `; ${scannerWords(view.practice, scanner.id)} is elsewhere`;
  return `${placeWords(view.practice, site, room)}${sinceBy(view, site, mark)}${apart}`;
}

function tipPlace(tip: TipState, view: AskView): string {
  const { practice } = view;
  const { site, room } = tip;
  if (tip.missing !== null) return `missing${sinceBy(view, site, tip.missing)}${lastKnown(view, site, room)}`;
  if (tip.retired !== null) return `retired${sinceBy(view, site, tip.retired.mark)}`;
  if (tip.departed !== null) return `${tipStateWords(view, tip)}${sinceBy(view, site, tip.departed.mark)}`;
  const scanner = tip.scanner === null ? undefined : view.state.scanners.get(tip.scanner);
  if (scanner !== undefined) {
    const { departed } = scanner;
    const place =
      departed === null ? placeWords(practice, scanner.site, scanner.room) : onItsWay(departed, view);
    return `${tipStateWords(view, tip)}, ${place}${sinceBy(view, site, tip.fitted)}`;
  }
  const at = placeWords(practice, site, room);
  if (tip.state === 'unknown' && tip.spoken === null) return `${at}, its home: no note has spoken of it yet`;
  return `${tipStateWords(view, tip)}, ${at}${sinceBy(view, site, tip.since)}`;
}

function lastKnown(view: AskView, site: string | null, room: string | null): string {
  return site === null ? '' : `; last known at ${placeWords(view.practice, site, room)}`;
}

/** ", noted there 10:30 (Tom)": a scan told the room, no note a move. */
function noted(view: AskView, site: string | null, mark: Mark | null): string {
  return sinceBy(view, site, mark).replace(', since', ', noted there');
}

/** ", since 10:30 (Tom)"; nothing where no note says. */
function sinceBy(view: AskView, site: string | null, mark: Mark | null): string {
  if (mark === null) return '';
  const by = mark.by === null ? '' : ` (${nameOf(view.practice, mark.by)})`;
  return `, since ${clockWords(mark.at, view.now, zoneOf(view.practice, site))}${by}`;
}
