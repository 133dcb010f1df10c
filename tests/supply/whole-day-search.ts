/** A site's day on a grid of steps: an oracle that tries every way of sending tips. */
export interface GridDay {
  /** Sterile tips at each step that nobody has to do anything for. */
  readonly arriving: readonly number[];
  readonly dirty: number;
  /** Bookings at each step. */
  readonly booked: readonly number[];
  readonly turnaroundSteps: number;
  readonly scanSteps: number;
  readonly brought: number;
}

export interface Best {
  readonly unserved: number;
  readonly brought: number;
  readonly sent: number;
}

function better(a: Best, b: Best): boolean {
  if (a.unserved !== b.unserved) return a.unserved < b.unserved;
  return a.brought !== b.brought ? a.brought < b.brought : a.sent < b.sent;
}

/** The list with `count` more at `place`, or at its end when that is beyond it. */
function added(list: readonly number[], place: number, count: number): number[] {
  const inside = Math.min(place, list.length - 1);
  return list.with(inside, (list[inside] ?? 0) + count);
}

/** Fewest unserved, then fewest brought, then fewest sent, by trying every number of tips sent and brought at every step. */
export function searchWholeDay(day: GridDay): Best {
  const seen = new Map<string, Best>();
  const last = day.booked.length;
  function from(
    step: number,
    sterile: number,
    dirty: number,
    sterileAt: readonly number[],
    dirtyAt: readonly number[],
    spare: number,
  ): Best {
    if (step === last) return { unserved: 0, brought: 0, sent: 0 };
    const key = JSON.stringify([step, sterile, dirty, sterileAt.slice(step), dirtyAt.slice(step), spare]);
    const known = seen.get(key);
    if (known !== undefined) return known;
    const nowDirty = dirty + (dirtyAt[step] ?? 0);
    const here = sterile + (day.arriving[step] ?? 0);
    const booked = day.booked[step] ?? 0;
    let best: Best | undefined;
    for (let send = 0; send <= nowDirty; send++) {
      const coming = added(sterileAt, step + day.turnaroundSteps, send);
      const ready = here + (coming[step] ?? 0);
      for (let bring = 0; bring <= Math.min(spare, booked); bring++) {
        const served = Math.min(booked, ready + bring);
        const rest = from(
          step + 1,
          ready + bring - served,
          nowDirty - send,
          coming,
          added(dirtyAt, step + day.scanSteps, served),
          spare - bring,
        );
        const whole = {
          unserved: rest.unserved + booked - served,
          brought: rest.brought + bring,
          sent: rest.sent + send,
        };
        if (best === undefined || better(whole, best)) best = whole;
      }
    }
    const found = best ?? { unserved: booked, brought: 0, sent: 0 };
    seen.set(key, found);
    return found;
  }
  const none = Array.from({ length: last + 1 }, () => 0);
  return from(0, 0, day.dirty, none, none, day.brought);
}
