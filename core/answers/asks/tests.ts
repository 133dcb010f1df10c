import { ruleValue } from '../../defaults/rule-value.ts';
import type { AskOf } from '../../reading/ask.ts';
import type { AutoclaveState, SporeTest, TestSort } from '../../record/state.ts';
import { dateAt, zoneOf } from '../../record/where.ts';
import { TESTS } from '../../rules/loads/autoclave-tests.ts';
import { capital } from '../../rules/tips/tip-words.ts';
import { addDays, type LocalDate, localDateOf } from '../../time/zone.ts';
import { dateReadBack } from '../../words/clock-words.ts';
import { autoclaveWords } from '../../words/load-words.ts';
import { type Line, lines, type Message } from '../../words/message.ts';
import { nameOf } from '../../words/people-words.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { autoclavesAt } from '../autoclaves-at.ts';
import { whenBy } from '../when-by.ts';

type Sort = NonNullable<AskOf<'tests'>['sort']>;
const SORTS = ['spore', 'penetration', 'control', 'leak'] as const satisfies readonly Sort[];
/** Made each working day before the first load, where they are made at all (common practice; local code first). */
const DAILY: readonly Sort[] = ['penetration', 'control'];
const NAMES: Readonly<Record<Sort, string>> = { spore: 'spore test', ...TESTS };

/** "When was the last spore test?": the last of each autoclave, by its result, and when the next is due. */
export function answerTests(ask: AskOf<'tests'>, view: AskView): Answer {
  const autoclaves = autoclavesAt(ask.autoclave, ask.site, view);
  const practised = SORTS.filter((sort) => autoclaves.some((each) => isNoted(each, sort)));
  const sorts: readonly Sort[] = ask.sort === undefined ? practised : [ask.sort];
  const points = autoclaves.flatMap((autoclave) => sorts.map((sort) => testLine(autoclave, sort, view)));
  const none = ask.sort === undefined ? 'No autoclave test' : `No ${NAMES[ask.sort]}`;
  if (points.length === 0)
    return { about: 'answer', message: lines([{ strong: none }, ' is noted.']), items: [] };
  const message: Message = points.length === 1 ? points.map((line) => ({ line })) : [{ points }];
  const items = autoclaves.map(({ id }) =>
    id === '' ? ('autoclave' as const) : (`autoclave:${id}` as const),
  );
  return { about: 'answer', message, items };
}

function isNoted({ sporeTests, tests }: AutoclaveState, sort: Sort): boolean {
  return sort === 'spore' ? sporeTests.length > 0 : tests[sort] !== undefined;
}

function testLine(autoclave: AutoclaveState, sort: Sort, view: AskView): Line {
  const name = capital(`${autoclaveWords(view.practice, autoclave.id)}, ${NAMES[sort]}`);
  return [
    { strong: name },
    `: ${sort === 'spore' ? sporeWords(autoclave, view) : testWords(autoclave, sort, view)}.`,
  ];
}

function sporeWords({ sporeTests, site }: AutoclaveState, view: AskView): string {
  const last = sporeTests.at(-1);
  if (last === undefined) return 'none noted yet';
  const days = ruleValue(view.practice, 'sporeTestEveryDays', { site: site ?? undefined });
  const before = last.outcome === 'running' ? sporeTests.at(-2) : undefined;
  const earlier = before === undefined ? '' : `; the one before ${outcomeOf(before, site, view)}`;
  return `${outcomeOf(last, site, view)}${earlier}. ${dueWords(last.ran, days, site, view)}`;
}

function outcomeOf({ outcome, ran, mark }: SporeTest, site: string | null, view: AskView): string {
  const day = dateReadBack(ran, view.now, zoneOf(view.practice, site));
  const by = mark.by === null ? '' : ` (${nameOf(view.practice, mark.by)})`;
  if (outcome === 'running') return `run ${day}${by}, no result yet`;
  return `${outcome === 'passed' ? 'negative (passed)' : 'POSITIVE (failed)'}, run ${day}${by}`;
}

function testWords({ tests, site }: AutoclaveState, sort: TestSort, view: AskView): string {
  const last = tests[sort];
  if (last === undefined) return 'none noted yet';
  const told = `${last.outcome} ${whenBy(last.mark, site, view)}`;
  const ran = dateAt(view.practice, site, last.mark.at);
  if (sort === 'leak') {
    const days = ruleValue(view.practice, 'leakTestEveryDays', { site: site ?? undefined });
    return `${told}. ${dueWords(ran, days, site, view)}`;
  }
  const isToday = ran === localDateOf(view.now, zoneOf(view.practice, site));
  return DAILY.includes(sort) && !isToday ? `none noted today; last ${told}` : told;
}

function dueWords(ran: LocalDate, days: number, site: string | null, view: AskView): string {
  const zone = zoneOf(view.practice, site);
  const due = addDays(ran, days);
  const isLate = due < localDateOf(view.now, zone);
  return `${isLate ? 'Was due' : 'Next due'} ${dateReadBack(due, view.now, zone)}`;
}
