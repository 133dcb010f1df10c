import { siteOf } from '../../practice/look-up.ts';
import type { AskOf } from '../../reading/ask.ts';
import { zoneOf } from '../../record/where.ts';
import type { Matter } from '../../rules/matter.ts';
import { openMatters } from '../../rules/matters.ts';
import { toLocal } from '../../time/zone.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { clockWords } from '../clock-words.ts';
import { type Line, lines, wordsOf } from '../message.ts';
import { sitesOfAsk } from '../site-of-ask.ts';

/** Posts of the day itself are no work to be done. */
const NOT_WORK = new Set(['brief', 'close-out', 'question']);

/** What is due: what waits already first, then what comes today (or on the day asked about). */
export function answerDue(ask: AskOf<'due'>, view: AskView): Answer {
  const sites = sitesOfAsk(view.practice, ask.site, view.room);
  const matters = openMatters(view)
    .filter(
      (matter) => sites.includes(matter.site) && !NOT_WORK.has(matter.about) && onDay(matter, ask.day, view),
    )
    .sort((one, other) => one.since - other.since);
  if (matters.length === 0) {
    const when = ask.day === undefined ? 'just now' : `on ${ask.day}`;
    return { about: 'answer', message: lines([{ strong: 'Nothing due' }, ` ${when}.`]), items: [] };
  }
  const message = [
    { line: [{ strong: `${matters.length} due` }, where(sites, view)] },
    { points: matters.map((matter) => matterLine(matter, view)) },
  ];
  return { about: 'answer', message, items: [...new Set(matters.flatMap((matter) => matter.items))] };
}

function onDay(matter: Matter, day: string | undefined, view: AskView): boolean {
  const zone = zoneOf(view.practice, matter.site);
  const wanted = day ?? toLocal(view.now, zone).date;
  const first = Math.min(...matter.stages.map(({ at }) => at));
  const date = toLocal(Number.isFinite(first) ? first : matter.since, zone).date;
  return day === undefined ? date <= wanted : date === wanted;
}

function matterLine(matter: Matter, view: AskView): Line {
  const words = matter.line.flatMap((block) => ('line' in block ? [block.line] : [])).flat();
  const first = matter.stages.find(({ stage }) => view.said.saidAt(matter.key, stage) === null)?.at;
  const later = first !== undefined && first > view.now;
  const when = later ? ` (from ${clockWords(first, view.now, zoneOf(view.practice, matter.site))})` : '';
  return words.length === 0
    ? [matter.about, when]
    : [{ strong: wordsOf(words[0] ?? '') }, ...words.slice(1), when];
}

function where(sites: readonly string[], view: AskView): string {
  const [only] = sites;
  return sites.length === 1 && only !== undefined && view.practice.sites.length > 1
    ? ` at ${siteOf(view.practice, only)?.name ?? only}:`
    : ':';
}
