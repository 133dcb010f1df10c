import type { Gap } from '../../language/read.ts';
import { roomOf, scannerOf, siteOf } from '../../practice/look-up.ts';
import type { Item } from '../../reading/slots.ts';
import type { TipShown } from '../../record/state.ts';
import type { View } from '../../rules/matter.ts';
import type { Choice } from '../../rules/question.ts';
import { sterileStock } from '../../rules/tips/sterile-stock.ts';

/**
 * What may be answered to a gap: the reader's own choices, else what the practice and the record hold for it. Scanners that
 * were told of lately come first, the latest in front, then those at these sites; of tips only those that are there, where
 * there are any.
 */
export function candidatesFor(
  gap: Gap,
  view: View,
  sites: readonly string[],
  lately: readonly Item[] = [],
): readonly Choice[] {
  const all = allCandidates(gap, view, sites);
  const { state } = view;
  const isHere = ({ value }: Choice): boolean => {
    const id = bareId(value);
    const known = gap.unclear.about === 'scanner' ? state.scanners.get(id) : state.tips.get(id);
    return known !== undefined && known.site !== null && sites.includes(known.site);
  };
  if (gap.unclear.about === 'scanner') {
    const told = lately.flatMap((item) => all.filter(({ value }) => item === `scanner:${bareId(value)}`));
    const rest = all.filter((one) => !told.includes(one));
    return [...told, ...rest.filter(isHere), ...rest.filter((one) => !isHere(one))];
  }
  const here = gap.unclear.about === 'tip' ? all.filter(isHere) : [];
  return here.length === 0 ? all : here;
}

function bareId(value: string): string {
  return value.slice(value.indexOf(':') + 1);
}

function allCandidates(gap: Gap, view: View, sites: readonly string[]): readonly Choice[] {
  const { about, choices } = gap.unclear;
  if (choices !== undefined && choices.length > 0)
    return choices.map((value) => ({ label: labelOf(about, value, gap, view), value }));
  switch (about) {
    case 'scanner':
      return view.practice.scanners.map(({ id, name }) => ({ label: name, value: id }));
    case 'site':
      return view.practice.sites.map(({ id, name }) => ({ label: name, value: id }));
    case 'room':
      return roomsOf(gap, view, sites);
    case 'tip':
      return tipsFor(gap, view).map((id) => ({ label: `tip ${id}`, value: id }));
    case 'load':
      return openLoads(view).map((number) => ({ label: `load ${number}`, value: number }));
    case 'outcome':
      return outcomesOf(String(gap.draft?.entry.kind ?? ''));
    case 'certainty':
    case 'time':
      return gap.draft === undefined ? [] : YES_OR_NO;
    case 'what':
      return [];
  }
}

const YES_OR_NO: readonly Choice[] = [
  { label: 'yes', value: 'yes' },
  { label: 'no', value: 'no' },
];

function outcomesOf(kind: string): readonly Choice[] {
  if (kind === 'spore-test')
    return [
      { label: 'clear', value: 'passed' },
      { label: 'positive', value: 'failed' },
      { label: 'still running', value: 'running' },
    ];
  return [
    { label: 'passed', value: 'passed' },
    { label: 'failed', value: 'failed' },
  ];
}

/** States from which a tip can come to what the note says of it. */
const BEFORE: Readonly<Record<string, readonly TipShown[]>> = {
  used: ['fitted'],
  removed: ['fitted'],
  inspected: ['washed', 'used'],
  washed: ['used'],
  bagged: ['washed', 'used'],
  sent: ['bagged', 'washed', 'used'],
  'load-started': ['sent', 'bagged', 'washed', 'used'],
  sterile: ['in-load', 'sent'],
  found: ['missing'],
};

/** The tips that the note can mean by what the record says of them; every one where it cannot tell. */
function tipsFor(gap: Gap, view: View): readonly string[] {
  const kind = String(gap.draft?.entry.kind ?? '');
  // A number that is none of the practice's may be a slip for any of them.
  if (gap.words === undefined) {
    if (kind === 'fitted' || kind === 'scan-started') {
      const stock = sterileStock(view, null).map(({ id }) => id);
      if (stock.length > 0) return stock;
    }
    const before = BEFORE[kind] ?? [];
    const likely = [...view.state.tips.values()].filter(({ state }) => before.includes(state));
    if (likely.length > 0) return likely.map(({ id }) => id);
  }
  return [...view.state.tips.values()].filter(({ state }) => state !== 'retired').map(({ id }) => id);
}

function openLoads({ state }: View): readonly string[] {
  const open = state.loads.recent().filter(({ status }) => status === 'open' || status === 'doubted');
  return [...new Set(open.map(({ number }) => number))];
}

/** Rooms of the site that the note names, else those of the chat room's sites, else all; then each with its site. */
function roomsOf(gap: Gap, { practice }: View, here: readonly string[]): readonly Choice[] {
  const said = siteSaid(gap);
  const site = said === undefined ? undefined : siteOf(practice, said);
  if (site !== undefined) return site.rooms.map(({ id, name }) => ({ label: name, value: id }));
  const sites = practice.sites.filter(({ id }) => here.length === 0 || here.includes(id));
  return sites.flatMap((one) =>
    one.rooms.map(({ id, name }) => ({
      label: sites.length === 1 ? name : `${name}, ${one.name}`,
      value: `${one.id}/${id}`,
    })),
  );
}

function siteSaid(gap: Gap): string | undefined {
  const site = gap.draft?.entry.site;
  return typeof site === 'string' ? site : undefined;
}

function labelOf(about: string, value: string, gap: Gap, { practice }: View): string {
  const bare = value.slice(value.indexOf(':') + 1);
  if (about === 'scanner') return scannerOf(practice, bare)?.name ?? value;
  if (about === 'site') return siteOf(practice, bare)?.name ?? value;
  if (about === 'tip') return `tip ${bare}`;
  if (about === 'load') return `load ${bare}`;
  if (about !== 'room') return value.replace(':', ' ');
  const site = siteSaid(gap);
  const sites = site === undefined ? practice.sites.map(({ id }) => id) : [site];
  for (const id of sites) {
    const room = roomOf(practice, id, bare);
    if (room !== undefined) return room.name;
  }
  return value;
}
