import type { IncidentState, Mark } from '../record/state.ts';
import { zoneOf } from '../record/where.ts';
import { findingOf, isOfTip, openIncidents, siteOfIncident } from '../rules/incidents/open-incidents.ts';
import type { View } from '../rules/matter.ts';
import { capital, inWords } from '../rules/tips/tip-words.ts';
import { unsafeWords } from '../rules/tips/unsafe-words.ts';
import { toIso } from '../time/instant.ts';
import { toLocal } from '../time/zone.ts';
import { clockWords } from '../words/clock-words.ts';
import { itemWords } from '../words/item-words.ts';
import { nameOf } from '../words/people-words.ts';
import { placeWords } from '../words/place-words.ts';

/** Columns of the incidents as they are handed out, in order. */
export const INCIDENT_COLUMNS = [
  'opened (local)',
  'opened (UTC)',
  'what',
  'why',
  'items',
  'where',
  'stands',
  'reached a patient',
  'answered by',
  'answered (local)',
  'closed by',
  'closed (local)',
  'closed with',
] as const;

/** `over`: answered that it reached nobody. `taken back`: a correction took its ground away before anybody answered. */
export type Stands = 'open' | 'closed' | 'over' | 'taken back';

export function howItStands(incident: IncidentState, view: View): Stands {
  if (incident.closed !== null) return 'closed';
  if (openIncidents(view).some((each) => each.incident.id === incident.id)) return 'open';
  return incident.answered === null ? 'taken back' : 'over';
}

/** Each sort of incident as the trade says it. */
const SORTS: Readonly<Record<string, string>> = {
  'unsafe-tip': 'unsafe tip',
  'same-tip-again': 'tip used on a second scan',
  'load-failed': 'failed load whose tips were used',
  'spore-positive': 'spore test positive',
};

/** What happened, what was answered and how it ended, each a part of a line; `answer` is empty where nothing was asked. */
export function incidentWords(
  incident: IncidentState,
  view: View,
): { readonly what: string; readonly answer: string; readonly end: string } {
  const { answered, closed } = incident;
  const by = (mark: Mark) => {
    const zone = zoneOf(view.practice, siteOfIncident(view, incident));
    return `${nameOf(view.practice, mark.by)}, ${clockWords(mark.at, view.now, zone)}`;
  };
  const stands = howItStands(incident, view);
  return {
    what: `${sortWords(incident)}: ${thingsOf(incident, view)}`,
    answer:
      answered === null
        ? isOfTip(incident) && stands === 'open'
          ? 'Not answered yet'
          : ''
        : `${answered.reached ? 'Reached a patient' : 'Reached no patient'} (${by(answered.mark)})`,
    end:
      closed === null
        ? capital(stands)
        : `Closed: ${closed.reason ?? 'no reason noted'} (${by(closed.mark)})`,
  };
}

function sortWords({ sort }: IncidentState): string {
  return SORTS[sort] ?? sort.replaceAll('-', ' ');
}

/** A load's or autoclave's incident is named by that, not by every tip and scanner that it concerns. */
function thingsOf(incident: IncidentState, { practice }: View): string {
  const items = isOfTip(incident)
    ? incident.items
    : incident.items.filter((item) => !/^(?:tip|scanner):/.test(item)).slice(0, 1);
  return inWords((items.length === 0 ? incident.items : items).map((item) => itemWords(practice, item)));
}

/** An incident as a row, in the order of the columns; local times are of its site. */
export function incidentRow(incident: IncidentState, view: View): readonly string[] {
  const { opened, answered, closed, items, id } = incident;
  const { practice, state } = view;
  const site = siteOfIncident(view, incident);
  const local = (mark: Mark | undefined) => {
    if (mark === undefined) return '';
    const { date, time } = toLocal(mark.at, zoneOf(practice, site));
    return `${date} ${time}`;
  };
  const by = (mark: Mark | undefined) => (mark === undefined ? '' : nameOf(practice, mark.by));
  const finding = findingOf(state, id);
  const why = finding?.reasons.map((reason) => unsafeWords(view, finding.tip, reason)).join('. ') ?? '';
  return [
    local(opened),
    toIso(opened.at),
    sortWords(incident),
    why,
    items.join(' '),
    site === null ? '' : placeWords(practice, site, null),
    howItStands(incident, view),
    answered === null ? '' : answered.reached ? 'yes' : 'no',
    by(answered?.mark),
    local(answered?.mark),
    by(closed?.mark),
    local(closed?.mark),
    closed?.reason ?? '',
  ];
}
