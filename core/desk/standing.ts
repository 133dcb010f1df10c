import { changedRules } from '../defaults/changed-rules.ts';
import type { LearnedWord, Reader } from '../language/read.ts';
import type { Practice } from '../practice/practice.ts';
import type { Archive } from '../record/archive.ts';
import { makeEntry } from '../record/make-entry.ts';
import { Timeline, type TimelineOptions } from '../record/timeline.ts';
import { apply, instantOf } from './apply.ts';
import type { Readers } from './readers.ts';
import type { SavedDesk } from './saved-desk.ts';
import type { Turn } from './turn.ts';
import { withAdded } from './with-added.ts';

/** How a desk's record is kept: see `TimelineOptions`. */
export interface DeskOptions extends TimelineOptions {
  readonly archive: Archive;
}

/** Who changed a rule, as the record says it: whoever keeps that file. */
export const PRACTICE_FILE = 'practice file';

/** What holds once a practice file was taken: the practice, the record of it, and how its notes are read. */
export class Standing {
  readonly practice: Practice;
  readonly file: string;
  readonly timeline: Timeline;
  readonly learned: readonly LearnedWord[];
  readonly #readers: Readers;
  /** Made when it is needed: reading a journal back passes by thousands. */
  #read: Reader | null = null;

  private constructor(
    readers: Readers,
    practice: Practice,
    file: string,
    timeline: Timeline,
    learned: readonly LearnedWord[],
  ) {
    this.#readers = readers;
    this.practice = practice;
    this.file = file;
    this.timeline = timeline;
    this.learned = learned;
  }

  /**
   * Takes a practice file, after the one in force where there is one: what came before stays judged by the old file.
   * Throws RangeError on a file with mistakes. `options`: for the timeline of a record that begins here.
   */
  static take(
    readers: Readers,
    file: string,
    before: Standing | null,
    { turn, at, options }: { turn: number; at: string; options: TimelineOptions },
  ): Standing {
    const practice = readers.practiceIn(file);
    if (practice === null)
      throw new RangeError('a practice file with mistakes cannot be taken into the record');
    if (before === null) return new Standing(readers, practice, file, new Timeline(practice, options), []);
    const whole = { kind: 'practice', when: at, file: JSON.stringify(practice) } as const;
    const changes = changedRules(before.practice, practice).map((change) => {
      return { kind: 'rule-changed', when: at, by: PRACTICE_FILE, ...change } as const;
    });
    const place = { turn, noted: instantOf(at), by: null, from: '', room: '' };
    before.timeline.add([whole, ...changes].map((what, index) => makeEntry({ what, index, ...place })));
    return new Standing(readers, practice, file, before.timeline, before.learned);
  }

  /** What `save` gave; `null` where its practice file can no longer be read. `options`: with the archive as it was then. */
  static restore(
    readers: Readers,
    saved: Pick<SavedDesk, 'file' | 'learned' | 'timeline'>,
    options: DeskOptions,
  ): Standing | null {
    const practice = readers.practiceIn(saved.file);
    if (practice === null) return null;
    return new Standing(
      readers,
      practice,
      saved.file,
      Timeline.restore(saved.timeline, options),
      saved.learned,
    );
  }

  /** `cut` as in `Timeline.save`. */
  save(cut?: SavedDesk['timeline']['through']): Pick<SavedDesk, 'file' | 'learned' | 'timeline'> {
    return { file: this.file, learned: this.learned, timeline: this.timeline.save(cut) };
  }

  /** The reader of this practice's notes, with the words it has learned and the tips that notes have added. */
  get read(): Reader {
    this.#read ??= this.#readers.for(this.file, withAdded(this.practice, this.timeline.state), this.learned);
    return this.#read;
  }

  /** Folds what a turn says into the record. */
  fold(turn: Turn): void {
    for (const place of turn.setsAside ?? []) this.timeline.setAside(place);
    apply(this.timeline, turn.entries ?? []);
  }

  /** The same with the words that the record knows now, where this turn may have taught or taken back any. */
  taught(turn: Turn): Standing {
    const { setsAside = [], entries = [] } = turn;
    const teaches = entries.some(({ what }) => what.kind === 'word' || what.kind === 'added');
    if (setsAside.length === 0 && !teaches) return this;
    const learned = [...this.timeline.state.words].map(([words, { means }]) => ({ words, means }));
    return new Standing(this.#readers, this.practice, this.file, this.timeline, learned);
  }
}
