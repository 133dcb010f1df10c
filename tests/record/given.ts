import type { Practice } from '../../core/practice/practice.ts';
import type { Fact } from '../../core/reading/fact.ts';
import type { Decision } from '../../core/record/decision.ts';
import { makeEntry } from '../../core/record/make-entry.ts';
import type { FindingKind, FindingOf, State } from '../../core/record/state.ts';
import { Timeline } from '../../core/record/timeline.ts';
import type { Vouched } from '../../core/record/vouched.ts';
import { toIso } from '../../core/time/instant.ts';
import { ferngate, LEAD, QUAY_ROOM, STAFF } from './ferngate.ts';

type WithoutWhen<T> = T extends unknown ? Omit<T, 'when'> : never;
/** A fact or decision without its time, which the test says beside it. */
export type Told = WithoutWhen<Fact> | WithoutWhen<Decision>;

interface Author {
  readonly from: string;
  readonly vouched?: Vouched;
}

/** `09:30` is on Monday 23 November 2026 (London is on UTC); `+1 09:30` on the day after. */
export function at(time: string): number {
  const [, days = '0', clock = ''] = /^(?:\+(\d+) )?(\d\d:\d\d)$/.exec(time) ?? [];
  return Date.parse(`2026-11-23T${clock}:00Z`) + Number(days) * 86_400_000;
}

/** A record in the making: each note is a turn of its own. */
export class Given {
  readonly timeline: Timeline;
  #turn = 0;

  constructor(practice: Practice = ferngate()) {
    this.timeline = new Timeline(practice);
  }

  /** A note by a member of staff at the quay. */
  note(time: string, ...told: readonly Told[]): this {
    return this.by(STAFF, time, ...told);
  }

  /** A note by the lead. */
  lead(time: string, ...told: readonly Told[]): this {
    return this.by(LEAD, time, ...told);
  }

  by(from: string, time: string, ...told: readonly Told[]): this {
    return this.#add({ from }, time, told);
  }

  /** A note of which the chat says how far it vouches for its author. */
  typed(from: string, vouched: Vouched, time: string, ...told: readonly Told[]): this {
    return this.#add({ from, vouched }, time, told);
  }

  #add(author: Author, time: string, told: readonly Told[]): this {
    this.#turn += 1;
    const when = at(time);
    const turn = this.#turn;
    this.timeline.add(
      told.map((what, index) =>
        makeEntry({
          what: { when: toIso(when), ...what } as Fact | Decision,
          turn,
          index,
          noted: when,
          by: author.from,
          ...author,
          room: QUAY_ROOM,
        }),
      ),
    );
    return this;
  }

  get turn(): number {
    return this.#turn;
  }

  get state(): State {
    return this.timeline.state;
  }

  tip(id: string) {
    const tip = this.state.tips.get(id);
    if (tip === undefined) throw new Error(`no tip ${id}`);
    return tip;
  }

  scanner(id: string) {
    const scanner = this.state.scanners.get(id);
    if (scanner === undefined) throw new Error(`no scanner ${id}`);
    return scanner;
  }

  load(number: string) {
    const key = this.state.loadsByNumber.get(number)?.at(-1)?.key;
    const load = key === undefined ? undefined : this.state.loads.get(key);
    if (load === undefined) throw new Error(`no load ${number}`);
    return load;
  }

  found<K extends FindingKind>(kind: K): FindingOf<K>[] {
    return this.state.history.findings.recent().filter((each): each is FindingOf<K> => each.kind === kind);
  }
}

export function given(practice?: Practice): Given {
  return new Given(practice);
}

/** Tips that have just come out of a good load, `118` unless another number is said. */
export function sterile(
  record: Given,
  ids: readonly string[],
  load = '118',
  start = '08:00',
  end = '08:30',
): Given {
  return record
    .note(start, { kind: 'load-started', load, tips: [...ids] })
    .note(end, { kind: 'load-finished', load, outcome: 'passed', celsius: 134, minutes: 3.5 });
}
