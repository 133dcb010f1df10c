import type { Autoclave } from '../../practice/practice.ts';
import type { Adding } from './adding.ts';

const STERILISERS = ['autoclave', 'one', 'steriliser', 'sterilizer', 'ac', 'clave'];

/** What an autoclave is called. */
export function addAutoclave(one: Autoclave, { name, byId }: Adding): void {
  const add = (words: string) => name(words, 'autoclave-name', one.id);
  for (const words of [one.name, ...one.also]) {
    add(words);
    const short = words.replace(/ (autoclave|steriliser|sterilizer)$/i, '');
    if (!/one$/i.test(words)) for (const noun of STERILISERS) add(`${short} ${noun}`);
  }
  for (const noun of STERILISERS) if (noun !== 'one') add(`${noun} ${one.id}`);
  if (one.id.length > 1 && !/^\d+$/.test(one.id)) byId(one.id, 'autoclave-name', one.id);
}
