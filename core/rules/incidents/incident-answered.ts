import type { Entry } from '../../record/entry.ts';
import { lines } from '../../words/message.ts';
import type { View } from '../matter.ts';
import { leadIds, seniorsInWords } from '../rights.ts';
import type { Speech } from '../speech.ts';
import { capital } from '../tips/tip-words.ts';
import { unsafeWords } from '../tips/unsafe-words.ts';
import { findingOf } from './open-incidents.ts';

/**
 * "Did it reach a patient?" answered yes: the lead is mentioned at once, and what follows is said. The record holds the
 * tip by itself. Answered no: nothing more is due.
 */
export function incidentAnswered(entry: Entry, view: View): readonly Speech[] {
  const { fact } = entry;
  if (fact.kind !== 'incident-answered' || !fact.reached) return [];
  const incident = view.state.incidents.get(fact.incident);
  if (incident === undefined || incident.closed !== null) return [];
  const finding = findingOf(view.state, fact.incident);
  const tip = fact.tip ?? finding?.tip ?? '';
  const [gravest] = finding?.reasons ?? [];
  const why = gravest === undefined ? '' : ` Why it was unsafe: ${unsafeWords(view, tip, gravest)}.`;
  const seniors = capital(seniorsInWords(view.practice));
  const message = lines(
    [{ strong: `Tip ${tip} reached a patient.` }, ` It is held.${why}`],
    'Tell the clinician now and follow the practice’s own procedure. No patient names here, please.',
    `${seniors} closes it with what was done: “incident closed: …”, and alone may release the tip.`,
  );
  return [{ about: 'incident', items: incident.items, message, mentions: leadIds(view.practice) }];
}
