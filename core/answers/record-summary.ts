import type { Entry, SaidKind } from '../record/entry.ts';
import { countsAs } from '../record/load-standard.ts';
import type { State } from '../record/state.ts';
import type { Line } from '../words/message.ts';

/** What a stretch of the record holds, a count a line, only of what there is: what went wrong is bold. */
export function recordSummary(entries: readonly Entry[], { incidents, practice }: State): readonly Line[] {
  const outcomes = (kind: SaidKind, sort?: string) => {
    const counts = new Map<string, number>();
    for (const { fact } of entries) {
      if (fact.kind !== kind || !('outcome' in fact)) continue;
      if (sort !== undefined && (!('sort' in fact) || fact.sort !== sort)) continue;
      const outcome = fact.kind === 'load-finished' ? countsAs(practice, fact) : fact.outcome;
      counts.set(outcome, (counts.get(outcome) ?? 0) + 1);
    }
    return counts;
  };
  const count = (...kinds: readonly SaidKind[]) =>
    entries.filter(({ fact }) => kinds.includes(fact.kind)).length;
  const opened = entries.flatMap(({ fact }) => (fact.kind === 'incident-opened' ? [fact.incident] : []));
  // A tip that is answered to have reached nobody leaves nothing to close, as in the brief.
  const isOpen = (id: string) => {
    const incident = incidents.get(id);
    return incident?.closed === null && incident.answered?.reached !== false;
  };
  const open = opened.filter(isOpen).length;
  return [
    ...(opened.length === 0 ? [] : [incidentLine(opened.length, open)]),
    ...outcomeLine('Calibrations', outcomes('calibrated')),
    ...outcomeLine('Loads', outcomes('load-finished')),
    ...outcomeLine('Autoclave tests', outcomes('autoclave-test')),
    ...outcomeLine('Spore tests', outcomes('spore-test')),
    ...countLine('Scans finished', count('scan-finished')),
    ...countLine('Wipe-downs', count('wiped')),
    ...countLine('Moves', count('moved')),
    ...countLine('Faults', count('fault')),
    ...countLine('Rules changed in the practice file', count('rule-changed')),
  ];
}

function incidentLine(count: number, open: number): Line {
  return [{ strong: `Incidents: ${count}` }, open === 0 ? ', none open' : `, ${open} still open`];
}

function countLine(name: string, count: number): readonly Line[] {
  return count === 0 ? [] : [[`${name}: ${count}`]];
}

function outcomeLine(name: string, counts: ReadonlyMap<string, number>): readonly Line[] {
  const passed = counts.get('passed') ?? 0;
  const failed = counts.get('failed') ?? 0;
  const running = counts.get('running') ?? 0;
  if (passed + failed + running === 0) return [];
  const good = [
    ...(passed === 0 ? [] : [`${passed} passed`]),
    ...(running === 0 ? [] : [`${running} running`]),
  ].join(', ');
  if (failed === 0) return [[`${name}: ${good}`]];
  return [[`${name}: `, { strong: `${failed} failed` }, good === '' ? '' : `, ${good}`]];
}
