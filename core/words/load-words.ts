import { autoclaveOf } from '../practice/look-up.ts';
import type { Practice } from '../practice/practice.ts';
import type { Item } from '../reading/slots.ts';
import { type LoadState, UNNAMED } from '../record/state.ts';

/** "load 118"; with its autoclave where the practice has several and the record knows which. */
export function loadWords(practice: Practice, load: LoadState): string {
  const several = practice.autoclaves.length > 1 && load.autoclave !== null;
  return several
    ? `load ${load.number} (${autoclaveWords(practice, load.autoclave)})`
    : `load ${load.number}`;
}

/** As posts name it: `load:big/118` where the record knows the autoclave, else `load:118`. */
export function loadItem({ number, autoclave }: LoadState): Item {
  return autoclave === null || autoclave === UNNAMED ? `load:${number}` : `load:${autoclave}/${number}`;
}

/** The autoclave as the practice names it; "the autoclave" where it lists none. */
export function autoclaveWords(practice: Practice, id: string | null): string {
  if (id === null || id === UNNAMED) return 'the autoclave';
  const name = autoclaveOf(practice, id)?.name ?? id;
  return /^the /i.test(name) ? name : `the ${name}`;
}
