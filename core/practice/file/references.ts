import { expandTips } from '../expand-tips.ts';
import type { Finding, Path } from '../mistakes.ts';
import { foldName } from '../names.ts';
import { nearest } from './nearest.ts';
import { type Entry, entriesOf, idOf, isFields, textOf, textsOf } from './raw.ts';

/** References to sites that do not exist, homes left out where there are several sites, tips listed twice. */
export function brokenReferences(raw: unknown): readonly Finding[] {
  const sites = entriesOf(raw, 'sites');
  const scanners = entriesOf(raw, 'scanners');
  const tips = entriesOf(raw, 'tips');
  const chat = entriesOf(raw, 'chat').flatMap((room) => {
    const named = textsOf(room, 'sites');
    const none: Finding[] =
      named.length === 0
        ? [{ path: room.path, at: 'value', wrong: 'it serves no site', right: `sites: ${oneOf(sites)}` }]
        : [];
    return [...none, ...named.flatMap(({ text, path }) => siteFinding(text, path, sites))];
  });
  return [
    ...missingLists(raw, sites, scanners),
    ...scanners.flatMap((scanner) => homeFinding(scanner, 'home', sites)),
    ...entriesOf(raw, 'autoclaves').flatMap((autoclave) => homeFinding(autoclave, 'site', sites)),
    ...tips.flatMap((entry) => homeFinding(entry, 'home', sites)),
    ...tipsTwice(tips),
    ...chat,
  ];
}

function missingLists(raw: unknown, sites: readonly Entry[], scanners: readonly Entry[]): readonly Finding[] {
  const findings: Finding[] = [];
  const lists = [
    ['sites', sites, '- {id: main, name: Main Street, hours: {mon: 08:30-17:30}}'],
    ['scanners', scanners, '- {id: A, name: blue scanner, home: main}'],
  ] as const;
  for (const [key, entries, right] of lists) {
    const given = isFields(raw) ? raw[key] : undefined;
    // Where something else than a list stands there, the schema has objected already.
    const objected = given !== undefined && !(Array.isArray(given) && given.length === 0);
    if (entries.length === 0 && !objected) {
      findings.push({
        path: [key],
        at: 'key',
        wrong: `no ${key} are listed`,
        right: `${key}: with at least one ${right}`,
      });
    }
  }
  return findings;
}

/** A thing with no home stands at the one site there is; with several, nobody can tell. */
function homeFinding(entry: Entry, key: string, sites: readonly Entry[]): readonly Finding[] {
  const home = textOf(entry, key);
  if (home !== undefined) return siteFinding(home, [...entry.path, key], sites);
  if (sites.length < 2 || entry.fields[key] !== undefined) return [];
  return [{ path: entry.path, at: 'value', wrong: `${key} is missing`, right: `${key}: ${oneOf(sites)}` }];
}

function siteFinding(id: string, path: Path, sites: readonly Entry[]): readonly Finding[] {
  const ids = sites.flatMap((site) => idOf(site) ?? []);
  if (ids.includes(id)) return [];
  const named = sites.find((site) =>
    [textOf(site, 'id'), textOf(site, 'name'), ...alsoOf(site)].some(sameAs(id)),
  );
  const meant = (named && idOf(named)) ?? nearest(id, ids) ?? oneOf(sites);
  return [{ path, at: 'value', wrong: `no site has the id "${id}"`, right: meant }];
}

function alsoOf(site: Entry): readonly string[] {
  return textsOf(site, 'also').map(({ text }) => text);
}

function sameAs(id: string) {
  return (word: string | undefined) => word !== undefined && foldName(word) === foldName(id);
}

function oneOf(sites: readonly Entry[]): string {
  const ids = sites.flatMap((site) => idOf(site) ?? []);
  return ids.length === 0 ? 'the id of a site' : `one of ${ids.join(', ')}`;
}

function tipsTwice(tips: readonly Entry[]): readonly Finding[] {
  const seen = new Map<string, string>();
  const findings: Finding[] = [];
  for (const entry of tips) {
    for (const { text, path } of textsOf(entry, 'ids')) {
      const expanded = expandTips(text);
      const ids = 'ids' in expanded ? expanded.ids : [];
      const twice = ids.filter((id) => seen.has(id.toLowerCase()));
      const [first] = twice;
      if (first !== undefined) {
        const which = twice.length === 1 ? `tip ${first} is` : `tips ${twice.slice(0, 5).join(', ')} are`;
        findings.push({ path, at: 'value', wrong: `${which} listed twice`, right: 'each tip once' });
      }
      for (const id of ids) seen.set(id.toLowerCase(), id);
    }
  }
  return findings;
}
