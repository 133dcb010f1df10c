import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { z } from 'zod';
import type { Fact } from '../../core/reading/fact.ts';
import type { Reading } from '../../core/reading/reading.ts';

/** What a practice file names, as far as the gold needs it. */
export interface KnownNames {
  readonly scanners: readonly string[];
  readonly autoclaves: readonly string[];
  readonly tips: readonly string[];
  readonly people: readonly string[];
  /** Room ids by site id. */
  readonly sites: ReadonlyMap<string, readonly string[]>;
}

const named = z.array(z.object({ id: z.string() }));
const shape = z.object({
  sites: z.array(z.object({ id: z.string(), rooms: named.default([]) })),
  scanners: named,
  autoclaves: named.default([]),
  tips: z.array(z.object({ ids: z.union([z.string(), z.array(z.union([z.string(), z.number()]))]) })),
  people: z.array(z.object({ name: z.string() })).default([]),
});

/** Reads the ids out of a practice file at `path`; throws on a file that is not one. */
export function knownNames(path: string): KnownNames {
  const file = shape.parse(parse(readFileSync(path, 'utf8')));
  return {
    scanners: file.scanners.map((s) => s.id),
    autoclaves: file.autoclaves.map((a) => a.id),
    tips: file.tips.flatMap(({ ids }) => (typeof ids === 'string' ? expanded(ids) : ids.map(String))),
    people: file.people.map((p) => p.name),
    sites: new Map(file.sites.map((s) => [s.id, s.rooms.map((r) => r.id)])),
  };
}

/** "1-4" to 1, 2, 3, 4; a prefix may stand before both numbers. */
function expanded(ids: string): string[] {
  const [, prefix = '', from, to] = /^(\D*)(\d+)-\D*(\d+)$/.exec(ids) ?? [];
  if (from === undefined || to === undefined) return [ids];
  const length = Number(to) - Number(from) + 1;
  return Array.from({ length }, (_, i) => `${prefix}${Number(from) + i}`);
}

/** What the gold names that the practice does not, or says in a shape that `read` never prints. */
export function strangers(gold: Reading, known: KnownNames, note: { at: string }): string[] {
  const facts = [...gold.facts, ...gold.plans.map((p) => p.fact)];
  const out = facts.flatMap((f) => [...inSlots(f, known), ...inItems(f, known), ...inTips(f, known)]);
  for (const ask of gold.asks) out.push(...inSlots(ask, known), ...inItems(ask, known));
  for (const u of gold.unclear) {
    const choices = u.about === 'scanner' ? (u.choices ?? []) : [];
    out.push(...choices.filter((c) => !known.scanners.includes(c)).map((c) => `no scanner ${c}`));
    out.push(...inItems({ item: u.of }, known));
  }
  const later = gold.facts.filter((f) => Date.parse(f.when) > Date.parse(note.at));
  out.push(...later.map((f) => `${f.kind} is after its note`));
  return out;
}

interface Slots {
  readonly kind: string;
  readonly scanner?: string;
  readonly autoclave?: string;
  readonly site?: string;
  readonly room?: string;
  readonly tip?: string;
}

function inSlots(said: Slots, known: KnownNames): string[] {
  const out: string[] = [];
  const check = (id: string | undefined, ids: readonly string[], what: string): void => {
    if (id !== undefined && !ids.includes(id)) out.push(`no ${what} ${id}`);
  };
  check(said.scanner, known.scanners, 'scanner');
  check(said.autoclave, known.autoclaves, 'autoclave');
  check(said.tip, known.tips, 'tip');
  check(said.site, [...known.sites.keys()], 'site');
  check(said.room, known.sites.get(said.site ?? '') ?? [], `room at ${said.site ?? 'no site'}:`);
  return out;
}

function inItems(said: object, known: KnownNames): string[] {
  const items = [
    ...('items' in said && Array.isArray(said.items) ? said.items : []),
    ...('item' in said && typeof said.item === 'string' ? [said.item] : []),
  ];
  return items.flatMap((item: string) => (itemKnown(item, known) ? [] : [`no ${item}`]));
}

function itemKnown(item: string, known: KnownNames): boolean {
  const [sort = '', id = ''] = item.split(':');
  if (item === 'autoclave') return known.autoclaves.length === 0;
  if (sort === 'tip') return known.tips.includes(id);
  if (sort === 'scanner' || sort === 'calibration-tip') return known.scanners.includes(id);
  if (sort === 'autoclave') return known.autoclaves.includes(id);
  const [clave, number] = id.split('/');
  return number === undefined || known.autoclaves.includes(clave ?? '');
}

/** New tips may be strangers; all lists of tips are in order of number. */
function inTips(fact: Fact, known: KnownNames): string[] {
  const lists = [
    'tips' in fact ? (fact.tips ?? []) : [],
    'except' in fact ? (fact.except ?? []) : [],
    'items' in fact ? fact.items.filter((i) => i.startsWith('tip:')).map((i) => i.slice(4)) : [],
  ];
  return lists.flatMap((list) => {
    const sorted = list.toSorted((a, b) => numberOf(a) - numberOf(b));
    const strange = fact.kind === 'added' ? [] : list.filter((t) => !known.tips.includes(t));
    return [
      ...(sorted.join() === list.join() ? [] : [`${fact.kind}: tips out of order`]),
      ...strange.map((t) => `no tip ${t}`),
    ];
  });
}

function numberOf(id: string): number {
  return Number(/\d+/.exec(id)?.[0] ?? 0);
}
