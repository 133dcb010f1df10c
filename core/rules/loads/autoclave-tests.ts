import { autoclaveOf, autoclavesOfSite } from '../../practice/look-up.ts';
import type { AutoclaveHeld, AutoclaveTestFailed, AutoclaveUnsaid, Untested } from '../../record/finding.ts';
import type { Hold, TestSort } from '../../record/state.ts';
import { zoneOf } from '../../record/where.ts';
import { clockWords } from '../../words/clock-words.ts';
import { autoclaveWords, loadItem } from '../../words/load-words.ts';
import { lines } from '../../words/message.ts';
import { nameOf } from '../../words/people-words.ts';
import type { View } from '../matter.ts';
import { leadIds, seniorsInWords } from '../rights.ts';
import type { Speech } from '../speech.ts';
import { capital, inWords } from '../tips/tip-words.ts';
import { foundWith } from '../tips/together.ts';

/** The tests as the trade names them. */
export const TESTS: Readonly<Record<TestSort, string>> = {
  penetration: 'steam penetration test',
  control: 'automatic control test',
  leak: 'leak test',
};

/** A load was started on an autoclave that is held or out of service. */
export function speakAutoclaveHeld(finding: AutoclaveHeld, view: View): readonly Speech[] {
  const { practice, state } = view;
  const load = state.loads.get(finding.load);
  const name = load === undefined ? 'the load' : `load ${load.number}`;
  const on = autoclaveWords(practice, finding.autoclave);
  const message = lines(
    [{ strong: `Stop ${name}: ${on} is out of service.` }, ' Its tips are not to be relied on.'],
    `Why: ${finding.holds.map((hold) => holdWords(view, finding.autoclave, hold)).join('. Also: ')}.`,
    elsewhere(view, finding.autoclave),
  );
  return [{ about: 'warning', items: finding.items, message, mentions: [] }];
}

function holdWords({ practice, state, now }: View, autoclave: string, { reason, mark }: Hold): string {
  const at = clockWords(mark.at, now, zoneOf(practice, state.autoclaves.get(autoclave)?.site ?? null));
  const by = mark.by === null ? '' : ` (${nameOf(practice, mark.by)})`;
  return `${reason ?? 'held'}, ${at}${by}`;
}

/** The way out: another autoclave of that site that is in service. */
function elsewhere({ practice, state }: View, autoclave: string): string {
  const site = state.autoclaves.get(autoclave)?.site ?? null;
  const free = (site === null ? [] : autoclavesOfSite(practice, site)).filter(({ id }) => {
    return id !== autoclave && state.autoclaves.get(id)?.holds.length === 0;
  });
  if (free.length === 0) return 'No other autoclave here is in service on record.';
  return `In service here: ${inWords(free.map(({ name }) => name))}.`;
}

/** First load of the day without the tests that this practice makes: one caution. */
export function speakUntested(finding: Untested, view: View): readonly Speech[] {
  const { practice, state } = view;
  const load = state.loads.get(finding.load);
  const name = load === undefined ? 'This load' : `Load ${load.number}`;
  const tests = finding.sorts.map((sort) => TESTS[sort]);
  const message = lines(
    [
      {
        strong: `${name} is the day’s first on ${autoclaveWords(practice, finding.autoclave)}, and no ${inWords(tests, 'or')} is noted today.`,
      },
    ],
    'If it was done, note it. The maker’s instructions and your local code come first.',
  );
  return [{ about: 'caution', items: finding.items, message, mentions: [] }];
}

/** A failed test holds the autoclave, for the lead, deputy or manager to release. */
export function speakTestFailed(finding: AutoclaveTestFailed, view: View): readonly Speech[] {
  const { practice } = view;
  const name = autoclaveWords(practice, finding.autoclave);
  const message = lines(
    [{ strong: `No loads on ${name}: its ${TESTS[finding.sort]} failed.` }, ' It is held.'],
    elsewhere(view, finding.autoclave),
    `${capital(seniorsInWords(practice))} may release it.`,
  );
  return [{ about: 'warning', items: finding.items, message, mentions: leadIds(practice) }];
}

/** Which of several autoclaves? Of a test nothing is recorded until it is said; a load is kept, and waits for it. */
export function speakAutoclaveUnsaid(finding: AutoclaveUnsaid, view: View): readonly Speech[] {
  const { practice, state } = view;
  // A result of which not even the tips are known: those are asked for first, unless an empty cycle is waited for.
  const isEmptyAwaited = finding.choices.some((id) => (state.autoclaves.get(id)?.positivesInRow ?? 0) > 1);
  if (foundWith(view, finding, 'load-without-tips').length > 0 && !isEmptyAwaited) return [];
  const choices = finding.choices.map((id) => ({ label: autoclaveOf(practice, id)?.name ?? id, value: id }));
  const load = finding.load === null ? undefined : state.loads.get(finding.load);
  const head =
    load === undefined
      ? [{ strong: 'Which autoclave?' }, ' Nothing is recorded until you say.']
      : [{ strong: `Which autoclave is load ${load.number} on?` }];
  return [
    {
      about: 'question',
      items: [
        ...(load === undefined ? [] : [loadItem(load)]),
        ...finding.choices.map((id) => `autoclave:${id}`),
      ],
      message: [...lines(head), { steps: choices.map(({ label }) => [label]) }],
      mentions: [],
      completes: { slot: 'autoclave', choices },
    },
  ];
}
