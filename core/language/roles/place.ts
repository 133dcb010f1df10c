import type { Clause } from '../clause.ts';
import type { EntityOf } from '../part.ts';
import type { Missing } from '../result.ts';

export interface PlaceSaid {
  readonly site?: string;
  readonly room?: string;
  readonly said: readonly number[];
  readonly missing?: Missing;
  /** Past which part the place stands. */
  readonly at: number;
}

/**
 * The place that a clause names, but for where something comes from. A room's site is the one said beside it, else
 * the chat room's, else the only one that has such a room. `null` where no place is named.
 */
export function placeOf(c: Clause, allowed?: (prep: string, at: number) => boolean): PlaceSaid | null {
  const fits = ({ at }: { at: number }) =>
    allowed === undefined ? c.prep(at) !== 'from' : allowed(c.prep(at), at);
  const sites = c.entities('site').filter(fits);
  const rooms = c.entities('room').filter(fits);
  const site = sites[sites.length - 1];
  const room = rooms[rooms.length - 1];
  if (room === undefined && site === undefined) return thereOf(c, allowed);
  c.use(...[room?.at ?? -1, site?.at ?? -1]);
  c.useTags('clinic');
  if (room === undefined) {
    const distinct = new Set(sites.map(({ entity }) => entity.id));
    if (distinct.size > 1) {
      return {
        said: sites.map(({ at }) => at),
        at: site?.at ?? -1,
        missing: { about: 'site', choices: [...distinct], slot: 'site', form: 'id' },
      };
    }
    return { site: site?.entity.id ?? '', said: [site?.at ?? -1], at: site?.at ?? -1 };
  }
  return roomPlace(c, room, site?.entity.id ?? null, site?.at ?? -1);
}

/** "Moved blue in there", "19 degrees there": where the fact before took place. */
function thereOf(c: Clause, allowed: ((prep: string, at: number) => boolean) | undefined): PlaceSaid | null {
  const at = c.word(/^(there|in there|over there)$/);
  const place = c.scope.memory.place;
  if (at <= 0 || place === undefined) return null;
  if (allowed !== undefined && !allowed('in', at)) return null;
  c.use(at);
  return { ...place, said: [at], at };
}

function roomPlace(
  c: Clause,
  room: { at: number; entity: EntityOf<'room'> },
  site: string | null,
  siteAt: number,
): PlaceSaid {
  const said = siteAt < 0 ? [room.at] : [room.at, siteAt];
  const fitting = fittingRooms(c, room.entity.rooms, site);
  const [one, ...more] = fitting;
  if (one !== undefined && more.length === 0) {
    const [siteId = '', ...rest] = one.split('/');
    return { site: siteId, room: rest.join('/'), said, at: room.at };
  }
  if (one === undefined) {
    return {
      said,
      at: room.at,
      missing: { about: 'room', slot: 'room', form: 'id', words: room.entity.said },
    };
  }
  const sites = [...new Set(fitting.map((ref) => ref.split('/')[0] ?? ''))];
  return sites.length > 1
    ? { said, at: room.at, missing: { about: 'site', choices: sites, slot: 'site', form: 'id' } }
    : {
        said,
        at: room.at,
        missing: {
          about: 'room',
          choices: fitting.map((ref) => ref.split('/')[1] ?? ''),
          slot: 'room',
          form: 'id',
        },
      };
}

function fittingRooms(c: Clause, rooms: readonly string[], site: string | null): readonly string[] {
  const of = (id: string) => rooms.filter((ref) => ref.startsWith(`${id}/`));
  if (site !== null) return of(site);
  if (rooms.length <= 1) return rooms;
  const here = c.scope.chatSites.flatMap(of);
  return here.length > 0 ? here : rooms;
}

/** The slots of a fact that says where. */
export function placeSlots(place: PlaceSaid | null): Record<string, unknown> {
  if (place === null || place.missing !== undefined) return {};
  return {
    ...(place.site === undefined ? {} : { site: place.site }),
    ...(place.room === undefined ? {} : { room: place.room }),
  };
}
