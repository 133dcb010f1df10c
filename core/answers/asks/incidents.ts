import type { AskOf } from '../../reading/ask.ts';
import type { IncidentState } from '../../record/state.ts';
import { dateAt, zoneOf } from '../../record/where.ts';
import { siteOfIncident } from '../../rules/incidents/open-incidents.ts';
import { clockWords } from '../../words/clock-words.ts';
import { type Line, lines, type Message } from '../../words/message.ts';
import { placeWords } from '../../words/place-words.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { csvFile } from '../csv.ts';
import { howItStands, INCIDENT_COLUMNS, incidentRow, incidentWords } from '../incident-rows.ts';
import { spanOfAsk } from '../span-of-ask.ts';

/** What is read on a phone; all of it is in the file. */
const SHOWN = 6;

/** "Incidents this year": each with what it was, who answered and who closed it with what; open ones first, then the latest. */
export function answerIncidents(ask: AskOf<'incidents'>, view: AskView): Answer {
  const found = incidentsAsked(ask, view);
  const span = spanWordsOf(ask, view);
  if (found.length === 0)
    return {
      about: 'record',
      message: lines([{ strong: ask.open ? 'No open incident' : 'No incident' }, ` on record${span}.`]),
      items: [],
    };
  const open = found.filter((each) => howItStands(each, view) === 'open').length;
  const count = found.length === 1 ? '1 incident' : `${found.length} incidents`;
  const more = found.length - SHOWN;
  const message: Message = [
    { line: [{ strong: `${count}, ${open === 0 ? 'none' : open} open` }, `${span}.`] },
    { points: found.slice(0, SHOWN).map((incident) => incidentLine(incident, view)) },
    ...lines(more > 0 ? `And ${more} more. All of it is in the file.` : 'All of it is in the file.'),
  ];
  const rows = found.map((incident) => incidentRow(incident, view));
  const site = ask.site === undefined ? '' : `-${ask.site}`;
  const days = ask.from === undefined ? '' : `-${ask.from}-to-${ask.to ?? ask.from}`;
  const file = csvFile(`incidents${site}${days}`, INCIDENT_COLUMNS, rows);
  return { about: 'record', message, items: [...new Set(found.flatMap(({ items }) => items))], file };
}

/** ": 2026, Quay Street"; of all of the record only the site, if one was said. */
function spanWordsOf({ from, to, site }: AskOf<'incidents'>, { practice }: AskView): string {
  const at = site === undefined ? {} : { site };
  if (from !== undefined) return `: ${spanOfAsk(practice, { from, to: to ?? from, ...at })}`;
  return site === undefined ? '' : `: ${placeWords(practice, site, null)}`;
}

/** Those opened on these local dates, each by its own site's calendar. */
function incidentsAsked(ask: AskOf<'incidents'>, view: AskView): readonly IncidentState[] {
  const isOpen = (incident: IncidentState) => Number(howItStands(incident, view) === 'open');
  return view.state.incidents
    .all()
    .filter((incident) => {
      const site = siteOfIncident(view, incident);
      const date = dateAt(view.practice, site, incident.opened.at);
      if (ask.open && howItStands(incident, view) !== 'open') return false;
      const isIn = date >= (ask.from ?? date) && date <= (ask.to ?? date);
      return (ask.site === undefined || site === ask.site) && isIn;
    })
    .sort((one, other) => isOpen(other) - isOpen(one) || other.opened.at - one.opened.at);
}

function incidentLine(incident: IncidentState, view: AskView): Line {
  const zone = zoneOf(view.practice, siteOfIncident(view, incident));
  const { what, answer, end } = incidentWords(incident, view);
  return [
    { strong: clockWords(incident.opened.at, view.now, zone) },
    `: ${[what, answer].filter((words) => words !== '').join('. ')}. `,
    howItStands(incident, view) === 'open' ? { strong: `${end}.` } : `${end}.`,
  ];
}
