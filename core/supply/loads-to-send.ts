import type { Instant } from '../time/instant.ts';
import type { Extra, Sendable } from './extra-tips.ts';

/** Tips to send together, at the latest at `by`. */
export interface LoadToSend {
  readonly by: Instant;
  readonly count: number;
  /** Those that can be named now, longest waiting first. */
  readonly tips: readonly string[];
  /** How many more, from scans still to come. */
  readonly fromScans: number;
}

type ToSend = Extract<Extra, { how: 'send' }>;
interface Batch {
  readonly items: ToSend[];
  readonly latest: Instant;
}

/** As few loads as will do: each is filled with whatever can be sent by the time its most urgent tip must go. */
function batches(extras: readonly Extra[], capacity: number): Batch[] {
  let left = extras.filter((extra) => extra.how === 'send');
  const made: Batch[] = [];
  for (let first = left[0]; first !== undefined; first = left[0]) {
    const latest = first.sendBy;
    const items = left.filter((item) => item.tip.from <= latest).slice(0, Math.max(1, capacity));
    left = left.filter((item) => !items.includes(item));
    made.push({ items, latest });
  }
  return made;
}

function named(by: Instant, tips: readonly Sendable[]): LoadToSend {
  const ids = tips.flatMap((tip) => (tip.id === undefined ? [] : [tip.id]));
  return { by, count: tips.length, tips: ids, fromScans: tips.length - ids.length };
}

/** When loads run one after the other: how long each takes, how much it holds, from when one can start. */
export interface OneAtATime {
  readonly capacity: number;
  readonly milliseconds: number;
  readonly freeFrom: Instant;
}

/**
 * The extras that are to be sent, as loads in order, each with the latest moment that still serves.
 * Where loads run one after the other and they cannot all be fitted in: the booking whose tip has to be given up.
 */
export function loadsToSend(
  extras: readonly Extra[],
  autoclave?: OneAtATime,
): { readonly loads: LoadToSend[] } | { readonly giveUp: Extra } {
  const planned = batches(extras, autoclave?.capacity ?? Number.POSITIVE_INFINITY);
  const loads: LoadToSend[] = [];
  let next = Number.POSITIVE_INFINITY;
  for (const batch of planned.toReversed()) {
    const by = autoclave === undefined ? batch.latest : Math.min(batch.latest, next - autoclave.milliseconds);
    const earliest = Math.max(autoclave?.freeFrom ?? by, ...batch.items.map((item) => item.tip.from));
    const first = batch.items[0];
    if (by < earliest && first !== undefined) return { giveUp: first };
    loads.unshift(
      named(
        by,
        batch.items.map((item) => item.tip),
      ),
    );
    next = by;
  }
  return { loads };
}
