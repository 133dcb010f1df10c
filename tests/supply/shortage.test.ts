import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foreseeSupply } from '../../core/supply/shortage.ts';
import type { SupplyDay, SupplyState, TipOnHand } from '../../core/supply/supply-day.ts';
import { HOUR, MINUTE } from '../../core/time/instant.ts';
import { playDay } from './played-day.ts';
import { searchWholeDay } from './whole-day-search.ts';

const NOW = Date.UTC(2026, 10, 23, 8);
const at = (minutes: number): number => NOW + minutes * MINUTE;

function tips(count: number, state: SupplyState, rest: Partial<TipOnHand> = {}): TipOnHand[] {
  return Array.from({ length: count }, (_, i) => ({
    id: `${state}-${i + 1}`,
    state,
    since: NOW - HOUR,
    ...rest,
  }));
}

function day(rest: Partial<SupplyDay>): SupplyDay {
  return { tips: [], bookings: [], turnaround: { medianMinutes: 90 }, now: NOW, end: at(600), ...rest };
}

describe('given tips and bookings, when the day is foreseen', () => {
  it('then enough tips is no shortage and nothing to do', () => {
    const outlook = foreseeSupply(day({ tips: tips(3, 'sterile'), bookings: [at(60), at(120), at(180)] }));
    expect(outlook).toEqual({ bookings: 3, unserved: 0, send: [], bring: [], stillShort: 0 });
  });

  it('then a used tip is named with the latest moment to send it, longest waiting first', () => {
    const used = [
      { id: '7', state: 'bagged', since: at(-30) },
      { id: '4', state: 'used', since: at(-90) },
    ] as const;
    const outlook = foreseeSupply(
      day({ tips: [...used, ...tips(1, 'sterile')], bookings: [at(60), at(180)] }),
    );
    expect(outlook.shortage).toEqual({ at: at(180), booking: 2, short: 1 });
    expect(outlook.send).toEqual([{ by: at(90), count: 1, tips: ['4'], fromScans: 0 }]);
    expect(outlook.stillShort).toBe(0);
  });

  it('then tips of scans to come can be sent, once their scan is over', () => {
    const outlook = foreseeSupply(day({ tips: tips(1, 'sterile'), bookings: [at(0), at(120)] }));
    expect(outlook.send).toEqual([{ by: at(30), count: 1, tips: [], fromScans: 1 }]);
    const tooSoon = foreseeSupply(day({ tips: tips(1, 'sterile'), bookings: [at(0), at(119)] }));
    expect(tooSoon).toMatchObject({ send: [], bring: [], unserved: 1, stillShort: 1 });
  });

  it('then what sending cannot mend is brought, from the site with most to spare, by the first booking without', () => {
    const outlook = foreseeSupply(
      day({
        tips: tips(4, 'used'),
        bookings: [at(30), at(30), at(60), at(90)],
        otherSites: [
          { site: 'quay', sterile: 1 },
          { site: 'north', sterile: 5 },
        ],
      }),
    );
    expect(outlook.shortage).toEqual({ at: at(30), booking: 1, short: 2 });
    expect(outlook.bring).toEqual([{ site: 'north', count: 3, by: at(30) }]);
    expect(outlook.send).toEqual([{ by: at(0), count: 1, tips: ['used-1'], fromScans: 0 }]);
  });

  it('then several sites are asked only where one is not enough, and what is left is said', () => {
    const otherSites = [
      { site: 'quay', sterile: 1 },
      { site: 'north', sterile: 2 },
      { site: 'east', sterile: 0 },
      { site: 'west', sterile: -1 },
    ];
    const outlook = foreseeSupply(day({ bookings: [at(1), at(2), at(3), at(4)], otherSites }));
    expect(outlook.bring).toEqual([
      { site: 'north', count: 2, by: at(1) },
      { site: 'quay', count: 1, by: at(1) },
    ]);
    expect(outlook.stillShort).toBe(1);
  });

  it('then of two scans at once with one tip, one goes without', () => {
    const outlook = foreseeSupply(day({ tips: tips(1, 'sterile'), bookings: [at(60), at(60)] }));
    expect(outlook.shortage).toEqual({ at: at(60), booking: 2, short: 1 });
  });

  it('then the tip of a scan under way can be sent once that is over, and one fitted for a scan to come cannot', () => {
    const inUse = tips(1, 'fitted', { scanning: true, since: at(-10) });
    const send = [{ by: at(20), count: 1, tips: ['fitted-1'], fromScans: 0 }];
    expect(foreseeSupply(day({ tips: inUse, bookings: [at(110)] })).send).toEqual(send);
    expect(foreseeSupply(day({ tips: inUse, bookings: [at(109)] }))).toMatchObject({
      send: [],
      stillShort: 1,
    });
    const waiting = day({ tips: tips(1, 'fitted', { since: at(-40) }), bookings: [at(100), at(195)] });
    expect(foreseeSupply(waiting)).toMatchObject({ send: [], stillShort: 1 });
  });

  it('then tips that go together are one load, at the most urgent one’s time', () => {
    const outlook = foreseeSupply(day({ tips: tips(3, 'used'), bookings: [at(120), at(150), at(180)] }));
    expect(outlook.send).toEqual([
      { by: at(30), count: 3, tips: ['used-1', 'used-2', 'used-3'], fromScans: 0 },
    ]);
  });

  it('then loads of two, one after the other, go early enough', () => {
    const outlook = foreseeSupply(
      day({ tips: tips(4, 'used'), bookings: [at(200), at(200), at(210), at(210)], capacityPerLoad: 2 }),
    );
    expect(outlook.send.map(({ by, count }) => [by, count])).toEqual([
      [at(30), 2],
      [at(120), 2],
    ]);
    expect(outlook.stillShort).toBe(0);
  });

  it('then loads that cannot all be fitted in leave somebody short, and say so', () => {
    const outlook = foreseeSupply(
      day({ tips: tips(4, 'used'), bookings: [90, 90, 90, 90].map(at), capacityPerLoad: 2 }),
    );
    expect(outlook).toMatchObject({ unserved: 4, stillShort: 2, send: [{ by: at(0), count: 2 }] });
  });

  it('then a load under way holds the autoclave until it is done', () => {
    const bookings = [at(30), at(150)];
    const loaded = tips(1, 'in-load', { since: at(-60) });
    const outlook = foreseeSupply(
      day({ tips: [...loaded, ...tips(1, 'used')], bookings, capacityPerLoad: 2 }),
    );
    expect(outlook).toMatchObject({ unserved: 1, send: [{ by: at(60), count: 1 }], stillShort: 0 });
    const sooner = day({
      tips: [...loaded, ...tips(1, 'used')],
      bookings: [at(30), at(119)],
      capacityPerLoad: 2,
    });
    expect(foreseeSupply(sooner)).toMatchObject({ unserved: 1, send: [], stillShort: 1 });
  });

  it.each<readonly [string, TipOnHand[], number, number]>([
    ['sterile', tips(1, 'sterile'), 0, 0],
    ['fitted, its scan to come', tips(1, 'fitted'), 0, 0],
    ['fitted, its scan under way', tips(1, 'fitted', { scanning: true }), 0, 1],
    ['sent 60 min ago, booked as it comes back', tips(1, 'sent', { since: at(-60) }), 30, 0],
    ['sent 60 min ago, booked a minute sooner', tips(1, 'sent', { since: at(-60) }), 29, 1],
    [
      'in a load since 10 min, sent 60 min ago',
      tips(1, 'in-load', { since: at(-10), sentAt: at(-60) }),
      30,
      0,
    ],
    ['sent 179 min ago, so any moment now', tips(1, 'sent', { since: at(-179) }), 0, 0],
    ['sent 180 min ago, at the very last', tips(1, 'sent', { since: at(-180) }), 0, 0],
    ['sent 181 min ago and never spoken of since', tips(1, 'sent', { since: at(-181) }), 0, 1],
    ['unknown', tips(1, 'unknown'), 300, 1],
    ['held', tips(1, 'held'), 300, 1],
    ['missing', tips(1, 'missing'), 300, 1],
    ['retired', tips(1, 'retired'), 300, 1],
    ['used and left lying', tips(1, 'used'), 300, 1],
  ])('then a tip %s serves or does not', (_what, on, minutes, unserved) => {
    expect(foreseeSupply(day({ tips: on, bookings: [at(minutes)] })).unserved).toBe(unserved);
  });

  it.each<SupplyState>(['unknown', 'held', 'missing', 'retired'])(
    'then a tip that is %s is never one to send',
    (state) => {
      expect(foreseeSupply(day({ tips: tips(1, state), bookings: [at(300)] }))).toMatchObject({
        send: [],
        stillShort: 1,
      });
    },
  );

  it('then tips sent beyond what a load holds come back a load later', () => {
    const sent = tips(3, 'sent', { since: at(-30) });
    const bookings = [at(60), at(60), at(60)];
    expect(foreseeSupply(day({ tips: sent, bookings })).unserved).toBe(0);
    expect(foreseeSupply(day({ tips: sent, bookings, capacityPerLoad: 2 })).unserved).toBe(1);
    expect(
      foreseeSupply(day({ tips: sent, bookings: [60, 60, 150].map(at), capacityPerLoad: 2 })).unserved,
    ).toBe(0);
  });

  it('then bookings gone by and after the end are left out, those at either edge are not', () => {
    const bookings = [at(-1), at(0), at(600), at(601)];
    expect(foreseeSupply(day({ bookings }))).toMatchObject({ bookings: 2, unserved: 2 });
  });

  it('then slow loads are foreseen where the spread is known', () => {
    const sent = tips(1, 'sent', { since: at(-60) });
    const slow = day({
      tips: sent,
      bookings: [at(40)],
      turnaround: { medianMinutes: 90, spreadMinutes: 20 },
    });
    expect(foreseeSupply(slow)).toMatchObject({ unserved: 0, ifSlow: { at: at(40), booking: 1, short: 1 } });
    const steady = day({
      tips: sent,
      bookings: [at(40)],
      turnaround: { medianMinutes: 90, spreadMinutes: 10 },
    });
    expect(foreseeSupply(steady)).not.toHaveProperty('ifSlow');
  });
});

