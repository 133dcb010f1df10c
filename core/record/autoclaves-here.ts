import type { State } from './state.ts';
import { sitesOfRoom } from './where.ts';

/** Ids of the autoclaves that a note from that chat room may mean: those at its sites; all of them where it has none. */
export function autoclavesHere({ autoclaves, practice }: State, room: string): readonly string[] {
  const all = [...autoclaves.values()];
  const sites = sitesOfRoom(practice, room);
  const here = all.filter(({ site }) => site !== null && sites.includes(site));
  return (here.length > 0 ? here : all).map(({ id }) => id);
}
