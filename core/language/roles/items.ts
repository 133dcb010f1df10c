import type { Clause } from '../clause.ts';
import { hasTag } from '../part.ts';
import type { Missing } from '../result.ts';
import { autoclaveItem } from './autoclave.ts';
import { scannersOf } from './scanner.ts';
import { type TipsFound, tipsOf } from './tips.ts';

export interface ItemsSaid {
  readonly items: readonly string[];
  readonly which?: string;
  readonly except: readonly string[];
  readonly said: readonly number[] | string;
  readonly missing?: Missing;
}

export interface ItemsWanted {
  readonly bare?: boolean;
  readonly loads?: boolean;
  readonly autoclaves?: boolean;
  readonly before?: boolean;
}

/**
 * Every item that a clause names, in the order said: scanners, calibration tips, tips, autoclaves, loads. "It" and a
 * clause with none mean those of the clause before. `null` where there is nothing to go by.
 */
export function itemsOf(c: Clause, wanted: ItemsWanted = {}): ItemsSaid | null {
  const caltip = c.at('caltip');
  if (caltip >= 0) return calibrationTips(c, caltip);
  const found: Named[] = [];
  const hasScanner = namesScanner(c);
  let missing = hasScanner ? addScanners(c, found) : undefined;
  const tips = tipsAmong(c, (wanted.bare ?? false) && !hasScanner, hasScanner);
  if (tips !== null) {
    missing ??= tips.missing === undefined ? undefined : { ...tips.missing, slot: 'items', form: 'items' };
    const at = typeof tips.said === 'string' ? 0 : (tips.said[0] ?? 0);
    found.push({ at, items: tips.ids.map((id) => `tip:${id}`) });
  }
  if (wanted.loads) addLoads(c, found);
  if (wanted.autoclaves && c.entities('load').length === 0) addAutoclaves(c, found);
  found.sort((a, b) => a.at - b.at);
  const items = found.flatMap((one) => one.items);
  const set = tips?.which === undefined ? {} : { which: tips.which };
  const except = tips?.except ?? [];
  if (found.length === 0) {
    const last = c.scope.memory.items;
    if (last.length === 0 || wanted.before === false) return null;
    return { items: last, except: [], said: 'what was spoken of just before' };
  }
  return {
    items,
    ...set,
    except,
    said: found.map((one) => one.at),
    ...(missing === undefined ? {} : { missing }),
  };
}

interface Named {
  readonly at: number;
  readonly items: readonly string[];
}

function namesScanner(c: Clause): boolean {
  const kinds = ['scanner', 'some', 'no-scanner'] as const;
  return c.at('scanner') >= 0 || kinds.some((kind) => c.entities(kind).length > 0);
}

function addScanners(c: Clause, found: Named[]): Missing | undefined {
  const scanners = scannersOf(c, 'items', 'items');
  const at = typeof scanners.said === 'string' ? c.at('scanner') : (scanners.said[0] ?? 0);
  found.push({ at, items: scanners.ids.map((id) => `scanner:${id}`) });
  return scanners.missing;
}

function tipsAmong(c: Clause, bare: boolean, hasScanner: boolean): TipsFound | null {
  const any = c.entities('tips').some(({ at, entity }) => entity.named || bare || beside(c, at));
  if (!any && c.at('tip') < 0) return null;
  return tipsOf(c, { bare: true, before: !hasScanner, skip: (at) => !sureTips(c, at, bare) });
}

function addLoads(c: Clause, found: Named[]): void {
  for (const { at, entity } of c.entities('load')) {
    c.use(at);
    const before = entity.autoclave === undefined ? '' : `${entity.autoclave}/`;
    found.push({ at, items: entity.ids.map((id) => `load:${before}${id}`) });
  }
}

/** "Red and 9 back at green": numbers joined to a scanner travel with it. */
function beside(c: Clause, at: number): boolean {
  return (
    (/^(and|&|\+|n|,|plus)$/.test(c.parts[at - 1]?.text ?? '') &&
      c.parts[at - 2]?.entity?.is === 'scanner') ||
    (c.parts[at - 1]?.text === 'with' && c.entities('site').length > 0 && c.entities('scanner').length > 0)
  );
}

function sureTips(c: Clause, at: number, bare: boolean): boolean {
  const entity = c.parts[at]?.entity;
  return entity?.is === 'tips' && (entity.named || bare || beside(c, at) || c.at('tip') >= 0);
}

function addAutoclaves(c: Clause, found: Named[]): void {
  const named = c.entities('autoclave');
  for (const { at, entity } of named) {
    c.use(at);
    if (entity.id !== null) found.push({ at, items: [`autoclave:${entity.id}`] });
  }
  const noun = c.at('autoclave');
  if (named.length > 0 || noun < 0) return;
  const item = autoclaveItem(c);
  if (item !== null) found.push({ at: noun, items: [item] });
}

function calibrationTips(c: Clause, at: number): ItemsSaid {
  c.use(at);
  const scanners = scannersOf(c, 'items', 'items');
  const places = c.entities('scanner').map((one) => one.at);
  const apart = places.filter((i) => i > at || !/^('s|s)$/.test(c.parts[i + 1]?.text ?? ''));
  const both = apart.some((i) =>
    c.parts
      .slice(Math.min(i, at), Math.max(i, at))
      .some((p) => p.text === 'and' || hasTag(p, 'with') || p.text === '&'),
  );
  const own = scanners.ids.map((id) => `calibration-tip:${id}`);
  const items = both ? [...scanners.ids.map((id) => `scanner:${id}`), ...own] : own;
  return {
    items,
    except: [],
    said: [at, ...places],
    ...(scanners.missing === undefined ? {} : { missing: scanners.missing }),
  };
}

export function itemSlots(found: ItemsSaid): Record<string, unknown> {
  return {
    items: found.items,
    ...(found.which === undefined ? {} : { which: found.which }),
    ...(found.except.length > 0 ? { except: found.except } : {}),
  };
}
