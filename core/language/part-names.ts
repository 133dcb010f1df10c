import { capital, type Found, matchAt, type Scan, textAt } from './mentions/scan.ts';
import type { Entity, Part } from './part.ts';
import type { Match, Sense } from './table.ts';

/** "The strip stayed white" where a scanner is called white too. */
function colourOfStrip(scan: Scan, at: number): boolean {
  return (
    /^(stayed|stays|still|went|gone|turned|remained|stay|go|turn)$/.test(textAt(scan, at - 1)) &&
    scan.texts.some((text) => /^(strip|strips|indicator|indicators|tst|integrator)$/.test(text))
  );
}

/** The thing or place of the practice that a match names; `null` where it names none. */
export function namedAt(scan: Scan, at: number, match: Match | null): Found | null {
  if (match === null) return null;
  const { senses, to } = match;
  const by = (tag: string) => senses.find((s) => s.tag === tag);
  const scanner = by('scanner-name') ?? by('scanner-bare');
  const site = by('site');
  const rooms = senses.filter((s) => s.tag === 'room').map((s) => s.ref);
  const common = senses.some((s) => s.sort !== 'name' && s.sort !== 'other' && s.sort !== 'person');
  const autoclave = by('autoclave-name');
  const entity = ((): Entity | null => {
    if (scanner !== undefined) {
      if (scanner.tag === 'scanner-bare' && colourOfStrip(scan, at)) return null;
      const ids = [...new Set(senses.filter((s) => s.tag === scanner.tag).map((s) => s.ref))];
      return { is: 'scanner', ids, named: scanner.tag === 'scanner-name' ? 'name' : 'bare' };
    }
    if (rooms.length > 0) return { is: 'room', rooms, said: scan.texts.slice(at, to).join(' ') };
    if (site !== undefined) return { is: 'site', id: site.ref, bare: to - at === 1 };
    if (autoclave !== undefined && !(common && to - at === 1)) return { is: 'autoclave', id: autoclave.ref };
    const tip = by('tip-name');
    if (tip !== undefined)
      return { is: 'tips', ids: [tip.ref], unknown: [], choices: [], except: [], named: true };
    return null;
  })();
  return entity === null ? null : { entity, to };
}

/** Names that are common words too: people only where they have their capital. */
const WORDLIKE = new Set(
  'will mark may april june dawn grace sue bill pat max joy hope penny dan sky violet ruby iris lily daisy heather hazel holly poppy rob art gene faye jack rose ivy eve jean carol frank drew ray bob nick harry jim don gay miles chip jo mo kit phil guy rich earl king ford dale glen cliff reed rusty sandy misty crystal amber jade pearl olive rosemary basil ginger melody harmony angel star autumn summer josh jess meg al ed sam ben deb lee'.split(
    ' ',
  ),
);

/** The person that a match names, where its capital or the practice file lets it be one. */
export function personAt(scan: Scan, at: number, match: Match): Part | null {
  const person =
    match.senses.find((s) => s.tag === 'person' && s.sort === 'name') ??
    match.senses.find((s) => s.tag === 'person');
  if (person === undefined) return null;
  const known = person.sort === 'name';
  const text = textAt(scan, at);
  const plain = match.senses.every((s) => s.tag === 'person');
  const didIt = known && MODAL_NAMES.has(text) && onlyPast(scan, match.to);
  if (
    !capital(scan, at) &&
    !didIt &&
    (!plain || (!known && WORDLIKE.has(text)) || (known && MODAL_NAMES.has(text)))
  )
    return null;
  // "Will calibrate": at the head of a note it is no Will.
  if (at === 0 && text === 'will' && !known && plainVerb(scan, match.to)) return null;
  const token = scan.tokens[at];
  const typed = token === undefined ? '' : scan.note.slice(token.start, scan.tokens[match.to - 1]?.end);
  const name = known ? person.ref : typed.charAt(0).toUpperCase() + typed.slice(1);
  return { ...plainPart(scan, at, match.to, match.senses), entity: { is: 'person', name, known } };
}

/** "May wiped down unit two": behind the verb "may" no past form stands. */
function onlyPast(scan: Scan, at: number): boolean {
  const verbs = (matchAt(scan, at)?.senses ?? []).filter((s) => s.sort === 'verb');
  return verbs.length > 0 && verbs.every((s) => s.form === 'd');
}

function plainVerb(scan: Scan, at: number): boolean {
  const senses = matchAt(scan, at)?.senses ?? [];
  return senses.some((s) => s.sort === 'verb' && s.form === 'b') && senses.every((s) => s.form !== 'd');
}

const MODAL_NAMES = new Set(['will', 'may', 'mark', 'rob', 'bill', 'sue', 'pat', 'max']);

/** A part that is a mention. */
export function entityPart(scan: Scan, from: number, found: Found, senses: readonly Sense[] = []): Part {
  return {
    from,
    to: found.to,
    text: textAt(scan, from),
    senses,
    entity: found.entity,
    mark: false,
    unknown: false,
  };
}

/** A part that is a word or phrase of the lexicon, a mark, or a word that nobody knows. */
export function plainPart(scan: Scan, from: number, to: number, senses: readonly Sense[]): Part {
  const mark = to - from === 1 && scan.tokens[from]?.kind === 'mark';
  const text = to - from === 1 ? textAt(scan, from) : scan.texts.slice(from, to).join(' ');
  return { from, to, text, senses, mark, unknown: senses.length === 0 && !mark };
}
