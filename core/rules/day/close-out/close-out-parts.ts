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
  /** The close-out with this one thing alone in it. */
  readonly alone: CloseOut;
}

/** The close-out taken apart, so that each thing in it can be ticked off by itself. */
export function closeOutParts({
  site,
  tips,
  notWiped,
  notCovered,
  loads,
}: CloseOut): readonly CloseOutPart[] {
  const nothing: CloseOut = { site, tips: [], notWiped: [], notCovered: [], loads: [] };
  return [
    ...notWiped.map((scanner) => {
      const alone = { ...nothing, notWiped: [scanner] };
      const { id } = scanner;
      return part('wiped', `scanner:${id}`, alone, (when, by) => {
        return { kind: 'wiped', when, by, scanner: id, part: 'all' };
      });
    }),
    ...tips.map((tip) => {
      const alone = { ...nothing, tips: [tip] };
      return part('sent', `tip:${tip.id}`, alone, (when, by) => ({ kind: 'sent', when, by, tips: [tip.id] }));
    }),
    ...notCovered.map((scanner) => {
      const alone = { ...nothing, notCovered: [scanner] };
      const { id } = scanner;
      return part('covered', `scanner:${id}`, alone, (when, by) => ({
        kind: 'covered',
        when,
        by,
        scanner: id,
      }));
    }),
    ...loads.map((load): CloseOutPart => {
      const what = `load:${load.number}` as const;
      return { what, items: [what], alone: { ...nothing, loads: [load] } };
    }),
  ];
}

function part(
  kind: string,
  item: Item,
  alone: CloseOut,
  fact: (when: string, by: string) => Fact,
): CloseOutPart {
  return { what: `${kind} ${item}`, items: [item], alone, tick: (at, by) => [fact(toIso(at), by)] };
}
