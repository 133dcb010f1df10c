import type { Clause } from '../clause.ts';
import { autoclaveItem } from '../roles/autoclave.ts';
import { type ItemsSaid, itemSlots, itemsOf } from '../roles/items.ts';
import { type Frame, made, result } from './frame.ts';

export const repaired: Frame = {
  name: 'repaired',
  on: ['repair'],
  read(c) {
    const done = c.form('repair', 'd');
    const noun = c.has('finish') ? c.form('repair', 'n') : -1;
    const verb = done >= 0 ? done : noun;
    if (verb < 0) return null;
    c.use(verb);
    c.useTags('finish', 'repair', 'come', 'get', 'be', 'have');
    const items = itemsOf(c, { autoclaves: true }) ?? loneScanner(c);
    if (items === null) return null;
    if (items.items.length === 0 && autoclaveItem(c) === null && items.missing === undefined) return null;
    return result([made('repaired', itemSlots(items), { items: items.said })], verb, items.missing);
  },
};

function loneScanner(_c: Clause): ItemsSaid | null {
  return null;
}
