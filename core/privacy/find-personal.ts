import { isHealthNumber } from './health-number.ts';

/** What in a note looks like a patient's identity. */
export type PersonalSort = 'health-number' | 'date-of-birth' | 'phone' | 'e-mail' | 'patient-name';

export interface PersonalContext {
  /** Year of the note. */
  readonly year: number;
  /** Names of the practice's own people, places and scanners: never a patient's. */
  readonly ownNames: ReadonlySet<string>;
}

/** Words before a long number that make it one of ours: a load, a serial, a lot. */
const OUR_NUMBER =
  /\b(?:load|loads|cycle|run|batch|lot|serial|ref|no|number|order|invoice|tips?|model|pin|code)\W{0,3}$/i;

/**
 * What looks like a patient's identity in a note, each sort once. Long notes are looked at whole: every expression here
 * is bounded, so cost is linear. What is ours (load numbers, times, chat identities) is left alone.
 */
export function findPersonal(text: string, context: PersonalContext): readonly PersonalSort[] {
  const found = new Set<PersonalSort>();
  if (hasEmail(text)) found.add('e-mail');
  if (hasBirthDate(text, context.year)) found.add('date-of-birth');
  for (const sort of numberSorts(text)) found.add(sort);
  if (hasPatientName(text, context.ownNames)) found.add('patient-name');
  return [...found];
}

function hasEmail(text: string): boolean {
  return /[\w.+-]{1,64}@[\w-]{1,63}(?:\.[\w-]{1,63}){1,5}/.test(text);
}

/** "dob 3/4/80", "born 12 May 1976", or a full date of more than ten years ago, which no note about a scanner needs. */
function hasBirthDate(text: string, year: number): boolean {
  if (/\b(?:d\.?o\.?b\.?|date of birth|born(?: on)?|birth ?date)\b[^\d\n]{0,12}\d{1,4}/i.test(text))
    return true;
  const dates = text.matchAll(/\b\d{1,2}[./-]\d{1,2}[./-]((?:19|20)\d\d)\b|\b((?:19|20)\d\d)-\d\d-\d\d\b/g);
  return [...dates].some((match) => Number(match[1] ?? match[2]) < year - 10);
}

function* numberSorts(text: string): Generator<PersonalSort> {
  for (const match of text.matchAll(/[+(]?\d(?:[\d() .-]{7,18})\d/g)) {
    if (OUR_NUMBER.test(text.slice(Math.max(0, match.index - 12), match.index))) continue;
    const written = match[0];
    const digits = written.replaceAll(/\D/g, '');
    if (isHealthNumber(digits) && /^\d{10}$|^\d{3}[ -]\d{3}[ -]\d{4}$/.test(written)) yield 'health-number';
    else if (isPhone(written, digits)) yield 'phone';
  }
}

/** Ten to thirteen digits that begin with a trunk 0 or +, or three-three-four with separators as in North America. */
function isPhone(written: string, digits: string): boolean {
  if (/\d{1,2}[.:]\d\d\D+\d{1,2}[.:]\d\d/.test(written)) return false;
  if (/^\+|^\(?0/.test(written)) return digits.length >= 10 && digits.length <= 13;
  return /^\(?\d{3}\)?[ .-]\d{3}[ .-]\d{4}$/.test(written);
}

/** "patient Jane Smith", "pt Mrs Patel", "patient's name is …": the word and a name, never the word alone. */
function hasPatientName(text: string, ownNames: ReadonlySet<string>): boolean {
  if (/\b(?:patient|pt)(?:'s|’s)? (?:name is|called|named)\s+\p{L}/iu.test(text)) return true;
  if (/\b(?:patient|pt)\W{1,3}(?:mr|mrs|ms|miss|master|dr)\.?\s+\p{L}{2}/iu.test(text)) return true;
  const named = text.matchAll(/\b[Pp](?:atient|t)\W{1,3}(\p{Lu}\p{Ll}{1,20})(?:\s+(\p{Lu}\p{Ll}{1,20}))?/gu);
  return [...named].some(([, first = '', second]) => {
    if (ownNames.has(first.toLowerCase())) return false;
    return second !== undefined && !ownNames.has(second.toLowerCase());
  });
}
