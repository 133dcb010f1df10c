import { siteOf } from '../../practice/look-up.ts';
import type { Site } from '../../practice/practice.ts';
import type { AskOf } from '../../reading/ask.ts';
import { changesOf } from '../../rules/quiet.ts';
import { capital } from '../../rules/tips/tip-words.ts';
import { nextOpenDay, openTimes } from '../../time/opening.ts';
import { type LocalDate, localDateOf, toLocal } from '../../time/zone.ts';
import { dateReadBack } from '../../words/clock-words.ts';
import type { Line, Message } from '../../words/message.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { sitesOfAsk } from '../site-of-ask.ts';

/** "What time do we open tomorrow?": that day's hours as the practice file and the notes have them; where shut, the next open day. */
export function answerHours(ask: AskOf<'hours'>, view: AskView): Answer {
  const sites = sitesOfAsk(view.practice, ask.site, view.room).flatMap(
    (id) => siteOf(view.practice, id) ?? [],
  );
  const points = sites.map((site) => hoursLine(site, ask.day, view));
  const message: Message = points.length === 1 ? points.map((line) => ({ line })) : [{ points }];
  return { about: 'answer', message, items: [] };
}

function hoursLine(site: Site, day: LocalDate | undefined, view: AskView): Line {
  const today = localDateOf(view.now, site.timezone);
  const date = day ?? today;
  const spans = spansWords(site, date, view);
  const name = view.practice.sites.length > 1 ? `${site.name}, ` : '';
  const when = dateReadBack(date, view.now, site.timezone);
  const head = capital(`${name}${when}`);
  const isOver = day === undefined && isShutFor(site, date, view);
  if (spans !== '' && !isOver) return [{ strong: `${head}: ` }, `${spans}.`];
  const next = nextOpenDay(site, date, changesOf(view.state, site.id));
  const opens =
    next === null
      ? ''
      : ` Open again ${dateReadBack(next, view.now, site.timezone)}, ${spansWords(site, next, view)}.`;
  return [{ strong: `${head}: ` }, `${spans === '' ? 'closed' : `${spans}, over now`}.${opens}`];
}

/** "08:30 to 12:30 and 13:30 to 17:30"; empty where it is closed. */
function spansWords(site: Site, date: LocalDate, { state }: AskView): string {
  return openTimes(site, date, changesOf(state, site.id))
    .map(({ open, shut }) => `${open} to ${shut}`)
    .join(' and ');
}

function isShutFor(site: Site, date: LocalDate, { state, now }: AskView): boolean {
  const last = openTimes(site, date, changesOf(state, site.id)).at(-1);
  return last !== undefined && toLocal(now, site.timezone).time > last.shut;
}
