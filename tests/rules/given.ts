import { PostLog } from '../../core/desk/post-log.ts';
import type { Practice } from '../../core/practice/practice.ts';
import type { Said, SaidKind, SaidOf } from '../../core/record/entry.ts';
import { makeEntry } from '../../core/record/make-entry.ts';
import type { State } from '../../core/record/state.ts';
import { Timeline } from '../../core/record/timeline.ts';
import type { Stage, View } from '../../core/rules/matter.ts';
import { type Instant, toIso } from '../../core/time/instant.ts';
import { toInstant } from '../../core/time/zone.ts';
import { practiceIn } from '../practice/base-file.ts';

/** A fact or decision without its `when`: that is the note's own unless said. */
export type Told = { [K in SaidKind]: Omit<SaidOf<K>, 'when'> & { readonly when?: string } }[SaidKind];

interface NoteParts {
  /** Chat id; `@rosa:example.org` where it does not matter. */
  readonly from?: string;
  readonly room?: string;
  /** Local time at which it was typed, where that is later than what it says. */
  readonly noted?: string;
}

/**
 * A record made of notes for given/when/then: `given.note('2026-11-23 10:15', {kind: 'wiped', …})`, then
 * `given.view('2026-11-23 10:30')`. Times are local to `zone`, the practice's unless said; an ISO instant is taken as it is.
 */
export class Given {
  readonly practice: Practice;
  readonly said = new PostLog();
  readonly timeline: Timeline;
  readonly zone: string;
  #turn = 0;

  constructor(practice: Practice | string, zone?: string) {
    this.practice = typeof practice === 'string' ? practiceIn(practice) : practice;
    this.zone = zone ?? this.practice.timezone;
    this.timeline = new Timeline(this.practice);
  }

  get state(): State {
    return this.timeline.state;
  }

  at(local: string): Instant {
    if (local.endsWith('Z')) return Date.parse(local);
    return toInstant(local.slice(0, 10), local.slice(11), this.zone);
  }

  /** One note with everything it tells; gives its turn, so that a test can set it aside. */
  note(local: string, told: Told | readonly Told[], parts: NoteParts = {}): number {
    const turn = ++this.#turn;
    const { from = '@rosa:example.org', room = '!quay:example.org' } = parts;
    const noted = this.at(parts.noted ?? local);
    const entries = [told].flat().map((one, index) => {
      // Told is Said but for `when`; the spread puts it back.
      const what = { when: toIso(this.at(local)), ...one } as Said;
      return makeEntry({ what, turn, index, noted, by: from, from, room });
    });
    this.timeline.add(entries);
    this.said.spoke(from, noted);
    return turn;
  }

  /** A matter's stage was delivered then. */
  told(key: string, stage: Stage, local: string): this {
    this.said.said(key, stage, this.at(local));
    return this;
  }

  view(local: string): View {
    return { practice: this.practice, state: this.timeline.state, said: this.said, now: this.at(local) };
  }
}
