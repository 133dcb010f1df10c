import { ruleValue } from '../../defaults/rule-value.ts';
import type { FactOf } from '../../reading/fact.ts';
import type { Entry } from '../../record/entry.ts';
import { SECOND } from '../../time/instant.ts';
import { type Line, lines } from '../../words/message.ts';
import type { View } from '../matter.ts';
import type { Speech } from '../speech.ts';
import { capital, scannerWords } from '../tips/tip-words.ts';
import { faultAdvice } from './fault-advice.ts';
import { type FoggedAt, foggingAdvice } from './fogging-advice.ts';
import { type Unlikely, unlikelyFaults } from './unlikely.ts';

/** The reply to a fault of a tip or scanner: named first if it has more faults than chance gives, then what to look at. */
export function faultReply(entry: Entry, view: View): readonly Speech[] {
  if (entry.fact.kind !== 'fault') return [];
  const { item, sort } = entry.fact;
  const thing = thingOf(view, item);
  if (thing === null) return [];
  const unlikely = unlikelyFaults(view.practice, view.state, item);
  const advice =
    sort === 'fogging' ? foggingAdvice(view, foggedAt(view, thing, entry)) : faultAdvice(thing.kind, sort);
  const head: Line = [{ strong: `${capital(thing.name)}: ${sortWords(sort)}` }, '.'];
  const message: Speech['message'] = [
    ...(unlikely === null ? [] : lines(figures(view, thing, unlikely))),
    { line: head },
    { points: advice.map((point) => [point]) },
  ];
  return [{ about: 'fault', items: [item], message, mentions: [] }];
}

interface Thing {
  readonly kind: 'tip' | 'scanner';
  readonly id: string;
  readonly name: string;
}

function thingOf({ practice, state }: View, item: string): Thing | null {
  const [kind, id = ''] = item.split(/:(.*)/s);
  if (kind === 'tip' && state.tips.has(id)) return { kind, id, name: `tip ${id}` };
  if (kind === 'scanner' && state.scanners.has(id)) return { kind, id, name: scannerWords(practice, id) };
  return null;
}

/** Where it was and how long it had warmed: the scanner that the tip is on, or was used on last. */
function foggedAt({ state }: View, { kind, id }: Thing, entry: Entry): FoggedAt {
  const tip = kind === 'tip' ? state.tips.get(id) : undefined;
  const use = state.history.uses.get(id)?.at(-1);
  const scanner = state.scanners.get(kind === 'scanner' ? id : (tip?.scanner ?? use?.scanner ?? ''));
  if (scanner === undefined)
    return { scanner: '', site: tip?.site ?? null, room: tip?.room ?? null, warmedSeconds: null };
  const { tipFitted, lastScan } = scanner;
  const onIt = kind === 'scanner' || scanner.tip === id;
  const scanned = lastScan !== null && tipFitted !== null && lastScan.started.at > tipFitted.at;
  const begun =
    scanned && lastScan !== null && lastScan.started.at <= entry.when ? lastScan.started.at : null;
  const warmedSeconds =
    onIt && begun !== null && tipFitted !== null ? Math.round((begun - tipFitted.at) / SECOND) : null;
  return { scanner: scanner.id, site: scanner.site, room: scanner.room, warmedSeconds };
}

function figures(
  { practice }: View,
  { kind, name }: Thing,
  { faults, uses, othersFaults, othersUses }: Unlikely,
): Line {
  const others = kind === 'tip' ? 'the other tips' : 'the other scanners';
  return [
    { strong: `${capital(name)} stands out` },
    `: ${faults} faults in its last ${uses} uses; ${others} together ${othersFaults} in ${othersUses}. Chance alone gives that less than once in ${Math.round(1 / ruleValue(practice, 'faultTail'))} times.`,
  ];
}

const SORTS: Readonly<Record<FactOf<'fault'>['sort'], string>> = {
  fogging: 'fogging',
  dropped: 'dropped',
  lens: 'lens',
  mirror: 'mirror or body',
  cable: 'cable',
  connection: 'connection',
  heating: 'heating',
  pack: 'pack wet, torn or opened',
  indicator: 'indicator unchanged',
  other: 'fault noted',
};

function sortWords(sort: FactOf<'fault'>['sort']): string {
  return SORTS[sort];
}
