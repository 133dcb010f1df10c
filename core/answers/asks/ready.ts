import type { AskOf } from '../../reading/ask.ts';
import type { Item } from '../../reading/slots.ts';
import type { AutoclaveState, TipState } from '../../record/state.ts';
import { zoneOf } from '../../record/where.ts';
import { readinessOf } from '../../rules/readiness.ts';
import { readyInstead } from '../../rules/scanner/ready-scanners.ts';
import { reasonWords } from '../../rules/scanner/reason-words.ts';
import { canUse } from '../../rules/tips/can-use.ts';
import { scannerWords, sterileHere } from '../../rules/tips/tip-words.ts';
import { unsafeWords } from '../../rules/tips/unsafe-words.ts';
import { clockWords } from '../../words/clock-words.ts';
import { idOf } from '../../words/item-words.ts';
import { autoclaveWords, loadWords } from '../../words/load-words.ts';
import { type Line, lines, type Message } from '../../words/message.ts';
import { nameOf } from '../../words/people-words.ts';
import { placeWords } from '../../words/place-words.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { autoclavesAt } from '../autoclaves-at.ts';
import { scannersAt } from '../scanners-at.ts';
import { answerLoad } from './load.ts';
import { whereLine } from './where.ts';

/** "Is green good to go?": yes or no first, then why, then what may be taken instead. */
export function answerReady({ item, site }: AskOf<'ready'>, view: AskView): Answer {
  if (item === undefined) return allScanners(site, view);
  const id = idOf(item);
  if (item.startsWith('load:')) return answerLoad({ kind: 'load', load: id }, view);
  return { about: 'answer', message: messageOf(item, id, view), items: [item] };
}

function messageOf(item: Item, id: string, view: AskView): Message {
  if (item.startsWith('scanner:')) return scannerMessage(id, view);
  if (item.startsWith('tip:')) return tipMessage(id, view);
  if (item.startsWith('calibration-tip:')) return [{ line: whereLine(item, view) }];
  if (id !== '' || view.practice.autoclaves.length === 0)
    return [{ line: autoclaveLine(view.state.autoclaves.get(id), id, view) }];
  // Which of them was not said
  const each = autoclavesAt(undefined, undefined, view);
  return [{ points: each.map((autoclave) => autoclaveLine(autoclave, autoclave.id, view)) }];
}

/** Those that stand where it is asked, else every one; what is ready first. */
function allScanners(site: string | undefined, view: AskView): Answer {
  const ids = scannersAt(site, view).map(({ id }) => id);
  if (ids.length === 0) {
    const at = placeWords(view.practice, site ?? null, null);
    return { about: 'answer', message: lines([{ strong: 'No scanner' }, ` is at ${at}.`]), items: [] };
  }
  const ready = ids.filter((id) => readinessOf(view, id).ready);
  const points = [...ready, ...ids.filter((id) => !ready.includes(id))].map((id) => scannerLine(id, view));
  const message: Message = points.length === 1 ? points.map((line) => ({ line })) : [{ points }];
  return { about: 'answer', message, items: ids.map((id) => `scanner:${id}` as const) };
}

function scannerMessage(id: string, view: AskView): Message {
  const line: Message = [{ line: scannerLine(id, view) }];
  const scanner = view.state.scanners.get(id);
  if (scanner === undefined || view.state.scanners.size < 2 || readinessOf(view, id).ready) return line;
  return [...line, { line: readyInstead(view, scanner.departed === null ? scanner.site : null, id) }];
}

function scannerLine(id: string, view: AskView): Line {
  const { ready, because } = readinessOf(view, id);
  const scanner = view.state.scanners.get(id);
  const site = scanner?.site ?? null;
  const why = because.map((reason) => reasonWords(view, reason, site)).join('; ');
  const name = scannerWords(view.practice, id);
  if (!ready) return [{ strong: 'Not ready: ' }, `${name}: ${why}.`];
  const at = placeWords(view.practice, site, scanner?.room ?? null);
  return [{ strong: 'Ready: ' }, `${name}, ${at}${why === '' ? '' : ` (${why})`}.`];
}

function tipMessage(id: string, view: AskView): Message {
  const tip = view.state.tips.get(id);
  const use = canUse(view, id);
  if (use === null || tip === undefined)
    return [{ line: [{ strong: `Tip ${id}` }, ' is not in the practice file.'] }];
  if (use.usable && tip.scanner !== null) return [{ line: usableLine(tip, view) }];
  if (use.usable)
    return [
      { line: usableLine(tip, view) },
      { line: ['Its pack must be whole and dry, its indicator changed.'] },
    ];
  const why = use.reasons.map((reason) => unsafeWords(view, id, reason)).join('. Also: ');
  return [{ line: [{ strong: 'No: ' }, `tip ${id}: ${why}.`] }, ...sterileHere(view, tip.site)];
}

/** On what its being sterile rests, and where it is. */
function usableLine(tip: TipState, view: AskView): Line {
  const { practice, state, now } = view;
  const load = tip.sterile?.load == null ? undefined : state.loads.get(tip.sterile.load);
  const mark = tip.sterile?.mark ?? null;
  const when = mark === null ? '' : `, ${clockWords(mark.at, now, zoneOf(practice, tip.site))}`;
  const by = mark === null ? 'a note' : nameOf(practice, mark.by);
  const rests =
    load === undefined ? `by ${by}’s word, no load noted${when}` : `${loadWords(practice, load)}${when}`;
  const at =
    tip.scanner === null
      ? placeWords(practice, tip.site, tip.room)
      : `on ${scannerWords(practice, tip.scanner)}`;
  const last = tip.limit !== null && tip.cycles >= tip.limit ? ' Its last use: retire it after.' : '';
  return [{ strong: 'Yes: ' }, `tip ${tip.id} is sterile (${rests}), ${at}.${last}`];
}

function autoclaveLine(autoclave: AutoclaveState | undefined, id: string, view: AskView): Line {
  const name = autoclaveWords(view.practice, id === '' ? null : id);
  const [hold] = autoclave?.holds ?? [];
  if (hold === undefined) return [{ strong: 'Yes: ' }, `${name} is not held on this record.`];
  const since = clockWords(hold.mark.at, view.now, zoneOf(view.practice, autoclave?.site ?? null));
  const by = hold.mark.by === null ? '' : ` (${nameOf(view.practice, hold.mark.by)})`;
  const why = hold.reason === null ? HOLDS[hold.sort] : hold.reason;
  return [{ strong: 'No: ' }, `${name} is out of service since ${since}${by}: ${why}.`];
}

const HOLDS = {
  said: 'held',
  damaged: 'damaged',
  dropped: 'dropped',
  'reached-patient': 'held after an incident',
  'test-failed': 'a test failed',
  'spore-positive': 'spore test positive',
} as const;
