import type { Fact } from '../../../reading/fact.ts';
import type { Item } from '../../../reading/slots.ts';
import { toIso } from '../../../time/instant.ts';
import type { Matter } from '../../matter.ts';
import type { CloseOut } from './close-out.ts';

/** One thing that a close-out names, with what a tick on it records; nothing for a load, whose result has to be typed. */
export interface CloseOutPart {
  /** Known by what is to be done and the item: "wiped scanner:A". */
  readonly what: string;
  readonly items: readonly [Item];
  readonly tick?: NonNullable<Matter['tick']>;
}

/** The close-out taken apart, so that each thing in it can be ticked off by itself. */
export function closeOutParts({ tips, notWiped, notCovered, loads }: CloseOut): readonly CloseOutPart[] {
  return [
    ...notWiped.map(({ id }) =>
      part('wiped', `scanner:${id}`, (when, by) => ({ kind: 'wiped', when, by, scanner: id, part: 'all' })),
    ),
    ...tips.map(({ id }) =>
      part('sent', `tip:${id}`, (when, by) => ({ kind: 'sent', when, by, tips: [id] })),
    ),
    ...notCovered.map(({ id }) =>
      part('covered', `scanner:${id}`, (when, by) => ({ kind: 'covered', when, by, scanner: id })),
    ),
    ...loads.map(({ number }): CloseOutPart => ({ what: `load:${number}`, items: [`load:${number}`] })),
  ];
}

function part(kind: string, item: Item, fact: (when: string, by: string) => Fact): CloseOutPart {
  return { what: `${kind} ${item}`, items: [item], tick: (at, by) => [fact(toIso(at), by)] };
}
