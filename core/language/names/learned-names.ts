import type { AddName } from './adding.ts';

/** A word that the practice has taught: `means` is the sort and the id, with a colon between. */
export function addLearned(name: AddName, words: string, means: string): void {
  const at = means.indexOf(':');
  const sort = means.slice(0, at);
  const ref = means.slice(at + 1);
  const tags: Readonly<Record<string, string>> = {
    scanner: 'scanner-name',
    site: 'site',
    room: 'room',
    autoclave: 'autoclave-name',
    tip: 'tip-name',
    person: 'person',
  };
  const tag = tags[sort];
  if (tag !== undefined) name(words, tag, ref);
}