describe('closed forms', () => {
  it('evenly spaced scans: the first shortage is the one after the last tip; the rest is sent for', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 8 }),
        fc.integer({ min: 1, max: 20 }),
        fc.integer({ min: 5, max: 60 }),
        (stock, scans, gap) => {
          const bookings = Array.from({ length: scans }, (_, i) => at(i * gap));
          const outlook = foreseeSupply(day({ tips: tips(stock, 'sterile'), bookings, end: at(2000) }));
          expect(outlook.unserved).toBe(Math.max(0, scans - stock));
          expect(outlook.shortage?.booking).toBe(scans > stock ? stock + 1 : undefined);
          // A tip of scan i can serve scan i + stock when stock·gap ≥ scan + turnaround: then the round never breaks.
          if (stock * gap >= 30 + 90) {
            expect(outlook.stillShort).toBe(0);
            expect(outlook.send.reduce((sum, load) => sum + load.count, 0)).toBe(Math.max(0, scans - stock));
          } else if (scans > stock) expect(outlook.stillShort).toBeGreaterThan(0);
        },
      ),
    );
  });
});

const STEP = 30;
const gridDay = fc.record({
  sterile: fc.integer({ min: 0, max: 2 }),
  used: fc.integer({ min: 0, max: 2 }),
  sentSteps: fc.array(fc.integer({ min: 0, max: 2 }), { maxLength: 2 }),
  booked: fc.array(fc.integer({ min: 0, max: 2 }), { minLength: 1, maxLength: 8 }),
  turnaroundSteps: fc.integer({ min: 1, max: 3 }),
  scanSteps: fc.integer({ min: 1, max: 2 }),
  spare: fc.integer({ min: 0, max: 2 }),
});

