import type { AutoclaveState } from '../state.ts';
import { sitesOfRoom } from '../where.ts';
import { found, type Step } from './step.ts';

/** Those that a note without a name may mean: of the sites that its chat room serves, else all. */
export function autoclavesHere(step: Step): AutoclaveState[] {
  const { autoclaves, practice } = step.state;
  const all = [...autoclaves.values()];
  const sites = sitesOfRoom(practice, step.entry.room);
  const here = all.filter((each) => each.site !== null && sites.includes(each.site));
  return here.length > 0 ? here : all;
}

/** The note does not say which of several: a test waits for it, a load (by key) is kept without. */
export function unsaid(step: Step, load: string | null): void {
  const choices = autoclavesHere(step).map((each) => each.id);
  found(step, { kind: 'autoclave-unsaid', items: ['autoclave'], choices, load });
}
