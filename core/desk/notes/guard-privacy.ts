import { lines } from '../../answers/message.ts';
import type { Practice } from '../../practice/practice.ts';
import { findPersonal, type PersonalSort } from '../../privacy/find-personal.ts';
import type { Fact } from '../../reading/fact.ts';
import { toIso } from '../../time/instant.ts';
import type { Session, Speaker } from '../session.ts';

const WORDS: Readonly<Record<PersonalSort, string>> = {
  'health-number': 'a health-service number',
  'date-of-birth': 'a date of birth',
  phone: 'a phone number',
  'e-mail': 'an e-mail address',
  'patient-name': 'a patient’s name',
};

/**
 * Asks to remove a note that carries what looks like a patient's identity. What is recorded from such a note keeps no
 * words of it: reasons and names said are left out.
 */
export function guardPrivacy(
  session: Session,
  speaker: Speaker,
  text: string,
  facts: readonly Fact[],
): readonly Fact[] {
  const { practice, draft } = session;
  const year = Number(toIso(speaker.noted).slice(0, 4));
  const found = findPersonal(text, { year, ownNames: ownNames(practice) });
  if (found.length === 0) return facts;
  const what = found.map((sort) => WORDS[sort]).join(' and ');
  const message = lines(
    [{ strong: 'Please delete or edit that note:' }, ` it seems to hold ${what}.`],
    'No patient belongs in this record. What you recorded is kept without those words.',
  );
  draft.post(speaker.room, { about: 'privacy', message, replyTo: speaker.note, mentions: [speaker.from] });
  return facts.map(withoutWords);
}

function withoutWords(fact: Fact): Fact {
  const { by: _by, ...rest } = fact;
  if ('reason' in rest) {
    const { reason: _reason, ...kept } = rest;
    return kept as Fact;
  }
  return rest as Fact;
}

/** Names of the practice's own people, places and things, in lower case, word by word. */
function ownNames(practice: Practice): ReadonlySet<string> {
  const named = [...practice.sites, ...practice.scanners, ...practice.autoclaves, ...practice.people];
  const rooms = practice.sites.flatMap((site) => site.rooms);
  const words = [...named, ...rooms]
    .flatMap((one) => [one.name, ...one.also])
    .flatMap((name) => name.split(/\s+/));
  return new Set(words.map((word) => word.toLowerCase()));
}
