import type { Reading, Unclear } from '../reading/reading.ts';
import { toIso } from '../time/instant.ts';
import type { Clause, NoteScope } from './clause.ts';
import type { Interpretation } from './interpret.ts';
import type { Gap, NoteRead, Why } from './read.ts';
import { wordsOf } from './reasons.ts';
import type { Made, Missing } from './result.ts';
import type { When } from './when.ts';
import { clauseWords, type Slots, slotsFor, whence } from './why-slots.ts';

type Entry = Record<string, unknown> & { kind: string };

/** Kinds whose `when` is when it became known: the time in the note is of something else. */
const KNOWN_NOW = new Set(['booked', 'cancelled', 'closed', 'hours', 'added', 'spore-test']);

/** Kinds that a note may well tell twice over: two scans, two readings. */
const SEVERAL = new Set(['scan-started', 'scan-finished', 'temperature', 'booked', 'cancelled', 'used']);

/** Gathers what a note says, in the order said, with why. */
export class Output {
  readonly #scope: NoteScope;
  readonly #lists: Record<keyof Reading, Entry[]> = { facts: [], asks: [], acts: [], plans: [], unclear: [] };
  readonly #gaps: Gap[] = [];
  readonly #why: Why[] = [];
  readonly #faults = new Map<string, string>();
  /** How well what was read explains the note: evidence for less what is left unexplained. */
  score = 0;
  /** Strange words inside what was read. */
  explained = 0;

  constructor(scope: NoteScope) {
    this.#scope = scope;
  }

  get empty(): boolean {
    return this.#lists.facts.length === 0;
  }

  act(made: Made): void {
    const { until, ...rest } = made.entry;
    const entry = typeof until === 'number' ? { ...rest, until: toIso(until) } : { ...rest };
    this.#push('acts', entry, `act:${made.entry.kind}`, { note: { said: this.#scope.note.trim() } });
  }

  ask(made: Made, rule: string, clause: Clause, missing: Missing | undefined): void {
    if (missing !== undefined) this.#unclear(missing, 'asks', { ...made.entry }, rule, clause);
    else this.#push('asks', made.entry, rule, slotsFor(made.entry, made.said, clause, this.#scope));
  }

