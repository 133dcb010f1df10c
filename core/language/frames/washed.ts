import { hasTag } from '../part.ts';
import { type Frame, tipFact } from './frame.ts';

export const washed: Frame = {
  name: 'washed',
  on: ['wash', 'clean'],
  read(c) {
    const verb = c.form('wash', 'dn') >= 0 ? c.form('wash', 'dn') : c.form('clean', 'd');
    if (verb < 0 || c.has('magnifier', 'lens', 'base')) return null;
    const given = hasTag(c.parts[verb], 'wash') || c.entities('tips').length > 0 || c.at('tip') >= 0;
    if (!given) return null;
    c.useTags('wash', 'clean', 'run');
    if (c.entities('scanner').length > 0 && c.entities('tips').length === 0) return null;
    return tipFact(c, 'washed', verb, { bare: true });
  },
};

export const bagged: Frame = {
  name: 'bagged',
  on: ['bag', 'pouch'],
  read(c) {
    const verb = c.form('bag', 'd');
    const pouch = verb < 0 ? c.at('pouch') : -1;
    const into =
      pouch < 0 ? -1 : c.form('put', 'd') >= 0 ? c.form('put', 'd') : c.prep(pouch) === 'in' ? pouch : -1;
    if (verb < 0 && into < 0) return null;
    c.useTags('bag');
    if (into >= 0) c.use(into, c.at('pouch'));
    if (c.has('tear', 'crack')) return null;
    return tipFact(c, 'bagged', verb >= 0 ? verb : into, { bare: true });
  },
};
