import { ruleValue } from '../../defaults/rule-value.ts';
import type { Item } from '../../reading/slots.ts';
import type { AutoclaveState } from '../../record/autoclave-state.ts';
import type { Entry } from '../../record/entry.ts';
import { autoclaveWords } from '../../words/load-words.ts';
import { type Line, lines } from '../../words/message.ts';
import { openIncidents } from '../incidents/open-incidents.ts';
import type { View } from '../matter.ts';
import { seniorsInWords } from '../rights.ts';
import type { Speech } from '../speech.ts';
import { capital } from '../tips/tip-words.ts';

/**
 * The reply to a clear spore test that follows a positive one: whether the autoclave is back in service, what still holds
 * it, and that the incident stays open. A clear test with no positive before it is answered by its mark alone.
 */
export function sporeReply(entry: Entry, view: View): readonly Speech[] {
  if (entry.fact.kind !== 'spore-test' || entry.fact.outcome !== 'passed') return [];
  const autoclave = [...view.state.autoclaves.values()].find(({ sporeTests }) =>
    sporeTests.some(({ mark }) => mark.entry === entry.id),
  );
  if (autoclave === undefined || !followsPositive(autoclave, entry.id)) return [];
  const item: Item = autoclave.id === '' ? 'autoclave' : `autoclave:${autoclave.id}`;
  const message = lines(standing(autoclave, view), ...stillOpen(item, view));
  return [{ about: 'spore-test', items: [item], message, mentions: [] }];
}

/** The last result before it was positive. */
function followsPositive({ sporeTests }: AutoclaveState, entry: string): boolean {
  const here = sporeTests.findIndex(({ mark }) => mark.entry === entry);
  return sporeTests.slice(0, here).findLast(({ outcome }) => outcome !== 'running')?.outcome === 'failed';
}

function standing(autoclave: AutoclaveState, { practice }: View): Line {
  const name = autoclaveWords(practice, autoclave.id === '' ? null : autoclave.id);
  if (autoclave.positivesInRow >= 2) {
    const cycles = ruleValue(practice, 'sporeClearCycles', { site: autoclave.site ?? undefined });
    const first = autoclave.repaired === null ? 'Inspection or repair first, then ' : '';
    const words = `${first}${cycles} clear empty-chamber cycles in a row.`;
    return [{ strong: `Clear, but ${name} stays out of service.` }, ` ${capital(words)}`];
  }
  const [other] = autoclave.holds;
  if (other !== undefined)
    return [{ strong: `Clear, but ${name} stays held` }, `: ${other.reason ?? 'held before'}.`];
  return [{ strong: `Clear: ${name} is back in service.` }, ' Your local code comes first.'];
}

function stillOpen(item: Item, view: View): readonly Line[] {
  const isOpen = openIncidents(view).some(
    ({ incident }) => incident.sort === 'spore-positive' && incident.items.includes(item),
  );
  return isOpen
    ? [[`The incident stays open. ${seniorsInWords(view.practice)} closes it: “incident closed: …”.`]]
    : [];
}
