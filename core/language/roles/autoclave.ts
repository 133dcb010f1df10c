import type { Clause } from '../clause.ts';

/** The autoclave slot: the one named, else the only one of the chat room's only site; `null` where it is left out. */
export function autoclaveOf(c: Clause): { id: string; said: readonly number[] | string } | null {
  const noun = c.at('autoclave');
  if (noun >= 0) c.use(noun);
  const named = c.entities('autoclave').find(({ entity }) => entity.id !== null);
  if (named?.entity.id != null) {
    c.use(named.at);
    return { id: named.entity.id, said: [named.at] };
  }
  const load = c.first('load');
  if (load?.entity.autoclave !== undefined) return { id: load.entity.autoclave, said: [load.at] };
  return autoclaveHere(c);
}

/** The only autoclave of the site: of the site named, else of the chat room's one site. */
export function autoclaveHere(c: Clause): { id: string; said: string } | null {
  const named = [...new Set(c.entities('site').map(({ entity }) => entity.id))];
  const sites = named.length > 0 ? named : c.scope.chatSites;
  const [site] = sites;
  if (site === undefined || sites.length > 1) {
    if (c.names.siteIds.length > 1 || sites.length > 1) return null;
  }
  const home = site ?? c.names.siteIds[0];
  const [one, ...more] = c.names.practice.autoclaves.filter((autoclave) => autoclave.site === home);
  return one !== undefined && more.length === 0
    ? { id: one.id, said: "the only autoclave of this chat room's site" }
    : null;
}

/** `autoclave:big` as named; `autoclave` where none is listed; `null` where it cannot be told. */
export function autoclaveItem(c: Clause): string | null {
  const found = autoclaveOf(c);
  if (found !== null) return `autoclave:${found.id}`;
  return c.names.practice.autoclaves.length === 0 ? 'autoclave' : null;
}
