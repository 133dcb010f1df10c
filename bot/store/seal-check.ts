import { commitment } from './erasable.ts';
import type { JournalLine } from './line.ts';
import type { People } from './people.ts';
import type { Texts } from './texts.ts';
import { valueAt } from './unseal.ts';

const pseudonymPattern = /^p[1-9]\d{0,8}$/;

/** Holds names and texts beside the chain against the commitments in it, line by line. */
export class SealCheck {
  /** Names and texts that were asked to be forgotten. */
  forgotten = 0;
  readonly #people: People;
  readonly #texts: Texts;
  readonly #known = new Set<string>();

  constructor(people: People, texts: Texts) {
    this.#people = people;
    this.#texts = texts;
  }

  /** What is wrong with what a line names, in plain words, or null. */
  fault(line: JournalLine): string | null {
    for (const [pseudonym, of] of Object.entries(line.people ?? {})) {
      const fault = this.#personFault(line.n, pseudonym, of);
      if (fault !== null) return fault;
    }
    for (const pointer of line.sealed ?? []) {
      const fault = this.#valueFault(line.n, valueAt(line.turn, pointer));
      if (fault !== null) return fault;
    }
    return null;
  }

  #personFault(n: number, pseudonym: string, of: string): string | null {
    if (!pseudonymPattern.test(pseudonym) || this.#known.has(pseudonym))
      return `${pseudonym} is named a second time`;
    const entry = this.#people.entry(pseudonym);
    if (entry === null || entry.n !== n) return `the name of ${pseudonym} is missing from people.jsonl`;
    this.#known.add(pseudonym);
    if (entry.name === null && entry.salt === null) this.forgotten++;
    else if (commitment(entry.salt ?? '', entry.name ?? '') !== of)
      return `the name of ${pseudonym} in people.jsonl was changed`;
    return null;
  }

  #valueFault(n: number, kept: unknown): string | null {
    if (typeof kept === 'string') return this.#known.has(kept) ? null : `${kept} was never named`;
    if (typeof kept !== 'object' || kept === null || !('ref' in kept) || !('sealed' in kept)) {
      return 'it names something beside it that is not there';
    }
    const ref = Number(kept.ref);
    const entry = this.#texts.entry(ref);
    if (entry === null || entry.n !== n) return `text ${ref} is missing from texts.jsonl`;
    if (entry.salt === null) this.forgotten++;
    else if (commitment(entry.salt ?? '', entry.text ?? '') !== kept.sealed)
      return `text ${ref} in texts.jsonl was changed`;
    return null;
  }
}
