import type { Clause } from '../clause.ts';
import type { EntityOf } from '../part.ts';
import type { Said } from './frame.ts';

/** The load that a clause names: by the word, or a number of at least two figures where nothing else claims it. */
export function loadOf(c: Clause, bare: boolean): { entity: EntityOf<'load'>; said: Said } | null {
  const named = c.first('load');
  if (named !== null) {
    c.use(...c.entities('load').map(({ at }) => at));
    return { entity: named.entity, said: [named.at] };
  }
  if (bare) {
    for (const { at, entity } of c.entities('tips')) {
      const [id, more] = entity.unknown;
      if (
        !entity.named &&
        entity.ids.length === 0 &&
        id !== undefined &&
        more === undefined &&
        id.length >= 2 &&
        /^[a-z]*\d+$/i.test(id)
      ) {
        c.use(at);
        return { entity: { is: 'load', ids: [id.replace(/\D/g, '')], named: false }, said: [at] };
      }
    }
  }
  const last = c.scope.memory.load;
  return last === null ? null : { entity: last, said: 'the load spoken of just before' };
}

/** The item of a load: `load:118`, with the autoclave where it was named: `load:big/118`. */
export function itemOf(load: EntityOf<'load'>, named: string | null | undefined): string {
  const autoclave = load.autoclave ?? named ?? null;
  return autoclave === null ? `load:${load.ids[0]}` : `load:${autoclave}/${load.ids[0]}`;
}
