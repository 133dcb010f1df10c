import type { AskOf } from '../../reading/ask.ts';
import type { Item } from '../../reading/slots.ts';
import { loadName } from '../../record/load-key.ts';
import { zoneOf } from '../../record/where.ts';
import { type Concerned, itemsConcerned, lookBack, lookBackTip } from '../../rules/loads/look-back.ts';
import { inWords, scannerWords } from '../../rules/tips/tip-words.ts';
import { toIso } from '../../time/instant.ts';
import { toLocal } from '../../time/zone.ts';
import { clockWords } from '../../words/clock-words.ts';
import { idOf, itemWords } from '../../words/item-words.ts';
import { loadWords } from '../../words/load-words.ts';
import { type Line, lines, type Message } from '../../words/message.ts';
import { nameOf } from '../../words/people-words.ts';
import { placeWords } from '../../words/place-words.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { csvFile } from '../csv.ts';
import { groupLine, tipGroups } from '../tip-groups.ts';
import { loadsAsked } from './load.ts';

/** What is read on a phone; all of it is in the file. */
const SHOWN = 8;

/** What is traced: whose scans, and of which tips it is told where they are now. */
interface Traced {
  readonly what: string;
  readonly name: string;
  readonly scans: readonly Concerned[];
  readonly tips: readonly string[];
  readonly items: readonly Item[];
}

/** "Load 118 failed: where did those tips go?": every scan concerned, newest first, and where the tips are. No patients. */
export function answerTrace(ask: AskOf<'trace'>, view: AskView): Answer {
  const said = ask.load ?? (ask.item?.startsWith('load:') === true ? idOf(ask.item) : undefined);
  const traced = said === undefined ? traceItem(ask.item, view) : traceLoad(said, view);
  if (traced === null) {
    const name =
      said === undefined
        ? itemWords(view.practice, ask.item ?? 'autoclave')
        : `load ${loadName(said).number}`;
    return {
      about: 'look-back',
      message: lines([{ strong: 'Nothing to trace' }, `: ${name} is not on this record.`]),
      items: [],
    };
  }
  const { what, scans, items } = traced;
  const message: Message = [
    { line: headLine(scans, what) },
    ...scanBlocks(scans, view),
    ...tipBlocks(traced.tips, view),
  ];
  const all = [...new Set([...items, ...itemsConcerned(scans)])];
  if (scans.length <= SHOWN) return { about: 'look-back', message, items: all };
  return { about: 'look-back', message, items: all, file: traceFile(traced, view) };
}

function traceLoad(said: string, view: AskView): Traced | null {
  const loads = loadsAsked(said, view);
  if (loads.length === 0) return null;
  const tips = [...new Set(loads.flatMap((load) => load.tips))];
  const names = inWords(loads.map((load) => loadWords(view.practice, load)));
  const number = loadName(said).number;
  return {
    what: `with tips of ${names} since ${loads.length === 1 ? 'it' : 'they'} ended`,
    name: `load-${number}`,
    scans: lookBack(
      view.state,
      loads.map(({ key }) => key),
    ),
    tips,
    items: [`load:${said}`, ...tips.map((id) => `tip:${id}` as const)],
  };
}

function traceItem(item: Item | undefined, view: AskView): Traced | null {
  const id = item === undefined ? '' : idOf(item);
  if (item === undefined || !item.startsWith('tip:') || !view.state.tips.has(id)) return null;
  const good = hasGoodLoad(id, view) ? 'its last good load' : 'the record began';
  return {
    what: `with tip ${id} since ${good}`,
    name: `tip-${id}`,
    scans: lookBackTip(view.state, id),
    tips: [id],
    items: [item],
  };
}

function hasGoodLoad(tip: string, { state }: AskView): boolean {
  for (const key of state.history.tipLoads.get(tip)?.newestFirst() ?? []) {
    const load = state.loads.get(key);
    if (load?.status === 'passed' && !load.wet && load.recalled === null) return true;
  }
  return false;
}

function headLine(scans: readonly Concerned[], what: string): Line {
  const count = scans.filter((each) => each.what === 'scan').length;
  const fitted = scans.length - count;
  if (scans.length === 0) return [{ strong: 'No scan' }, ` on record ${what}.`];
  const told = [
    ...(count === 0 ? [] : [count === 1 ? '1 scan' : `${count} scans`]),
    ...(fitted === 0
      ? []
      : [fitted === 1 ? '1 fitting with no scan noted' : `${fitted} fittings with no scan noted`]),
  ];
  return [{ strong: told.join(' and ') }, ` ${what}${scans.length === 1 ? '' : ', newest first'}:`];
}

function scanBlocks(scans: readonly Concerned[], view: AskView): Message {
  if (scans.length === 0) return [];
  const more = scans.length - SHOWN;
  return [
    { points: scans.slice(0, SHOWN).map((scan) => scanLine(scan, view)) },
    ...(more > 0 ? lines(`And ${more} more, in the file.`) : []),
  ];
}

function scanLine(scan: Concerned, view: AskView): Line {
  const zone = zoneOf(view.practice, scan.site);
  const { at, earliest, by } = scan.mark;
  const from = earliest < at ? `${clockWords(earliest, view.now, zone)} to ` : '';
  const on = scan.scanner === null ? '' : ` on ${scannerWords(view.practice, scan.scanner)}`;
  const who = by === null ? '' : ` (${nameOf(view.practice, by)})`;
  const fitted = scan.what === 'fitting' ? ', fitted only' : '';
  return [
    { strong: from + clockWords(at, view.now, zone) },
    `: tip ${scan.tip}${on}, ${placeWords(view.practice, scan.site, scan.room)}${fitted}${who}`,
  ];
}

/** Where the tips are now: they are to be found and taken out of use. */
function tipBlocks(ids: readonly string[], view: AskView): Message {
  const tips = ids.flatMap((id) => view.state.tips.get(id) ?? []);
  if (tips.length === 0) return [];
  const points = tipGroups(view, tips).map((group) => groupLine(view, group));
  return [{ line: [tips.length === 1 ? 'The tip now:' : 'The tips now:'] }, { points }];
}

const COLUMNS = ['when (local)', 'when (UTC)', 'what', 'tip', 'scanner', 'where', 'by'] as const;

function traceFile({ name, scans }: Traced, view: AskView): NonNullable<Answer['file']> {
  const rows = scans.map((scan) => {
    const { date, time } = toLocal(scan.mark.at, zoneOf(view.practice, scan.site));
    return [
      `${date} ${time}`,
      toIso(scan.mark.at),
      scan.what,
      scan.tip,
      scan.scanner === null ? '' : scannerWords(view.practice, scan.scanner),
      placeWords(view.practice, scan.site, scan.room),
      nameOf(view.practice, scan.mark.by),
    ];
  });
  return csvFile(`trace-${name}`, COLUMNS, rows);
}
