import type { Finding, Path } from '../mistakes.ts';
import { foldName } from '../names.ts';
import { type Entry, entriesOf, idOf, textOf, textsOf } from './raw.ts';

/** Names that two things share, and ids used twice: a note that says such a name could mean either. */
export function sharedNames(raw: unknown): readonly Finding[] {
  const sites = entriesOf(raw, 'sites');
  const rooms = sites.flatMap((site) => {
    return amongEach(entriesOf(site.fields, 'rooms', site.path), 'room', 'at this site');
  });
  return [
    ...amongPlaces(sites, entriesOf(raw, 'scanners')),
    ...rooms,
    ...amongEach(entriesOf(raw, 'autoclaves'), 'autoclave', 'of this practice'),
    ...amongPeople(entriesOf(raw, 'people')),
    ...twiceIn(entriesOf(raw, 'chat'), 'room', 'chat room'),
  ];
}

interface Named {
  readonly word: string;
  readonly path: Path;
  readonly sort: string;
  /** Where the thing stands in the file: two words of one thing share nothing. */
  readonly owner: string;
  readonly ownerName: string;
  readonly isId: boolean;
}

interface Clash extends Finding {
  readonly sameIds: boolean;
}

/** "Moved green to green" is no note: a word means a site or a scanner. Only their ids, among themselves, may be alike. */
function amongPlaces(sites: readonly Entry[], scanners: readonly Entry[]): readonly Finding[] {
  const siteWords = sites.flatMap((site) => wordsOf(site, 'site'));
  const scannerWords = scanners.flatMap((scanner) => wordsOf(scanner, 'scanner'));
  return unique([
    ...clashes(siteWords, 'of this practice'),
    ...clashes(scannerWords, 'of this practice'),
    ...clashes([...siteWords, ...scannerWords], 'of this practice').filter(({ sameIds }) => !sameIds),
  ]);
}

function amongEach(entries: readonly Entry[], sort: string, where: string): readonly Finding[] {
  return clashes(
    entries.flatMap((entry) => wordsOf(entry, sort)),
    where,
  );
}

function amongPeople(people: readonly Entry[]): readonly Finding[] {
  const words = people.flatMap((person) => wordsOf(person, 'person').filter((named) => !named.isId));
  return [...clashes(words, 'of this practice'), ...twiceIn(people, 'id', 'chat identity')];
}

function wordsOf(entry: Entry, sort: string): readonly Named[] {
  const id = idOf(entry);
  const name = textOf(entry, 'name');
  const owner = entry.path.join('.');
  const common = { sort, owner, ownerName: name ?? id ?? sort };
  const words: Named[] = [];
  if (id !== undefined) words.push({ ...common, word: id, path: [...entry.path, 'id'], isId: true });
  if (name !== undefined) words.push({ ...common, word: name, path: [...entry.path, 'name'], isId: false });
  for (const { text, path } of textsOf(entry, 'also'))
    words.push({ ...common, word: text, path, isId: false });
  return words;
}

function clashes(words: readonly Named[], where: string): readonly Clash[] {
  const first = new Map<string, Named>();
  const findings: Clash[] = [];
  for (const named of words) {
    const folded = foldName(named.word);
    const other = first.get(folded);
    if (other === undefined) first.set(folded, named);
    else if (other.owner !== named.owner) findings.push(clash(named, other, where));
  }
  return findings;
}

function clash(named: Named, other: Named, where: string): Clash {
  const sameIds = named.isId && other.isId;
  if (sameIds) {
    return {
      sameIds,
      path: named.path,
      at: 'value',
      wrong: `the id "${named.word}" belongs to another ${other.sort} ${where}`,
      right: 'an id that nothing else has (upper and lower case count as one)',
    };
  }
  return {
    sameIds,
    path: named.path,
    at: 'value',
    wrong: `"${named.word}" also means the ${other.sort} "${other.ownerName}"`,
    right: `a word that only this ${named.sort} has, or leave it out of one of the two`,
  };
}

function twiceIn(entries: readonly Entry[], key: string, sort: string): readonly Finding[] {
  const seen = new Set<string>();
  return entries.flatMap((entry): Finding[] => {
    const value = textOf(entry, key);
    if (value === undefined) return [];
    if (!seen.has(value)) {
      seen.add(value);
      return [];
    }
    const wrong = `the ${sort} ${value} is listed twice`;
    const right = sort === 'chat room' ? 'one entry, with all its sites' : 'one entry a person';
    return [{ path: [...entry.path, key], at: 'value', wrong, right }];
  });
}

/** A clash among scanners is found among sites and scanners again. */
function unique(findings: readonly Finding[]): readonly Finding[] {
  const seen = new Set<string>();
  return findings.filter(({ path }) => {
    const key = path.join('.');
    return !seen.has(key) && seen.add(key) !== undefined;
  });
}
