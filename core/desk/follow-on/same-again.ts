import { factWords } from '../../answers/fact-words.ts';
import type { Sameness } from '../../language/follow-on/sameness.ts';
import { canonical } from '../../reading/canonical.ts';
import type { Fact } from '../../reading/fact.ts';
import type { Item } from '../../reading/slots.ts';
import { capital, inWords } from '../../rules/tips/tip-words.ts';
import { toIso } from '../../time/instant.ts';
import { idOf, itemWords, tipsAsRanges } from '../../words/item-words.ts';
import type { Session } from '../session.ts';
import type { FollowOn, Option } from './follow-on.ts';
import { itemsNamed } from './items-named.ts';
import { otherScanner } from './other-one.ts';
import { passedSince } from './passing.ts';
import { sameOf } from './same-of.ts';
import { type Leaning, type Told, toldBefore } from './told.ts';

/** "Blue too": the same facts of the items named, by what this person told last; else one question. */
export function sameAgain(session: Session, note: Leaning, said: Sameness): FollowOn | null {
  const told = toldBefore(session, note);
  const own = told.find(({ line }) => line.from === note.from);
  const found = own ?? told[0];
  const before = found === undefined ? null : asItCame(found, said);
  if (before === null) return null;
  const named = namedOf(session, said.items, note, before);
  if (named.none !== undefined) return noSuchTip(named.none);
  const [first] = named.lists;
  if (first === undefined) return null;
  const when = toIso(note.at);
  const same = named.lists.flatMap((items) => {
    const facts = sameOf(before.facts, items, when);
    return facts === null ? [] : [{ items, facts }];
  });
  const [only] = same;
  const isPlain = found === own && !before.other && !said.doubted && !named.more;
  if (isPlain && only !== undefined && same.length === 1 && !passedSince(session, note, before.line))
    return { sort: 'taken', facts: only.facts, leans: { on: before.line.turn, how: 'same' } };
  const options = optionsFor(session, before, only?.items ?? first, when, found === own);
  if (said.came === 'bad' && options.length === 0) return null;
  return asked(session, only?.items ?? first, options, before.other ? '' : ' too');
}

/** What was told, as the note says that it came out; `other`: otherwise than was told, so that it is asked. */
interface Came extends Told {
  readonly other: boolean;
}

const BAD = new Set<Fact['kind']>(['held', 'missing', 'fault']);

/** "Green didn't" turns what passed into a failure, to be asked about; `null` where there is nothing to be turned. */
function asItCame(told: Told, { came }: Sameness): Came | null {
  const { facts } = told;
  if (came === undefined) return { ...told, other: false };
  if (came === 'good') {
    const passed = facts.map((fact) => ('outcome' in fact ? { ...fact, outcome: 'passed' as const } : fact));
    return { ...told, facts: passed, other: canonical(passed) !== canonical(facts) };
  }
  if (facts.every((fact) => BAD.has(fact.kind) || ('outcome' in fact && fact.outcome === 'failed')))
    return { ...told, other: false };
  const turned = facts.flatMap((fact) =>
    'outcome' in fact ? [{ ...fact, outcome: 'failed' as const }] : [],
  );
  return turned.length === facts.length ? { ...told, facts: turned, other: true } : null;
}

/** Item lists that the words can mean; a bare number only where tips were spoken of. */
function namedOf(
  session: Session,
  words: string,
  note: Leaning,
  before: Told,
): { readonly lists: readonly (readonly Item[])[]; readonly more: boolean; readonly none?: string } {
  const other = otherScanner(session, words, note, before);
  if (other !== null) return { lists: [other], more: false };
  const { scanners, tips, loads, plainlyTips, more, none } = itemsNamed(session, words, note);
  const ofTips = plainlyTips || before.items.some((item) => item.startsWith('tip:'));
  const lists = [ofTips ? tips : [], scanners, loads].filter((items) => items.length > 0);
  return { lists, more, ...(none === undefined || !ofTips ? {} : { none }) };
}

function noSuchTip(id: string): FollowOn {
  return { sort: 'asked', head: [{ strong: `There is no tip ${id}.` }], options: [] };
}

/** Each kind of what was told, said of these items; of somebody else's note nothing but what was done. */
function optionsFor(
  { practice }: Session,
  { facts }: Told,
  items: readonly Item[],
  when: string,
  isOwn: boolean,
): readonly Option[] {
  const kinds = [...new Set(facts.map(({ kind }) => kind))];
  const each = kinds.flatMap((kind) => {
    const same = sameOf(isOwn ? ofKind(facts, kind) : ofKind(facts, kind).map(ofAnybody), items, when);
    return same === null ? [] : [same];
  });
  const all = each.length > 1 ? [...each, each.flat()] : each;
  return all.map((meant, n) => ({
    value: `${n + 1}`,
    label:
      n > 0 && n === each.length
        ? 'all of that'
        : meant.map((fact) => factWords(practice, bare(fact))).join('; '),
    facts: meant,
  }));
}

function ofKind(facts: readonly Fact[], kind: Fact['kind']): readonly Fact[] {
  return facts.filter((fact) => fact.kind === kind);
}

/** Where and on what it was done is the other person's. */
function ofAnybody(fact: Fact): Fact {
  const { by: _by, ...rest } = fact;
  if (rest.kind !== 'used') return rest;
  const { scanner: _scanner, ...used } = rest;
  return used;
}

/** Without somebody's own words. */
export function bare(fact: Fact): Fact {
  if (!('reason' in fact)) return fact;
  const { reason: _, ...rest } = fact;
  return rest;
}

function asked(
  { practice }: Session,
  items: readonly Item[],
  options: readonly Option[],
  too: string,
): FollowOn {
  const tips = items.every((item) => item.startsWith('tip:'));
  const name = tips ? tipsAsRanges(items.map(idOf)) : inWords(items.map((item) => itemWords(practice, item)));
  const [only, more] = options;
  const head =
    only !== undefined && more === undefined
      ? [{ strong: `${capital(only.label)}${too}?` }]
      : [{ strong: `${capital(name)} as well – what of it?` }];
  return { sort: 'asked', head, options };
}
