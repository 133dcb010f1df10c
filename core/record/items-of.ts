import type { Item } from '../reading/slots.ts';
import type { Said } from './entry.ts';

/** What a fact or a decision speaks of, written as items. */
export function itemsOf(fact: Said): readonly Item[] {
  const items: Item[] = [];
  if ('items' in fact) items.push(...fact.items);
  if ('item' in fact) items.push(fact.item);
  if ('scanner' in fact && fact.scanner !== undefined) items.push(`scanner:${fact.scanner}`);
  if ('tip' in fact && fact.tip !== undefined) items.push(`tip:${fact.tip}`);
  if ('tips' in fact && fact.tips !== undefined) items.push(...fact.tips.map((tip): Item => `tip:${tip}`));
  if ('load' in fact) items.push(`load:${fact.load}`);
  if ('autoclave' in fact && fact.autoclave !== undefined) items.push(`autoclave:${fact.autoclave}`);
  return items;
}
