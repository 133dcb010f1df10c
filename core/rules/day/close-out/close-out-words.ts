import { siteOf } from '../../../practice/look-up.ts';
import type { Item } from '../../../reading/slots.ts';
import type { ScannerState } from '../../../record/state.ts';
import { zoneOf } from '../../../record/where.ts';
import { clockWords } from '../../../words/clock-words.ts';
import { tipsAsRanges } from '../../../words/item-words.ts';
import { loadWords } from '../../../words/load-words.ts';
import type { Line, Message } from '../../../words/message.ts';
import type { View } from '../../matter.ts';
import { capital, inWords, scannerWords } from '../../tips/tip-words.ts';
import type { CloseOut } from './close-out.ts';

/** The close-out as it is posted: what to do before going home, what touches a patient first. */
export function closeOutMessage(view: View, { site, tips, notWiped, notCovered, loads }: CloseOut): Message {
  const name = siteOf(view.practice, site)?.name ?? site;
  const off = tips.filter(({ scanner }) => scanner === null).map(({ id }) => id);
  const on = tips.filter(({ scanner }) => scanner !== null);
  const points: Line[] = [];
  if (notWiped.length > 0) points.push([{ strong: 'Wipe down' }, ` ${namesOf(view, notWiped)}`]);
  if (off.length > 0) points.push([{ strong: 'Send' }, ` ${tipsAsRanges(off)}: used and not sent`]);
  for (const { id, scanner } of on) {
    const where = scanner === null ? '' : ` on ${scannerWords(view.practice, scanner)}`;
    points.push([{ strong: `Take off tip ${id}` }, `: used, still${where}`]);
  }
  if (notCovered.length > 0) points.push([{ strong: 'Cover' }, ` ${namesOf(view, notCovered)}`]);
  for (const load of loads) {
    const since =
      load.started === null
        ? ''
        : `, on since ${clockWords(load.started.at, view.now, zoneOf(view.practice, site))}`;
    points.push([{ strong: capital(loadWords(view.practice, load)) }, `: no result yet${since}`]);
  }
  return [{ line: [{ strong: name }, ' before closing:'] }, { points }];
}

/** Scanners, tips and loads that it names. */
export function closeOutItems({ tips, notWiped, notCovered, loads }: CloseOut): readonly Item[] {
  return [
    ...new Set([...notWiped, ...notCovered].map(({ id }): Item => `scanner:${id}`)),
    ...tips.map(({ id }): Item => `tip:${id}`),
    ...loads.map(({ number }): Item => `load:${number}`),
  ];
}

function namesOf({ practice }: View, scanners: readonly ScannerState[]): string {
  return inWords(scanners.map(({ id }) => scannerWords(practice, id)));
}
