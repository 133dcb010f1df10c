import type { LoadFailed } from '../../record/finding.ts';
import type { LoadState, State } from '../../record/state.ts';
import { loadItem, loadWords } from '../../words/load-words.ts';
import { lines, type Message } from '../../words/message.ts';
import { openedBy } from '../incidents/opened-by.ts';
import type { View } from '../matter.ts';
import { leadIds } from '../rights.ts';
import type { Speech } from '../speech.ts';
import { capital, inWords, scannerWords, tipsInWords } from '../tips/tip-words.ts';
import { foundWith } from '../tips/together.ts';
import { concernedCount, concernedList } from './concerned-words.ts';
import { type Concerned, itemsConcerned, lookBack } from './look-back.ts';

/**
 * A load failed, at once or on correction. With a tip of it fitted or used since it ended: a warning to the lead (the
 * rules call it one: somebody may have been treated with it) with every scan concerned. Nothing concerned: one line.
 */
export function speakLoadFailed(finding: LoadFailed, view: View): readonly Speech[] {
  const load = view.state.loads.get(finding.load);
  if (load === undefined) return [];
  const concerned = lookBack(view.state, [finding.load]);
  if (concerned.length > 0) {
    const warning = lookBackWarning(view, load, headline(view, finding, load), concerned);
    return [{ ...warning, decides: [openedBy(finding, warning.items, view)] }];
  }
  // Said already why it counts as failed, or that no tips are on record: one post is enough.
  const said =
    foundWith(view, finding, 'load-counts-failed').length +
    foundWith(view, finding, 'load-without-tips').length;
  if (said > 0) return [];
  const nothing =
    load.tips.length === 0
      ? ' No tips are on record in it.'
      : ` ${notSterile(view.state, load)} None was fitted or used since.`;
  const message = lines([{ strong: `${headline(view, finding, load)}.` }, nothing]);
  return [{ about: 'look-back', items: finding.items, message, mentions: [] }];
}

function headline({ practice }: View, { corrected }: LoadFailed, load: LoadState): string {
  const name = capital(loadWords(practice, load));
  return corrected ? `${name} failed: it had been taken as passed` : `${name} failed`;
}

/** The warning that goes with scans concerned: what is wrong, what to do now, every scan, who decides. */
export function lookBackWarning(
  view: View,
  load: LoadState,
  what: string,
  concerned: readonly Concerned[],
): Speech {
  const message: Message = [
    ...lines([{ strong: `${what}. ${capital(concernedCount(concerned))} concerned.` }]),
    ...lines(...[notSterile(view.state, load), takeOff(view, load)].filter((text) => text !== '')),
    ...lines('Newest first:'),
    ...concernedList(view, concerned),
    ...lines(WHAT_NEXT),
  ];
  const items = [...new Set([loadItem(load), ...itemsConcerned(concerned)])];
  return { about: 'warning', items, message, mentions: leadIds(view.practice) };
}

/** Scanward only lists: what follows for a patient is for those who are licensed to decide it. */
const WHAT_NEXT =
  'What follows is for the lead and the practice’s own procedure. No patient names here, please.';

/** Which of its tips stand under it still; those that passed another load since are sterile by that one. */
export function notSterile(state: State, load: LoadState): string {
  const ids = stillUnder(state, load);
  if (ids.length === 0) return '';
  return `${capital(tipsInWords(ids))} ${ids.length === 1 ? 'is' : 'are'} not sterile: through another load before use.`;
}

function takeOff({ practice, state }: View, load: LoadState): string {
  const fitted = stillUnder(state, load).flatMap((id) => {
    const scanner = state.tips.get(id)?.scanner ?? null;
    return scanner === null ? [] : [`tip ${id} (on ${scannerWords(practice, scanner)})`];
  });
  return fitted.length === 0 ? '' : `Take off now: ${inWords(fitted)}.`;
}

function stillUnder(state: State, load: LoadState): string[] {
  return load.tips.filter((id) => {
    const tip = state.tips.get(id);
    return tip !== undefined && tip.load === load.key && tip.retired === null;
  });
}
