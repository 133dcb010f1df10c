import type { Item } from '../../reading/slots.ts';
import { whyNotLoosen } from '../authority.ts';
import type { Hold, Mark, Refused } from '../state.ts';
import { hold, show } from '../tip-change.ts';
import { doubt } from './doubts.ts';
import { releaseLoads } from './release-loads.ts';
import { found, itemParts, type Step, type Steps, scannerOf, tipOf, unknown } from './step.ts';
import { tellStock } from './stocktake.ts';

/** What may be held: a scanner, a tip or an autoclave. */
interface Holdable {
  holds: readonly Hold[];
}

export const holdSteps = {
  held: (step, said) => {
    for (const item of said.items) holdItem(step, item, said.reason ?? null);
    tellStock(step, tipIds(said.items));
  },
  released: (step, said) => {
    const rest = releaseLoads(step, said.items);
    for (const item of rest) release(step, item);
  },
} satisfies Steps;

function tipIds(items: readonly Item[]): string[] {
  return items.map(itemParts).flatMap(({ kind, id }) => (kind === 'tip' ? [id] : []));
}

/** Anyone may hold. A load of which it is said is in doubt. */
function holdItem(step: Step, item: Item, reason: string | null): void {
  const { kind, id } = itemParts(item);
  const { mark } = step;
  if (kind === 'load') {
    doubt(step, item);
    return;
  }
  const held = holdable(step, item, kind, id);
  if (held === undefined) return;
  held.holds = hold(held.holds, { sort: 'said', reason, mark, ends: 'placer' });
  showIfTip(step, kind, id);
}

/** Puts a hold of the program's own on a tip or scanner. */
export function holdFor(
  step: Step,
  thing: Holdable,
  sort: Hold['sort'],
  ends: Hold['ends'],
  reason: string,
): void {
  thing.holds = hold(thing.holds, { sort, reason, mark: step.mark, ends });
}

/** The calibration tip has no state of its own beyond where it is: holding it holds its scanner. */
function holdable(step: Step, item: Item, kind: string, id: string): Holdable | undefined {
  if (kind === 'scanner' || kind === 'calibration-tip') return scannerOf(step, id);
  if (kind === 'tip') return tipOf(step, id);
  const autoclave = step.state.autoclaves.get(id);
  if (autoclave === undefined) unknown(step, item);
  return autoclave;
}

function showIfTip(step: Step, kind: string, id: string): void {
  const tip = kind === 'tip' ? step.state.tips.get(id) : undefined;
  if (tip !== undefined) show(tip, step.mark);
}

function release(step: Step, item: Item): void {
  const { kind, id } = itemParts(item);
  const held = holdable(step, item, kind, id);
  if (held === undefined) return;
  const staying = held.holds.filter((each) => whyNot(step, each) !== null);
  const doubted = settleDoubt(step, kind, id);
  if (held.holds.length === 0 && !doubted) refuse(step, item, 'nothing-to-release');
  const stays = staying[0];
  if (stays !== undefined) refuse(step, item, whyNot(step, stays) ?? 'not-allowed');
  const scanner = kind === 'scanner' ? step.state.scanners.get(id) : undefined;
  if (scanner !== undefined && held.holds.length > 0 && staying.length === 0) scanner.available = step.mark;
  held.holds = staying;
  showIfTip(step, kind, id);
}

/** Who placed it, the lead, deputy or manager may end it; what ends by a pass or a clear test ends by nothing else. */
function whyNot(step: Step, held: Hold): Refused['why'] | null {
  if (held.ends === 'pass') return 'needs-pass';
  if (held.ends === 'clear-test') return 'needs-clear-test';
  const { practice } = step.state;
  return whyNotLoosen(practice, step.entry, held.ends === 'placer' && isPlacer(step, held.mark));
}

function isPlacer(step: Step, mark: Mark): boolean {
  return mark.from === step.entry.from && mark.from !== '';
}

function settleDoubt(step: Step, kind: string, id: string): boolean {
  const thing =
    kind === 'tip' ? step.state.tips.get(id) : kind === 'scanner' ? step.state.scanners.get(id) : undefined;
  if (thing?.doubt == null) return false;
  const { practice } = step.state;
  if (whyNotLoosen(practice, step.entry, isPlacer(step, thing.doubt)) !== null) return false;
  thing.doubt = null;
  return true;
}

function refuse(step: Step, item: Item, why: Refused['why']): void {
  found(step, { kind: 'refused', items: [item], what: 'release', item, why });
}
