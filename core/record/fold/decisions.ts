import type { Practice } from '../../practice/practice.ts';
import { whyNotLoosen } from '../authority.ts';
import { loadMeant } from '../load-key.ts';
import { withSettings } from '../settings.ts';
import { addMissing } from '../start-state.ts';
import { show } from '../tip-change.ts';
import { doubt, releaseLoad, settle } from './doubts.ts';
import { holdFor } from './holds.ts';
import { found, type Steps } from './step.ts';
import { counted } from './stocktake.ts';

export const decisionSteps = {
  'load-released': (step, said) => {
    const load = loadMeant(step.state, said.load);
    if (load !== undefined) releaseLoad(step, load.key, said.tips, [`load:${load.number}`]);
  },
  doubted: (step, said) => doubt(step, said.item),
  'doubt-settled': (step, said) => settle(step, said.item),
  'incident-opened': (step, said) => {
    const { incidents } = step.state;
    if (incidents.has(said.incident)) return;
    incidents.set(said.incident, {
      id: said.incident,
      sort: said.sort,
      items: said.items,
      of: said.of,
      opened: step.mark,
      answered: null,
      closed: null,
    });
  },
  'incident-answered': (step, said) => {
    const { incidents, tips } = step.state;
    const incident = incidents.get(said.incident);
    if (incident !== undefined)
      incidents.set(incident.id, { ...incident, answered: { mark: step.mark, reached: said.reached } });
    const tip = said.tip === undefined ? undefined : tips.get(said.tip);
    if (!said.reached || tip === undefined) return;
    holdFor(step, tip, 'reached-patient', 'lead', 'reached a patient');
    show(tip, step.mark);
  },
  'incident-closed': (step, said) => {
    const { incidents, practice } = step.state;
    const incident = incidents.get(said.incident);
    if (incident === undefined || incident.closed !== null) return;
    const why = whyNotLoosen(practice, step.entry);
    if (why !== null) {
      found(step, {
        kind: 'refused',
        items: incident.items,
        what: 'close-incident',
        item: null,
        why,
      });
      return;
    }
    const closed = { mark: step.mark, reason: said.reason ?? null };
    incidents.set(incident.id, { ...incident, closed });
  },
  setting: (step, said) => {
    const { state, mark } = step;
    const { name, value } = said;
    const site = said.site ?? null;
    const scanner = said.scanner ?? null;
    state.settings.set(`${name}|${site ?? ''}|${scanner ?? ''}`, { name, site, scanner, value, mark });
    state.practice = withSettings(state.file, state.settings);
  },
  // Told for the reader of the record; what holds is in the practice file itself.
  'rule-changed': () => undefined,
  word: (step, said) => {
    if (said.means === null) step.state.words.delete(said.words);
    else step.state.words.set(said.words, { means: said.means, mark: step.mark });
  },
  'stocktake-asked': (step, said) => {
    const site = step.state.sites.get(said.site);
    if (site !== undefined) site.stocktakeAsked = step.mark;
  },
  stocktaken: (step, said) => {
    const site = step.state.sites.get(said.site);
    if (site !== undefined) counted(site, step.mark);
  },
  practice: (step, said) => {
    const { state } = step;
    state.file = parsed(said.file);
    state.practice = withSettings(state.file, state.settings);
    addMissing(state, state.practice);
  },
} satisfies Steps;

/** Checked when it was written into the record. */
function parsed(file: string): Practice {
  return JSON.parse(file);
}
