import type { Item } from '../../reading/slots.ts';
import type { Entry, SaidKind, SaidMap } from '../entry.ts';
import type { FindingKind, FindingOf, Mark, ScannerState, State, TipState } from '../state.ts';

/** One entry being folded into a state that the fold alone holds and may change. */
export interface Step {
  readonly state: State;
  readonly entry: Entry;
  readonly mark: Mark;
}

/** What each kind of entry does to the state. */
export type Steps = Partial<AllSteps>;
export type AllSteps = { readonly [K in SaidKind]: (step: Step, said: SaidMap[K]) => void };

type FindingBody = { [K in FindingKind]: Omit<FindingOf<K>, 'key' | 'mark'> }[FindingKind];

/** Keeps what was noticed. The first item is part of its key, so that two of a kind on one entry stay apart. */
export function found(step: Step, body: FindingBody): void {
  const key = `${step.entry.id}:${body.kind}:${body.items[0] ?? ''}`;
  step.state.history.findings.push({ ...body, key, mark: step.mark });
}

/** The scanner of that id, marked as spoken of; an unknown one is noticed and nothing is done. */
export function scannerOf(step: Step, id: string): ScannerState | undefined {
  const scanner = step.state.scanners.get(id);
  if (scanner === undefined) unknown(step, `scanner:${id}`);
  else scanner.lastNoted = step.mark;
  return scanner;
}

/** The tip of that id, marked as spoken of; an unknown one is noticed and nothing is done. */
export function tipOf(step: Step, id: string): TipState | undefined {
  const tip = step.state.tips.get(id);
  if (tip === undefined) unknown(step, `tip:${id}`);
  else tip.spoken = step.mark;
  return tip;
}

/** Those tips, in order, each once. */
export function tipsOf(step: Step, ids: readonly string[] | undefined): TipState[] {
  const tips: TipState[] = [];
  for (const id of ids ?? []) {
    const tip = tipOf(step, id);
    if (tip !== undefined && !tips.includes(tip)) tips.push(tip);
  }
  return tips;
}

/** `tip:4` → kind and id; the bare `autoclave` has the id ''. */
export function itemParts(item: Item): { readonly kind: string; readonly id: string } {
  const colon = item.indexOf(':');
  return colon < 0 ? { kind: item, id: '' } : { kind: item.slice(0, colon), id: item.slice(colon + 1) };
}

/** The note speaks of something that the practice file does not have. */
export function unknown(step: Step, item: Item): void {
  found(step, { kind: 'unknown-item', items: [item], item });
}
