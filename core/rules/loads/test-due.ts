import { ruleValue } from '../../defaults/rule-value.ts';
import { type AutoclaveState, type Mark, UNNAMED } from '../../record/state.ts';
import { dateAt, siteOfRoom, zoneOf } from '../../record/where.ts';
import { addDays, type LocalDate, startOfDay } from '../../time/zone.ts';
import { dayWords } from '../../words/clock-words.ts';
import { autoclaveWords } from '../../words/load-words.ts';
import { lines } from '../../words/message.ts';
import type { About } from '../about.ts';
import type { Matter, View } from '../matter.ts';
import { whenOpen } from '../quiet.ts';
import { chatRoomFor } from '../room-of.ts';
import { capital } from '../tips/tip-words.ts';
import { TESTS } from './autoclave-tests.ts';

/** The last test of a sort on one autoclave: its date counts, its note tells where to speak of it. */
interface LastTest {
  readonly ran: LocalDate;
  readonly mark: Mark;
}

/**
 * Rule `spore-test`: due `sporeTestEveryDays` (7) after the last was run, counted from that date whatever its result,
 * once the practice has noted one. Asked when the site opens that day, else on its next open day; then the brief.
 */
export function sporeTestsDue(view: View): readonly Matter[] {
  const { state, practice } = view;
  return dueOf(
    view,
    'spore-test',
    'Spore test',
    ({ sporeTests, site }) => {
      const last = sporeTests.at(-1);
      return { last, days: ruleValue(practice, 'sporeTestEveryDays', { site: site ?? undefined }) };
    },
    [...state.autoclaves.values()].flatMap(({ sporeTests }) => sporeTests.slice(0, 1)),
  );
}

/** Rule `leak-test`: due `leakTestEveryDays` (7) after the last, once the practice has noted one; local code first. */
export function leakTestsDue(view: View): readonly Matter[] {
  const { state, practice } = view;
  const lastOf = ({ tests, site }: AutoclaveState): LastTest | undefined => {
    return tests.leak === undefined
      ? undefined
      : { ran: dateAt(practice, site, tests.leak.mark.at), mark: tests.leak.mark };
  };
  const noted = [...state.autoclaves.values()].flatMap((each) => lastOf(each) ?? []);
  return dueOf(
    view,
    'leak-test',
    capital(TESTS.leak),
    (autoclave) => {
      const days = ruleValue(practice, 'leakTestEveryDays', { site: autoclave.site ?? undefined });
      return { last: lastOf(autoclave), days };
    },
    noted,
  );
}

/** `noted`: tests that show that the practice makes them; an autoclave in use without one counts from the first of these. */
function dueOf(
  view: View,
  rule: 'spore-test' | 'leak-test',
  test: string,
  lastOf: (autoclave: AutoclaveState) => { readonly last: LastTest | undefined; readonly days: number },
  noted: readonly LastTest[],
): readonly Matter[] {
  const [first] = noted.toSorted((one, other) => (one.ran < other.ran ? -1 : 1));
  if (first === undefined) return [];
  return [...view.state.autoclaves.values()].flatMap((autoclave) => {
    const { last, days } = lastOf(autoclave);
    if (last === undefined && autoclave.lastLoad === null) return [];
    const matter = due(view, { rule, test, autoclave, days, last: last ?? null, from: last ?? first });
    return matter === null ? [] : [matter];
  });
}

interface Due {
  readonly rule: 'spore-test' | 'leak-test';
  readonly test: string;
  readonly autoclave: AutoclaveState;
  readonly days: number;
  readonly last: LastTest | null;
  readonly from: LastTest;
}

function due(view: View, { rule, test, autoclave, days, last, from }: Due): Matter | null {
  const { practice, state } = view;
  const site = autoclave.site ?? siteOfRoom(practice, from.mark.room) ?? practice.sites[0]?.id ?? null;
  const room = site === null ? null : chatRoomFor(view, site, () => from.mark);
  if (site === null || room === null) return null;
  const zone = zoneOf(practice, site);
  // From that day's opening on: midnight is no time to have been waiting since.
  const at = whenOpen(practice, state, site, startOfDay(addDays(from.ran, days), zone));
  const item = autoclave.id === UNNAMED ? 'autoclave' : `autoclave:${autoclave.id}`;
  const about: About = rule === 'spore-test' ? 'spore-test' : 'load';
  const ran = () => {
    return last === null
      ? 'none noted yet'
      : `last run ${dayWords(startOfDay(last.ran, zone), view.now, zone)}`;
  };
  const { id } = autoclave;
  return {
    key: `${rule}|${item}|${from.ran}`,
    rule,
    about,
    site,
    room,
    items: [item],
    stages: [{ stage: 'first', at }],
    since: at,
    group: `${rule}@${site}`,
    get line() {
      return lines([{ strong: `${test} due:` }, ` ${autoclaveWords(practice, id)}, ${ran()}.`]);
    },
    leads: [],
  };
}
