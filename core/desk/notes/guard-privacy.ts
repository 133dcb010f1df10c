import type { NoteRead } from '../../language/read.ts';
import type { Practice } from '../../practice/practice.ts';
import { findPersonal, type PersonalSort } from '../../privacy/find-personal.ts';
import { type Instant, toIso } from '../../time/instant.ts';
import { lines, type Message } from '../../words/message.ts';

const WORDS: Readonly<Record<PersonalSort, string>> = {
  'health-number': 'a health-service number',
  'date-of-birth': 'a date of birth',
  phone: 'a phone number',
  'e-mail': 'an e-mail address',
  'patient-name': 'a patient’s name',
};

/** A note as it may be kept, and what is to be asked of its author. */
export interface Guarded {
  readonly read: NoteRead;
  readonly message: Message | null;
}

/**
 * Asks to remove a note that carries what looks like a patient's identity. What is recorded from such a note keeps no
 * words of it: reasons, names said and words not known are left out.
 */
export function guardPrivacy(practice: Practice, noted: Instant, text: string, read: NoteRead): Guarded {
  const year = Number(toIso(noted).slice(0, 4));
  const found = findPersonal(text, { year, ownNames: ownNames(practice) });
  if (found.length === 0) return { read, message: null };
  const what = found.map((sort) => WORDS[sort]).join(' and ');
  const kept = read.reading.facts.length > 0 ? ' What you recorded is kept without those words.' : '';
  const message = lines(
    [{ strong: 'Please delete or edit that note:' }, ` it seems to hold ${what}.`],
    `No patient belongs in this record.${kept}`,
  );
  return { read: withoutWords(read), message };
}

/** A reading that says the same of our things and keeps no words of the note. */
function withoutWords({ reading, gaps }: NoteRead): NoteRead {
  const { facts, acts, asks, plans, unclear } = reading;
  return {
    reading: {
      facts: facts.map(bare),
      acts: acts.map((act) => (act.kind === 'close' ? { kind: 'close' } : act)),
      asks,
      plans: plans.map((plan) => ({ ...plan, fact: bare(plan.fact) })),
      unclear,
    },
    gaps: gaps.map(({ words: _words, draft: gapDraft, ...gap }) =>
      gapDraft === undefined ? gap : { ...gap, draft: { ...gapDraft, entry: bare(gapDraft.entry) } },
    ),
    why: [],
  };
}

/** An entry without a person's name and without its reason. */
function bare<T extends object>(entry: T): T {
  return Object.fromEntries(
    Object.entries(entry).filter(([slot]) => slot !== 'by' && slot !== 'reason'),
  ) as T;
}

/** Names of the practice's own people, places and things, in lower case, word by word. */
function ownNames(practice: Practice): ReadonlySet<string> {
  const known = names.get(practice);
  if (known !== undefined) return known;
  const named = [...practice.sites, ...practice.scanners, ...practice.autoclaves, ...practice.people];
  const rooms = practice.sites.flatMap((site) => site.rooms);
  const words = [...named, ...rooms]
    .flatMap((one) => [one.name, ...one.also])
    .flatMap((name) => name.split(/\s+/));
  const own = new Set(words.map((word) => word.toLowerCase()));
  names.set(practice, own);
  return own;
}

/** A practice is never changed, only replaced. */
const names = new WeakMap<Practice, ReadonlySet<string>>();
