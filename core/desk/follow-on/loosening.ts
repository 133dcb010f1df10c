import type { Fact } from '../../reading/fact.ts';
import type { State } from '../../record/state.ts';

/** What may be taken of a thing that a note did not name: it tightens, or says where the thing is. */
const TIGHTENS = new Set<Fact['kind']>([
  'held',
  'missing',
  'found',
  'fault',
  'used',
  'removed',
  'washed',
  'bagged',
  'sent',
  'retired',
  'wiped',
  'covered',
  'moved',
  'departed',
]);

/** A good result, a release, a return from the autoclave, a tip put on: never by way of "it", it is asked. */
export function tightens(fact: Fact): boolean {
  if (fact.kind === 'calibrated' || fact.kind === 'inspected') return fact.outcome === 'failed';
  return TIGHTENS.has(fact.kind);
}

/** What may make something sterile, passed or free: a reaction, which could be forged, never says it. */
export function loosens({ kind }: Fact): boolean {
  return /^(?:load-finished|spore-test|autoclave-test|released|sterile)$/.test(kind);
}

/** States in which a tip can have come to what is told of it. */
const BEFORE: Partial<Record<Fact['kind'], ReadonlySet<string>>> = {
  used: new Set(['fitted', 'sterile', 'unknown']),
  washed: new Set(['fitted', 'used', 'held', 'unknown']),
  bagged: new Set(['fitted', 'used', 'washed', 'held', 'unknown']),
  sent: new Set(['fitted', 'used', 'washed', 'bagged', 'held', 'unknown']),
  found: new Set(['missing']),
};

/** Whether the record agrees that this may be said of its tips just now; of what else it speaks nothing is doubted. */
export function fits(fact: Fact, state: State): boolean {
  const before = BEFORE[fact.kind];
  if (fact.kind === 'found') return fact.items.every((item) => isMissing(item, state));
  if (before === undefined || !('tips' in fact)) return true;
  return (fact.tips ?? []).every((id) => before.has(state.tips.get(id)?.state ?? 'unknown'));
}

function isMissing(item: string, { tips, scanners }: State): boolean {
  const id = item.slice(item.indexOf(':') + 1);
  if (item.startsWith('tip:')) return tips.get(id)?.state === 'missing';
  return item.startsWith('scanner:') && scanners.get(id)?.missing != null;
}
