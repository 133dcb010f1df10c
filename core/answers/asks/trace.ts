import type { AskOf } from '../../reading/ask.ts';
import type { Item } from '../../reading/slots.ts';
import { zoneOf } from '../../record/where.ts';
import { type Concerned, itemsConcerned, lookBack, lookBackTip } from '../../rules/loads/look-back.ts';
import { placeWords } from '../../rules/tips/place-words.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { clockWords } from '../clock-words.ts';
import { itemWords } from '../item-words.ts';
import { type Line, lines } from '../message.ts';
import { nameOf } from '../people-words.ts';
import { findLoad } from './load.ts';

const SHOWN = 12;

/** "Load 118 failed: where did those tips go?": every scan concerned, newest first, never a patient's name. */
export function answerTrace(ask: AskOf<'trace'>, view: AskView): Answer {
  const { what, scans, items } = traced(ask, view);
  if (scans.length === 0) {
    return { about: 'look-back', message: lines([{ strong: 'No scan' }, ` on record ${what}.`]), items };
  }
  const more =
    scans.length > SHOWN ? lines(`And ${scans.length - SHOWN} more; ask for the record of those days.`) : [];
  const message = [
    {
      line: [
        { strong: `${scans.length} ${scans.length === 1 ? 'scan' : 'scans'}` },
        ` ${what}, newest first:`,
      ],
    },
    { points: scans.slice(0, SHOWN).map((scan) => scanLine(scan, view)) },
    ...more,
  ];
  return { about: 'look-back', message, items: [...new Set([...items, ...itemsConcerned(scans)])] };
}

function traced(
  ask: AskOf<'trace'>,
  view: AskView,
): { what: string; scans: readonly Concerned[]; items: readonly Item[] } {
  const load =
    ask.load ?? (ask.item?.startsWith('load:') === true ? ask.item.slice('load:'.length) : undefined);
  if (load !== undefined) {
    const found = findLoad(view, load);
    const scans = found === null ? [] : lookBack(view.state, [found.key]);
    return { what: `with tips of load ${load} since it ended`, scans, items: [`load:${load}`] };
  }
  const item = ask.item ?? 'tip:';
  const id = item.slice(item.indexOf(':') + 1);
  const scans = item.startsWith('tip:') ? lookBackTip(view.state, id) : [];
  return {
    what: `with ${itemWords(view.practice, item as Item)} since its last good load`,
    scans,
    items: [item as Item],
  };
}

function scanLine(scan: Concerned, view: AskView): Line {
  const when = clockWords(scan.mark.at, view.now, zoneOf(view.practice, scan.site));
  const stretch =
    scan.mark.earliest < scan.mark.at
      ? ` (some time from ${clockWords(scan.mark.earliest, view.now, zoneOf(view.practice, scan.site))})`
      : '';
  const scanner = scan.scanner === null ? '' : ` on ${itemWords(view.practice, `scanner:${scan.scanner}`)}`;
  const fitted = scan.what === 'fitting' ? ' (fitted, no scan noted)' : '';
  const by = scan.mark.by === null ? '' : `, ${nameOf(view.practice, scan.mark.by)}`;
  return [
    { strong: when },
    `${stretch} tip ${scan.tip}${scanner}, ${placeWords(view.practice, scan.site, scan.room)}${by}${fitted}`,
  ];
}