describe('against a search of every way to send and bring', () => {
  it('serves as many, brings as few, sends as few', () => {
    fc.assert(
      fc.property(gridDay, (grid) => {
        const { sterile, used, sentSteps, booked, turnaroundSteps, scanSteps, spare } = grid;
        const sent = sentSteps.map((ago) => Math.min(ago, turnaroundSteps));
        const arriving = booked.map(
          (_, step) =>
            (step === 0 ? sterile : 0) + sent.filter((ago) => turnaroundSteps - ago === step).length,
        );
        const best = searchWholeDay({
          arriving,
          dirty: used,
          booked,
          turnaroundSteps,
          scanSteps,
          brought: spare,
        });
        const outlook = foreseeSupply(
          day({
            tips: [
              ...tips(sterile, 'sterile'),
              ...tips(used, 'used'),
              ...sent.map((ago, i) => ({ id: `s${i}`, state: 'sent' as const, since: at(-ago * STEP) })),
            ],
            bookings: booked.flatMap((count, step) => Array.from({ length: count }, () => at(step * STEP))),
            turnaround: { medianMinutes: turnaroundSteps * STEP },
            scanMinutes: scanSteps * STEP,
            otherSites: [{ site: 'north', sterile: spare }],
          }),
        );
        expect({
          unserved: outlook.stillShort,
          brought: outlook.bring.reduce((sum, { count }) => sum + count, 0),
          sent: outlook.send.reduce((sum, { count }) => sum + count, 0),
        }).toEqual(best);
      }),
      { numRuns: 300 },
    );
  });
});

