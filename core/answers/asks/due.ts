import { siteOf } from '../../practice/look-up.ts';
import type { AskOf } from '../../reading/ask.ts';
import { zoneOf } from '../../record/where.ts';
import { type OpenIncident, openIncidents } from '../../rules/incidents/open-incidents.ts';
import type { Matter } from '../../rules/matter.ts';
import { openMatters } from '../../rules/matters.ts';
import type { Instant } from '../../time/instant.ts';
import { type LocalDate, localDateOf } from '../../time/zone.ts';
import { clockWords, dateReadBack } from '../../words/clock-words.ts';
import { type Line, lines, type Message, wordsOf } from '../../words/message.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { sitesOfAsk } from '../site-of-ask.ts';
import { answerBrief } from './brief.ts';

/** Posts of the day itself are no work to be done. */
const NOT_WORK = new Set<Matter['about']>(['brief', 'close-out', 'question', 'settle', 'order', 'incident']);
/** More is not read on a phone. */
const SHOWN = 12;

/** What is due is told by the rules alone: no entry is looked up. */
type DueView = Omit<AskView, 'entries'>;

/**
 * "What's due?": open incidents first, then what waits already, then what is asked for later that day; by site where several
 * are asked about.
 */
export function answerDue(ask: AskOf<'due'>, view: DueView): Answer {
  if (ask.all) return answerBrief(ask, view);
  const sites = sitesOfAsk(view.practice, ask.site, view.room);
  const matters = onceEach(openMatters(view))
    .filter(
      (matter) => sites.includes(matter.site) && !NOT_WORK.has(matter.about) && isOf(matter, ask.day, view),
    )
    .sort((one, other) => firstAt(one) - firstAt(other));
  const when = ask.day === undefined ? 'today' : dayOf(ask.day, sites[0] ?? null, view);
  const incidents = incidentsFor(ask, sites, view);
  const open: Message = incidents.flatMap(({ line }) => line);
  const concerned = incidents.flatMap(({ incident }) => incident.items);
  if (matters.length === 0) {
    const none = lines([
      { strong: incidents.length === 0 ? 'Nothing due' : 'Nothing else due' },
      `${where(sites, view)} ${when}.`,
    ]);
    return { about: 'answer', message: [...open, ...none], items: [...new Set(concerned)] };
  }
  const bySite = sites
    .map((site) => ({ site, matters: matters.filter((matter) => matter.site === site) }))
    .filter((group) => group.matters.length > 0);
  const head: Line = [{ strong: `${matters.length} due` }, `${where(sites, view)} ${when}:`];
  const message: Message = [
    ...open,
    { line: head },
    ...bySite.flatMap(({ site, matters: here }) => siteBlocks(view, site, here, bySite.length > 1)),
  ];
  return {
    about: 'answer',
    message,
    items: [...new Set([...concerned, ...matters.flatMap((matter) => matter.items)])],
  };
}

/** Open incidents wait today, whatever day they are of; of a day to come nothing is known of them. */
function incidentsFor(ask: AskOf<'due'>, sites: readonly string[], view: DueView): readonly OpenIncident[] {
  const isAhead = sites.some(
    (site) => ask.day !== undefined && ask.day > localDateOf(view.now, zoneOf(view.practice, site)),
  );
  if (isAhead) return [];
  return openIncidents(view).filter(({ site }) => site === null || sites.includes(site));
}

/** A matter that comes up again each day is one thing to do. */
function onceEach(matters: readonly Matter[]): readonly Matter[] {
  const once = new Map<string, Matter>();
  for (const matter of matters) {
    const thing = `${matter.rule} ${matter.items.join()} ${matter.site} ${JSON.stringify(matter.line)}`;
    const other = once.get(thing);
    if (other === undefined || firstAt(matter) < firstAt(other)) once.set(thing, matter);
  }
  return [...once.values()];
}

function firstAt({ stages, since }: Matter): Instant {
  return stages.length === 0 ? since : Math.min(...stages.map(({ at }) => at));
}

/** Of a day to come, what falls due on it; of today, what has waited since before too. */
function isOf(matter: Matter, day: LocalDate | undefined, view: DueView): boolean {
  const zone = zoneOf(view.practice, matter.site);
  const today = localDateOf(view.now, zone);
  const date = localDateOf(firstAt(matter), zone);
  return day === undefined || day <= today ? date <= (day ?? today) : date === day;
}

function siteBlocks(view: DueView, site: string, matters: readonly Matter[], isNamed: boolean): Message {
  const name = siteOf(view.practice, site)?.name ?? site;
  const more = matters.length - SHOWN;
  return [
    ...(isNamed ? [{ line: [{ strong: name }] }] : []),
    { points: matters.slice(0, SHOWN).map((matter) => matterLine(matter, view)) },
    ...(more > 0 ? lines(`And ${more} more.`) : []),
  ];
}

function matterLine(matter: Matter, view: DueView): Line {
  const [block] = matter.line;
  const words = block !== undefined && 'line' in block ? block.line : [matter.about];
  const at = firstAt(matter);
  if (at <= view.now) return words;
  const when = clockWords(at, view.now, zoneOf(view.practice, matter.site));
  return [...words.slice(0, -1), `${wordsOf(words.at(-1) ?? '').replace(/[.:]$/, '')} (asked for ${when})`];
}

function dayOf(day: LocalDate, site: string | null, view: DueView): string {
  const zone = zoneOf(view.practice, site);
  const words = dateReadBack(day, view.now, zone);
  return words.includes(' ') ? `on ${words}` : words;
}

function where(sites: readonly string[], { practice }: DueView): string {
  const [only] = sites;
  return sites.length === 1 && only !== undefined && practice.sites.length > 1
    ? ` at ${siteOf(practice, only)?.name ?? only}`
    : '';
}
