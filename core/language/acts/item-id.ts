import type { Clause } from '../clause.ts';
import type { Entity, Part } from '../part.ts';

/** True where the clause names one of our things: it is then no mere word about what was said. */
export function namesItem(c: Clause): boolean {
  return c.parts.some((p) => /^(tips|scanner|load|autoclave|no-scanner)$/.test(p.entity?.is ?? ''));
}

/** A number in words stands for the tip of that number, where there is one. */
export function spokenId(part: Part, c: Clause): string | null {
  const sense = part.entity === undefined ? part.senses.find((s) => s.tag === 'number') : undefined;
  if (sense === undefined || part.text === 'one') return null;
  return c.names.tips.find('', sense.ref)[0] ?? sense.ref;
}

/** The id that something named stands for; `many` where it is several, `null` where it has none. */
export function plainId(entity: Entity | undefined): string | 'many' | null {
  switch (entity?.is) {
    case 'tips':
      return entity.which === undefined ? only([...entity.ids, ...entity.unknown]) : 'many';
    case 'scanner':
    case 'load':
      return only(entity.ids);
    case 'site':
    case 'autoclave':
      return entity.id;
    case 'room':
      return entity.rooms[0]?.split('/')[1] ?? null;
    case 'number':
      return entity.text;
    default:
      return null;
  }
}

function only(ids: readonly string[]): string | 'many' {
  const [id, more] = ids;
  return id === undefined || more !== undefined ? 'many' : id;
}
