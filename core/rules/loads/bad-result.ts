import { ruleValue } from '../../defaults/rule-value.ts';
import type { LoadCountsFailed, LoadNoValue, LoadWet } from '../../record/finding.ts';
import type { LoadState } from '../../record/state.ts';
import { loadWords } from '../../words/load-words.ts';
import { lines } from '../../words/message.ts';
import type { View } from '../matter.ts';
import { YES_NO } from '../question.ts';
import { leadIds, mayReleaseLoad, seniorsAreNamed, seniorsInWords } from '../rights.ts';
import type { Speech } from '../speech.ts';
import { capital, inWords } from '../tips/tip-words.ts';
import { figuresInWords, judgedBy, judgeLoad } from './judge-load.ts';
import { lookBackWarning, notSterile } from './load-failed.ts';
import { lookBack } from './look-back.ts';

/** Said to have passed, but its figures miss their time or its indicator failed: it counts as failed. */
export function speakCountsFailed(finding: LoadCountsFailed, view: View): readonly Speech[] {
  const load = view.state.loads.get(finding.load);
  if (load === undefined) return [];
  const why = finding.why === 'indicator' ? 'Its indicator failed.' : shortBy(view, load);
  const message = lines(
    [
      { strong: `${capital(loadWords(view.practice, load))} counts as failed.` },
      ` ${why} Nobody may release it.`,
    ],
    notSterile(view.state, load) || 'No tips stand under it.',
  );
  return [{ about: 'warning', items: finding.items, message, mentions: [] }];
}

function shortBy({ practice }: View, load: LoadState): string {
  const judgement = judgeLoad(practice, load);
  const by = judgedBy(practice, load) ?? 'the table that held then';
  if (judgement.judged !== 'short') return `${figuresInWords(load)} misses its time by ${by}.`;
  const { row, requiredMinutes } = judgement;
  return `${figuresInWords(load)} is too short: ${row.fromCelsius}–${row.toCelsius} °C needs ${requiredMinutes} min by ${by}.`;
}

/** Said to have passed at a temperature with no published value: never "ok", and its tips wait. */
export function speakNoValue(finding: LoadNoValue, view: View): readonly Speech[] {
  const { practice, state } = view;
  const load = state.loads.get(finding.load);
  if (load === undefined) return [];
  const name = loadWords(practice, load);
  const by = judgedBy(practice, load) ?? 'the table that held then';
  const tips = load.tips.length === 0 ? 'Its tips' : `Its tips ${inWords(load.tips)}`;
  const message = lines(
    [
      { strong: `${capital(name)} ran at ${finding.celsius} °C: no value for that in ${by}.` },
      ` ${tips} are not sterile yet.`,
    ],
    `${capital(seniorsInWords(practice))} may release it: “load ${load.number} is fine to use”. Otherwise run them again.`,
  );
  const warning = { about: 'warning', items: finding.items, message, mentions: leadIds(practice) } as const;
  return isReleasers(view, finding) ? [warning, releaseQuestion(finding, load, view)] : [warning];
}

/** Typed by someone who may release it: it may have been meant so, and is asked rather than taken. */
function isReleasers({ practice }: View, { mark }: LoadNoValue): boolean {
  return seniorsAreNamed(practice) && mayReleaseLoad(practice, mark.from);
}

function releaseQuestion({ mark, items }: LoadNoValue, load: LoadState, { practice }: View): Speech {
  const question = { strong: `Do you release ${loadWords(practice, load)} all the same?` };
  return {
    about: 'question',
    items,
    message: lines([question, ' Answer ', { strong: 'yes' }, ' or ', { strong: 'no' }, '.']),
    mentions: [],
    asks: {
      choices: YES_NO,
      person: mark.from,
      lasts: ruleValue(practice, 'questionMinutes'),
      purpose: { sort: 'release-load', load: load.key },
    },
  };
}

/** Came out wet: a wet pack does not keep its tip sterile. Used since, where it was corrected later: the look-back too. */
export function speakWet(finding: LoadWet, view: View): readonly Speech[] {
  const load = view.state.loads.get(finding.load);
  if (load === undefined) return [];
  const what = `${capital(loadWords(view.practice, load))} came out wet`;
  const concerned = lookBack(view.state, [finding.load]);
  if (concerned.length > 0) return [lookBackWarning(view, load, what, concerned)];
  const message = lines(
    [{ strong: `${what}: a wet pack keeps nothing sterile.` }],
    notSterile(view.state, load) || 'No tips stand under it.',
  );
  return [{ about: 'warning', items: finding.items, message, mentions: [] }];
}