  /** A clause in doubt: nothing of it is recorded. */
  doubted(found: Interpretation): void {
    const [first] = found.result.made;
    // A doubt that is ours alone holds nothing back until it is answered.
    const ours = found.result.doubtful === true;
    const of =
      first === undefined || ours ? undefined : itemOf(first.entry, Array.isArray(first.said.autoclave));
    const unclear: Entry = { kind: 'unclear', about: 'certainty', ...(of === undefined ? {} : { of }) };
    const draft =
      first === undefined
        ? {}
        : { draft: { list: 'facts' as const, entry: { ...first.entry, when: toIso(this.#scope.time.at) } } };
    this.#gaps.push({ unclear: unclear as unknown as Unclear, ...draft, form: 'confirm' });
    this.#push('unclear', unclear, `doubt:${found.frame.name}`, clauseWords(found.clause, this.#scope));
  }

  /** Counts what a clause explained. */
  weighIn(strength: number, cost: number, strange: number): void {
    this.score += strength - 2 * cost;
    this.explained += strange;
  }

  /** What a clause says: its facts, or what it means to do, or what is missing. */
  clause(
    found: Interpretation,
    planned: boolean,
    more: Record<string, unknown>,
    when: (site: string | null) => When,
  ): void {
    const { result, clause, frame } = found;
    const list = planned ? 'plans' : 'facts';
    for (const made of result.made) {
      const time = this.#timeOf(made, when);
      const fact = this.#dated(planned ? asPlanned(made.entry) : made.entry, more, time, clause);
      const entry = planned ? { kind: 'plan', fact } : fact;
      const missing = result.missing ?? (time.doubt && !planned ? TIME_MISSING : undefined);
      if (missing !== undefined) {
        this.#unclear(missing, list, entry, frame.name, clause);
        return;
      }
      this.#keepFault(fact, clause);
      const slots = {
        ...slotsFor(fact, made.said, clause, this.#scope),
        when: whence(time.said, clause, this.#scope),
      };
      this.#push(list, entry, frame.name, slots);
    }
  }

  /**
   * "Scrubbed and rinsed at 16:10", "wiped at 9 and disinfected": one thing told by two words is one fact, at the time
   * that one of them says. True where the entry is spent on the last.
   */
  #saidOnce(last: Entry, entry: Entry, slots: Slots): boolean {
    if (
      SEVERAL.has(entry.kind) ||
      /\bagain\b|\bre-?(cal|wiped|washed|scan)/i.test(this.#scope.note) ||
      !sameBut(['when', 'earliest'], last, entry)
    )
      return false;
    const own = this.#why.findLast((why) => why.list === 'facts')?.slots.when;
    const untimed = own !== undefined && 'filledIn' in own;
    const again = slots.when !== undefined && 'filledIn' in slots.when;
    if (untimed && !again) Object.assign(last, entry);
    return untimed || again;
  }

  #timeOf(made: Made, when: (site: string | null) => When): When {
    if (!KNOWN_NOW.has(made.entry.kind))
      return when(typeof made.entry.site === 'string' ? made.entry.site : null);
    return { slots: { when: toIso(this.#scope.time.at) }, said: "the note's own time", doubt: false };
  }

  #keepFault(fact: Entry, clause: Clause): void {
    if (fact.kind !== 'fault' || typeof fact.item !== 'string') return;
    this.#faults.set(fact.item, wordsOf(clause.parts, this.#scope));
  }

  /** The words that told a fault of this item earlier in the note. */
  faultWords(item: string): string | null {
    return this.#faults.get(item) ?? null;
  }

  done(): NoteRead {
    return { reading: this.#lists as unknown as Reading, gaps: this.#gaps, why: this.#why };
  }

  #dated(entry: Entry, more: Record<string, unknown>, time: When, clause: Clause): Entry {
    // A spore test's day is when it was run: it became known with the note.
    if (entry.kind === 'spore-test')
      return {
        ...entry,
        ...(entry.outcome === 'running' && tellsLater(clause) ? {} : ranOf(clause, this.#scope)),
        when: toIso(this.#scope.time.at),
        ...more,
      };
    return { ...entry, ...time.slots, ...more };
  }

  #unclear(
    missing: Missing,
    list: 'facts' | 'asks' | 'plans',
    entry: Record<string, unknown>,
    rule: string,
    clause: Clause,
  ): void {
    const unclear: Entry = {
      kind: 'unclear',
      about: missing.about,
      ...(missing.choices === undefined ? {} : { choices: [...missing.choices] }),
      ...(missing.of === undefined ? {} : { of: missing.of }),
    };
    this.#gaps.push({
      unclear: unclear as unknown as Unclear,
      draft: { list, entry },
      slot: missing.slot,
      form: missing.form,
      ...(missing.words === undefined ? {} : { words: missing.words }),
    });
    this.#push('unclear', unclear, rule, clauseWords(clause, this.#scope));
  }

  #push(list: keyof Reading, entry: Entry, rule: string, slots: Slots): void {
    const same = JSON.stringify(entry);
    if (this.#lists[list].some((one) => JSON.stringify(one) === same)) {
      if (list === 'unclear') this.#gaps.pop();
      return;
    }
    const last = this.#lists[list].at(-1);
    if (list === 'facts' && last !== undefined && last.kind === entry.kind) {
      if (opensAndShuts(last, entry)) {
        Object.assign(last, { ...entry, ...last });
        return;
      }
      if (within(entry, last) || this.#saidOnce(last, entry, slots)) return;
      if (within(last, entry)) {
        this.#lists[list].pop();
        this.#why.pop();
      }
    }
    this.#lists[list].push(entry);
    this.#why.push({ list, index: this.#lists[list].length - 1, rule, slots });
  }
}

const TIME_MISSING: Missing = { about: 'time', slot: 'when', form: 'confirm' };

/** Who means to leave for somewhere means to arrive. */
function asPlanned(entry: Entry): Entry {
  return entry.kind === 'departed' && typeof entry.site === 'string' ? { ...entry, kind: 'moved' } : entry;
}

/** "Opens at 7 and closes at 3": one day's hours told in two clauses. */
function opensAndShuts(first: Entry, second: Entry): boolean {
  if (first.kind !== 'hours' || first.day !== second.day) return false;
  if (second.site !== undefined && second.site !== first.site) return false;
  const [opens, shuts] = [first, second].map((entry) => entry.open !== undefined && entry.shut === undefined);
  return opens === true && shuts === false && second.open === undefined;
}

/** True where two entries differ in these slots alone. */
function sameBut(free: readonly string[], one: Entry, other: Entry): boolean {
  const slots = new Set([...Object.keys(one), ...Object.keys(other)]);
  return [...slots].every(
    (slot) => free.includes(slot) || JSON.stringify(one[slot]) === JSON.stringify(other[slot]),
  );
}

/** True where everything that one entry says the other says too. */
function within(less: Entry, more: Entry): boolean {
  return Object.entries(less).every(([slot, value]) => JSON.stringify(more[slot]) === JSON.stringify(value));
}

/** The item that an entry is about, where it is one only. */
function itemOf(entry: Entry, named: boolean): string | undefined {
  if (typeof entry.load === 'string')
    return `load:${named && typeof entry.autoclave === 'string' ? `${entry.autoclave}/` : ''}${entry.load}`;
  if (typeof entry.item === 'string') return entry.item;
  const tips = entry.tips;
  if (Array.isArray(tips) && tips.length === 1) return `tip:${tips[0]}`;
  const items = entry.items;
  if (Array.isArray(items) && items.length === 1) return String(items[0]);
  if (typeof entry.tip === 'string') return `tip:${entry.tip}`;
  return typeof entry.scanner === 'string' ? `scanner:${entry.scanner}` : undefined;
}

/** "BI in, result Thursday": the day is when it will be known. */
function tellsLater(clause: Clause): boolean {
  return clause.word(/^(result|results|reading|read|due|ready|back|know|answer)$/) >= 0;
}

function ranOf(clause: Clause, scope: NoteScope): { ran?: string } {
  const time = clause.first('time');
  if (time === null || time.entity.span.days.length === 0) return {};
  const days = scope.days(time.entity.span);
  return days === null ? {} : { ran: days };
}
