import type { UnsafeTip } from '../../record/finding.ts';
import * as findings from '../../record/findings.ts';
import type { IncidentState, State } from '../../record/state.ts';
import { siteOfRoom, zoneOf } from '../../record/where.ts';
import { clockWords } from '../../words/clock-words.ts';
import { itemWords } from '../../words/item-words.ts';
import { type Line, lines, type Message } from '../../words/message.ts';
import type { View } from '../matter.ts';
import { seniorsInWords } from '../rights.ts';
import { inWords } from '../tips/tip-words.ts';

/** An incident that still waits: for an answer, or, answered yes, for being closed with what was done. */
export interface OpenIncident {
  readonly incident: IncidentState;
  readonly site: string | null;
  readonly waitsFor: 'answer' | 'closing';
  /** One line for the brief. */
  readonly line: Message;
}

/**
 * Incidents that are open, oldest first, of one site or of all. Answered no is over: the tip met nobody. Answered yes
 * stays until the lead, deputy or manager closes it.
 */
export function openIncidents(view: View, site?: string): readonly OpenIncident[] {
  const open: OpenIncident[] = [];
  for (const incident of view.state.incidents.recent()) {
    if (incident.closed !== null || incident.answered?.reached === false) continue;
    // A correction took its ground away before anyone answered: there is nothing left to ask.
    if (incident.answered === null && !isFound(view.state, incident.id)) continue;
    const where = siteOfIncident(view, incident);
    // One whose site is not known is everybody's, so that no brief misses it.
    if (site !== undefined && where !== null && where !== site) continue;
    const waitsFor = isOfTip(incident) && incident.answered === null ? 'answer' : 'closing';
    open.push({
      incident,
      site: where,
      waitsFor,
      get line() {
        return lines(lineOf(view, incident, where));
      },
    });
  }
  return open.sort((one, other) => one.incident.opened.at - other.incident.opened.at);
}

function lineOf(view: View, incident: IncidentState, site: string | null): Line {
  const { practice, now } = view;
  const at = clockWords(incident.opened.at, now, zoneOf(practice, site));
  if (!isOfTip(incident)) {
    const what = incident.items.find((item) => !/^(?:tip|scanner):/.test(item));
    const named = what === undefined ? '' : `${itemWords(practice, what)} `;
    return [
      { strong: `Open incident, ${at}:` },
      ` ${named}${incident.sort === 'spore-positive' ? 'spore test positive' : 'failed'}. ${seniorsInWords(practice)} closes it with what was done.`,
    ];
  }
  const tips = inWords(tipsOf(incident));
  if (incident.answered === null)
    return [{ strong: `Open incident, ${at}:` }, ` did tip ${tips} reach a patient?`];
  return [
    { strong: `Open incident, ${at}:` },
    ` tip ${tips} reached a patient. ${seniorsInWords(practice)} closes it with what was done.`,
  ];
}

/** Opened by an unsafe tip, so that it has to be asked whether it reached a patient; else by a load or a spore test. */
export function isOfTip({ sort }: IncidentState): boolean {
  return sort !== 'load-failed' && sort !== 'spore-positive';
}

/** Ids of the tips that it is about. */
export function tipsOf({ items }: IncidentState): readonly string[] {
  return items.filter((item) => item.startsWith('tip:')).map((item) => item.slice(4));
}

function isFound(state: State, id: string): boolean {
  return findings.findingOf(state, id) !== undefined;
}

/** What the record found when it opened; `undefined` where a correction took that away. */
export function findingOf(state: State, id: string): UnsafeTip | undefined {
  const finding = findings.findingOf(state, id);
  return finding?.kind === 'unsafe-tip' ? finding : undefined;
}

/** Where it happened: the site of the finding, else of its chat room, else where the tip is. */
export function siteOfIncident(
  { practice, state }: Pick<View, 'practice' | 'state'>,
  incident: IncidentState,
): string | null {
  const [tip] = tipsOf(incident);
  return (
    findingOf(state, incident.id)?.site ??
    siteOfRoom(practice, incident.opened.room) ??
    (tip === undefined ? null : (state.tips.get(tip)?.site ?? null))
  );
}
