import { ruleValue } from '../../defaults/rule-value.ts';
import { peopleOf } from '../../practice/look-up.ts';
import type { IncidentState } from '../../record/state.ts';
import { dateAt, zoneOf } from '../../record/where.ts';
import { MINUTE } from '../../time/instant.ts';
import { clockWords } from '../../words/clock-words.ts';
import { lines, type Message } from '../../words/message.ts';
import { today as todayIn } from '../clock.ts';
import type { Matter, Rule, View } from '../matter.ts';
import { leadIds } from '../rights.ts';
import { chatRoomFor } from '../room-of.ts';
import { inWords } from '../tips/tip-words.ts';
import { unsafeWords } from '../tips/unsafe-words.ts';
import { findingOf, openIncidents, tipsOf } from './open-incidents.ts';

/**
 * Rule `incident`: "did it reach a patient?" unanswered for `incidentLeadMinutes` (5): the lead is mentioned, in the chat
 * room where it happened. Quiet hours do not hold it back: a patient may still be in the chair.
 */
export const unanswered: Rule = (view) => {
  return openIncidents(view)
    .filter(({ waitsFor }) => waitsFor === 'answer')
    .map(({ incident, site }) => matterOf(view, incident, site));
};

function matterOf(view: View, incident: IncidentState, site: string | null): Matter {
  const { opened, id, items } = incident;
  const at = opened.noted + ruleValue(view.practice, 'incidentLeadMinutes') * MINUTE;
  return {
    key: `incident|${id}`,
    rule: 'incident',
    about: 'incident',
    site: site ?? view.practice.sites[0]?.id ?? '',
    room: whereLeadReads(view, opened.room, site),
    items,
    stages: [{ stage: 'first', at }],
    since: opened.at,
    group: `incident|${id}`,
    get line() {
      return words(view, incident, site);
    },
    leads: leadToday(view, site),
  };
}

/** Where it happened; a direct message has no lead in it, so then the site's own chat room. */
function whereLeadReads(view: View, room: string, site: string | null): string {
  const { practice } = view;
  const isPrivate = ruleValue(practice, 'privateNotes') && !practice.chat.some((chat) => chat.room === room);
  return (isPrivate ? chatRoomFor(view, site ?? practice.sites[0]?.id ?? '') : null) ?? room;
}

function words(view: View, incident: IncidentState, site: string | null): Message {
  const { practice, state, now } = view;
  const tips = inWords(tipsOf(incident));
  const at = clockWords(incident.opened.at, now, zoneOf(practice, site));
  const finding = findingOf(state, incident.id);
  const [gravest] = finding?.reasons ?? [];
  const why =
    finding === undefined || gravest === undefined
      ? ''
      : ` Why it matters: ${unsafeWords(view, finding.tip, gravest)}.`;
  return lines(
    [{ strong: `Did tip ${tips} reach a patient?` }, ` Asked at ${at}, not answered yet.${why}`],
    'Anyone here may answer: yes or no. No patient names, please.',
  );
}

/**
 * Whom to mention: the lead, or the deputy when the lead has said nothing on that site's local date. Where nobody is the
 * deputy, the lead all the same; where neither writes here, the manager.
 */
export function leadToday(view: View, site: string | null): readonly string[] {
  const { practice, said } = view;
  const today = todayIn(view, zoneOf(practice, site));
  const leads = peopleOf(practice, 'lead').flatMap(({ id }) => id ?? []);
  const spoken = leads.filter((id) => {
    const at = said.lastSpoke(id);
    return at !== null && dateAt(practice, site, at) === today;
  });
  if (spoken.length > 0) return spoken;
  const deputies = peopleOf(practice, 'deputy').flatMap(({ id }) => id ?? []);
  return deputies.length > 0 ? deputies : leadIds(practice);
}