const playable = fc.record({
  sterile: fc.integer({ min: 0, max: 4 }),
  used: fc.integer({ min: 0, max: 6 }),
  minutes: fc.array(fc.integer({ min: 0, max: 400 }), { minLength: 1, maxLength: 12 }),
  turnaround: fc.integer({ min: 10, max: 120 }),
  scan: fc.integer({ min: 1, max: 45 }),
  capacity: fc.option(fc.integer({ min: 1, max: 4 }), { nil: undefined }),
});

describe('the plan, played minute by minute', () => {
  function asDay(x: {
    sterile: number;
    used: number;
    minutes: number[];
    turnaround: number;
    scan: number;
    capacity: number | undefined;
  }): SupplyDay {
    return day({
      tips: [...tips(x.sterile, 'sterile'), ...tips(x.used, 'used')],
      bookings: x.minutes.map(at),
      turnaround: { medianMinutes: x.turnaround },
      scanMinutes: x.scan,
      ...(x.capacity !== undefined && { capacityPerLoad: x.capacity }),
    });
  }

  it('can be carried out and leaves exactly those short that it says; a load within its room, one after the other', () => {
    fc.assert(
      fc.property(playable, (x) => {
        const played = asDay(x);
        const outlook = foreseeSupply(played);
        expect(playDay(played, outlook.send, 0)).toBe(outlook.stillShort);
        expect(playDay(played, [], 0)).toBe(outlook.unserved);
        outlook.send.forEach((load, i) => {
          expect(load.tips.length + load.fromScans).toBe(load.count);
          expect(load.by).toBeGreaterThanOrEqual(NOW);
          if (x.capacity === undefined) return;
          expect(load.count).toBeLessThanOrEqual(x.capacity);
          const before = outlook.send[i - 1];
          if (before) expect(load.by - before.by).toBeGreaterThanOrEqual(x.turnaround * MINUTE);
        });
      }),
      { numRuns: 300 },
    );
  });

  it('where it serves everybody it is as late as will do: any one load a minute later leaves somebody short', () => {
    fc.assert(
      fc.property(playable, (x) => {
        const played = asDay({ ...x, capacity: undefined });
        const { send, stillShort } = foreseeSupply(played);
        fc.pre(stillShort === 0 && send.length > 0);
        send.forEach((_, late) => {
          const later = send.map((load, i) => (i === late ? { ...load, by: load.by + MINUTE } : load));
          expect(playDay(played, later, 0) ?? Number.POSITIVE_INFINITY).toBeGreaterThan(0);
        });
      }),
      { numRuns: 200 },
    );
  });

  it('with a load’s capacity and all its tips there from the start, is the best that loads one by one can do', () => {
    const packed = fc.record({
      used: fc.integer({ min: 0, max: 6 }),
      minutes: fc.array(fc.integer({ min: 0, max: 300 }), { minLength: 1, maxLength: 6 }),
      turnaround: fc.integer({ min: 20, max: 100 }),
      capacity: fc.integer({ min: 1, max: 3 }),
    });
    fc.assert(
      fc.property(packed, ({ used, minutes, turnaround, capacity }) => {
        // Best by theory: run the loads back to back from the start; the n-th tip is back with load ceil(n/capacity).
        const back = Array.from({ length: used }, (_, i) => (Math.floor(i / capacity) + 1) * turnaround);
        let served = 0;
        for (const minute of minutes.toSorted((a, b) => a - b))
          if ((back[served] ?? Number.POSITIVE_INFINITY) <= minute) served++;
        const outlook = foreseeSupply(asDay({ sterile: 0, used, minutes, turnaround, scan: 1000, capacity }));
        expect(outlook.stillShort).toBe(minutes.length - served);
      }),
      { numRuns: 300 },
    );
  });
});
