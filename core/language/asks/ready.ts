import { autoclaveItem } from '../roles/autoclave.ts';
import { type Ask, ask, oneItem, WH, wordsOf } from './ask.ts';

/** Whether an item may be used. */
export const ready: Ask = {
  name: 'ask:ready',
  read(c, question) {
    const text = wordsOf(c);
    const asks =
      /ready|good to go|gd to go|allowed to use|right to (go|use)|possible to use|able to use|\b(ok|okay|fine|safe|alright|still out|still off|still down|still broken|all right|clear|cleared|good|clean|sterile|free|available|usable|useable|allowed|fit|up and running|working|in service|charged|working|wiped|settled|dirty|sorted|grand|usable|useable)\b|can .* be used|can (i|we|u|you|she|he|someone) (use|have|take|scan|grab|start|pop|put|borrow)|go ahead with|(should|may|could|shall|would) (i|we) (use|scan|take|have)|need to do anything before|is .* (usable|on hold|held|out of service|broken|fixed|back|mended|sterilised|autoclaved|used|been used)|has .* (been|passed|come back)|(been|being) (used|sterilised|autoclaved|sent|washed|bagged)|which (scanner|one|of the scanners)/.test(
        text,
      );
    if (/how (many|often)/.test(text)) return null;
    if (!asks || (!question && !/^(is|are|r|am|would|can|could|which|has|may|should|do|does|any)/.test(text)))
      return null;
    c.useTags(
      ...WH,
      'use',
      'sterile',
      'sterilise',
      'clean',
      'pass',
      'scan',
      'release',
      'hold',
      'unit',
      'wipe',
      'work',
      'repair',
      'open',
      'start',
      'finish',
      'patient',
      'take',
      'autoclave',
      'wash',
      'bag',
      'send',
      'sick',
      'fit',
      'run',
      'come',
      'fail',
      'calibrate',
      'steri',
      'go',
      'put',
      'cover',
      'heat',
      'shelf',
    );
    const named =
      c.entities('scanner').length > 0 ||
      c
        .entities('tips')
        .some(({ entity }) => entity.ids.length + entity.unknown.length + entity.choices.length > 0) ||
      c.at('scanner') >= 0 ||
      c.at('autoclave') >= 0 ||
      c.entities('autoclave').length > 0 ||
      c.at('caltip') >= 0 ||
      c.entities('no-scanner').length > 0;
    if (!named) return null;
    for (const one of [
      ...c.entities('time'),
      ...c.entities('person'),
      ...c.entities('room'),
      ...c.entities('site'),
    ])
      c.use(one.at);
    if (
      /which (scanner|of the scanners)|any scanners?|(a|any) scanner|either scanner|both scanners|scanners/.test(
        text,
      ) &&
      c.entities('scanner').length === 0
    ) {
      c.use(c.at('scanner'));
      return ask('ready', {}, 1.2);
    }
    const item = oneItem(c, { before: false, bare: true });
    if (item === null) {
      const own = c.at('autoclave') >= 0 ? autoclaveItem(c) : null;
      return own === null ? null : ask('ready', { item: own }, 1);
    }
    return ask('ready', { item: item.item }, 0.9, { item: item.said }, item.missing);
  },
};
