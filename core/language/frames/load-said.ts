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
        const all = [at, ...besides(c, at)];
        c.use(...all);
        return { entity: { is: 'load', ids: all.map((i) => numberAt(c, i)), named: false }, said: all };
      }
    }
  }
  const last = c.scope.memory.load;
  return last === null ? null : { entity: last, said: 'the load spoken of just before' };
}

/** "80 and 81 both passed": the numbers joined to the first. */
function besides(c: Clause, from: number): number[] {
  const found: number[] = [];
  let at = from + 1;
  while (/^(and|&|,|\+)$/.test(c.parts[at]?.text ?? '') && numberAt(c, at + 1) !== '') {
    found.push(at + 1);
    at += 2;
  }
  return found;
}

/** A number that is no tip of ours and may be a load's; empty where there is none. */
function numberAt(c: Clause, at: number): string {
  const entity = c.parts[at]?.entity;
  if (entity?.is !== 'tips' || entity.named || entity.ids.length > 0) return '';
  const [id, more] = entity.unknown;
  const digits = id?.replace(/\D/g, '') ?? '';
  return more === undefined && digits.length >= 2 ? digits : '';
}

/** The item of a load: `load:118`, with the autoclave where it was named: `load:big/118`. */
export function itemOf(load: EntityOf<'load'>, named: string | null | undefined): string {
  const autoclave = load.autoclave ?? named ?? null;
  return autoclave === null ? `load:${load.ids[0]}` : `load:${autoclave}/${load.ids[0]}`;
}
