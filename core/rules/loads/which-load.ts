import { ruleValue } from '../../defaults/rule-value.ts';
import type { LoadAmbiguous, LoadNumberAgain, LoadWithoutTips } from '../../record/finding.ts';
import { type LoadState, UNNAMED } from '../../record/state.ts';
import { zoneOf } from '../../record/where.ts';
import { dayWords } from '../../words/clock-words.ts';
import { autoclaveWords, loadWords } from '../../words/load-words.ts';
import { lines, type Message } from '../../words/message.ts';
import type { View } from '../matter.ts';
import type { Speech } from '../speech.ts';
import { capital, tipsInWords } from '../tips/tip-words.ts';

/** A result with no load to go with: which tips were in it? Until then nothing becomes sterile. */
export function speakWithoutTips(finding: LoadWithoutTips, view: View): readonly Speech[] {
  const { practice, state } = view;
  const load = state.loads.get(finding.load);
  if (load === undefined) return [];
  const counted = clearCycle(load, view);
  if (counted !== null) return [{ about: 'load', items: finding.items, message: counted, mentions: [] }];
  const example = tipsInWords(practice.tips.slice(0, 3).map(({ id }) => id));
  const message = lines(
    [
      { strong: `Which tips were in ${loadWords(practice, load)}?` },
      ` ${load.status === 'failed' ? 'It failed, and none' : 'None'} is on record in it, so none becomes sterile by it.`,
    ],
    `Type their numbers, or say when it went on: “load ${load.number} on at 9 with ${example}”.`,
  );
  return [
    {
      about: 'question',
      items: finding.items,
      message,
      mentions: [],
      completes: { slot: 'tips', choices: [] },
    },
  ];
}

/** After a repair an empty cycle is what is waited for: it is counted, not asked about. `null` where none is. */
function clearCycle(load: LoadState, { practice, state }: View): Message | null {
  const autoclave = state.autoclaves.get(load.autoclave ?? UNNAMED);
  if (autoclave === undefined || autoclave.repaired === null || autoclave.clearCycles === 0) return null;
  const least = ruleValue(practice, 'sporeClearCycles', { site: autoclave.site ?? undefined });
  const isOver = autoclave.positivesInRow === 0;
  if (load.status !== 'passed' || (isOver && autoclave.clearCycles > least)) return null;
  const name = capital(loadWords(practice, load));
  const of = `${name} is taken as an empty cycle: ${autoclave.clearCycles} of ${least} clear.`;
  const after = isOver ? ` ${capital(autoclaveWords(practice, autoclave.id))} is back in service.` : '';
  return lines([{ strong: of }, after], 'If tips were in it, say which.');
}

/** Several open loads of one number, no autoclave said: nothing changes until it is. */
export function speakAmbiguous(finding: LoadAmbiguous, view: View): readonly Speech[] {
  const { state } = view;
  const loads = finding.loads.flatMap((key): LoadState[] => {
    const load = state.loads.get(key);
    return load === undefined ? [] : [load];
  });
  const choices = loads.map((load) => ({ label: choiceWords(view, load), value: load.key }));
  const message = [
    ...lines([{ strong: `Which load ${finding.number}?` }, ' Nothing is recorded until you say:']),
    { steps: choices.map(({ label }) => [label]) },
  ];
  return [
    { about: 'question', items: finding.items, message, mentions: [], completes: { slot: 'load', choices } },
  ];
}

/** "big autoclave: tips 2 and 5". */
function choiceWords({ practice }: View, { autoclave, tips }: LoadState): string {
  const name = autoclave === null ? 'autoclave not said' : autoclaveWords(practice, autoclave);
  return `${name.replace(/^the /i, '')}: ${tips.length === 0 ? 'no tips noted' : tipsInWords(tips)}`;
}

/** The number has its result already: a new load was opened, unless it is a slip. */
export function speakNumberAgain(finding: LoadNumberAgain, view: View): readonly Speech[] {
  const { practice, state, now } = view;
  const load = state.loads.get(finding.load);
  const earlier = state.loads.get(finding.earlier);
  if (load === undefined || earlier === undefined) return [];
  const ended =
    earlier.finished === null ? '' : ` ${dayWords(earlier.finished.at, now, zoneOf(practice, earlier.site))}`;
  const message = lines([
    { strong: `${capital(loadWords(practice, load))} is taken as a new load.` },
    ` One of that number ended${ended}. If the number is a slip, edit the note.`,
    earlier.tips.length > 0
      ? ''
      : ` If its tips were in that one: “undo”, then “load ${load.number} on at 9 with …”, with its own time.`,
  ]);
  return [{ about: 'load', items: finding.items, message, mentions: [] }];
}
