import { scannerOf, siteOf } from '../../../practice/look-up.ts';
import type { Item } from '../../../reading/slots.ts';
import { zoneOf } from '../../../record/where.ts';
import { clockWords, dayWords } from '../../../words/clock-words.ts';
import { idRanges } from '../../../words/item-words.ts';
import { autoclaveWords, loadWords } from '../../../words/load-words.ts';
import type { Line, Message } from '../../../words/message.ts';
import { TESTS } from '../../loads/autoclave-tests.ts';
import type { View } from '../../matter.ts';
import type { Readiness } from '../../readiness.ts';
import { reasonWords } from '../../scanner/reason-words.ts';
import { capital, inWords, scannerWords } from '../../tips/tip-words.ts';
import { countEvery, countExample } from '../count/count-words.ts';
import { bookedWords, shortWords, tightWords } from '../supply/supply-words.ts';
import type { Brief } from './brief.ts';
import { isUneventful } from './brief.ts';
import type { DueToday } from './due-today.ts';
import type { TipsShown } from './tips-by-state.ts';

/** The brief as it is posted: what must not wait first, then scanners, tips and bookings, then what is due today. */
export function briefMessage(view: View, brief: Brief): Message {
  const name = siteOf(view.practice, brief.site)?.name ?? brief.site;
  if (isUneventful(brief)) return [{ line: [{ strong: name }, `: ${quietDay(view, brief)}`] }];
  const points = [
    ...brief.incidents.flatMap(({ line }) => line.flatMap((block) => ('line' in block ? [block.line] : []))),
    ...brief.autoclaves.map(({ id, holds }): Line => {
      const why = holds[0]?.reason == null ? '' : ` (${holds[0].reason})`;
      return [{ strong: capital(`${autoclaveWords(view.practice, id)} is out of service`) }, why];
    }),
    ...supplyLines(view, brief),
    ...brief.scanners.map((readiness) => scannerLine(view, brief.site, readiness)),
    ...tipLines(brief),
    ...dueLines(view, brief),
    ...brief.loads.map((load): Line => {
      const waits = load.status === 'open' ? 'no result yet' : 'waits to be released';
      const since = load.started ?? load.finished;
      const on = since === null ? '' : `, on since ${timeAt(view, brief.site, since.at)}`;
      return [capital(`${loadWords(view.practice, load)}: ${waits}${on}`)];
    }),
    ...brief.quietTips.map(({ tip, state, spoken }): Line => {
      const day = dayWords(spoken.at, view.now, zoneOf(view.practice, brief.site));
      return [
        { strong: `Where is tip ${tip}?` },
        ` ${capital(STATES[state === 'retired' ? 'unknown' : state])}, not spoken of since ${day}`,
      ];
    }),
    ...countLines(view, brief),
  ];
  return [
    {
      line: [
        { strong: name },
        brief.scanners.length + brief.tips.length === 0 ? ': no scanner and no tips here' : ' today',
      ],
    },
    { points },
  ];
}

/** What the brief concerns, for finding it again: what is not as it should be. */
export function briefItems(brief: Brief): readonly Item[] {
  return [
    ...brief.incidents.flatMap(({ incident }) => incident.items),
    ...brief.scanners.map(({ scanner }): Item => `scanner:${scanner}`),
    ...brief.due.flatMap(({ items }) => items),
    ...brief.quietTips.map(({ tip }): Item => `tip:${tip}`),
  ];
}

function quietDay(view: View, { scanners, tips, supply }: Brief): string {
  const named = scanners.map(({ scanner }) => scannerWords(view.practice, scanner));
  const sterile = tips.flatMap((group) => group.tips).length;
  const parts = [
    named.length === 0 ? '' : `${inWords(named)} ready`,
    sterile === 0 ? '' : `${sterile} sterile ${sterile === 1 ? 'tip' : 'tips'}`,
    supply === null ? '' : bookedWords(view, supply),
    'nothing due',
  ];
  return `${parts.filter((part) => part !== '').join('; ')}.`;
}

function scannerLine(view: View, site: string, { scanner, ready, because }: Readiness): Line {
  const name = capital(scannerOf(view.practice, scanner)?.name ?? scanner);
  // Held because it was dropped: that it was dropped is said already.
  const dropped = because.some(({ word }) => word === 'dropped');
  const told = because.filter(({ blocks, hold }) => {
    return (ready || blocks) && !(dropped && hold?.sort === 'dropped');
  });
  const why = told.map((reason) => reasonWords(view, reason, site)).join('; ');
  if (ready) return [`${name}: ready${why === '' ? '' : ` (${why})`}`];
  return [`${name}: `, { strong: 'not ready' }, ` – ${why}`];
}

const STATES: Readonly<Record<TipsShown, string>> = {
  sterile: 'sterile',
  unfit: 'too old, past the limit or in doubt',
  fitted: 'on a scanner',
  used: 'used',
  washed: 'washed',
  bagged: 'bagged',
  sent: 'sent',
  'in-load': 'in a load',
  away: 'on the way',
  held: 'held',
  missing: 'missing',
  unknown: 'not known',
};

function tipLines({ tips }: Brief): readonly Line[] {
  if (tips.length === 0) return [];
  const groups = tips.map(({ state, tips: ids }) => `${ids.length} ${STATES[state]} (${idRanges(ids)})`);
  const none = tips.some(({ state }) => state === 'sterile') ? [] : ['none sterile'];
  return [[`Tips: ${[...none, ...groups].join('; ')}`]];
}

function supplyLines(view: View, { supply }: Brief): readonly Line[] {
  if (supply === null) return [];
  const short = shortWords(view, supply);
  const tight = tightWords(view, supply);
  const booked = capital(bookedWords(view, supply));
  if (short !== null) return [short, [booked]];
  return [[tight === null ? booked : `${booked}. ${tight}`]];
}

function dueLines(view: View, brief: Brief): readonly Line[] {
  const asked = brief.due.filter(isCalibration);
  const calibrate = asked.map(({ items, at }) => {
    const names = inWords(
      items.map((item) => scannerWords(view.practice, item.slice(item.indexOf(':') + 1))),
    );
    return at === null ? names : `${names} at ${timeAt(view, brief.site, at)}`;
  });
  const tests = brief.tests.map(({ autoclave, sorts }): Line => {
    const named = inWords(sorts.map((sort) => TESTS[sort]));
    return [{ strong: 'Before the first load' }, ` of ${autoclaveWords(view.practice, autoclave)}: ${named}`];
  });
  return [
    ...(calibrate.length === 0 ? [] : [[{ strong: 'Calibrate' }, ` ${[...new Set(calibrate)].join('; ')}`]]),
    ...tests,
    ...brief.due.filter((due) => !isCalibration(due)).map(({ line }) => line),
  ];
}

function isCalibration({ rule }: DueToday): boolean {
  return rule === 'calibration';
}

function countLines(view: View, { site, count }: Brief): readonly Line[] {
  if (count === null) return [];
  const example = countExample(view, site);
  return count.why === 'never'
    ? [[{ strong: 'Not counted yet' }, `: say which tips are which, such as ${example}`]]
    : [
        [
          { strong: 'Count the tips' },
          ` this week: a count is due ${countEvery(view, site)}. Type ${example}`,
        ],
      ];
}

function timeAt({ practice, now }: View, site: string, at: number): string {
  return clockWords(at, now, zoneOf(practice, site));
}
