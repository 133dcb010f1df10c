import { type Frame, made, result } from './frame.ts';

export const added: Frame = {
  name: 'added',
  on: ['add', 'come', 'tips', 'tip', 'dropoff', 'get', 'have', 'find', 'receive'],
  read(c) {
    const fresh = c.word(/^(new|brand new|extra|fresh|replacement|additional|newly)$/);
    const add = c.form('add', 'dg');
    const come = c.form('come', 'd');
    const got = c.form('get', 'd');
    const given = c.form('dropoff', 'd');
    const opened = fresh >= 0 ? c.exactly('open', 'd') : -1;
    // "New tips 10 to 12 turned up in the post".
    const found = fresh >= 0 ? c.exactly('find', 'd') : -1;
    const verb = [add, come, given, got, opened, found].find((i) => i >= 0) ?? -1;
    if (verb < 0 && fresh < 0) return null;
    if (add < 0 && fresh < 0) return null;
    const unheard = c.entities('tips').some(({ entity }) => entity.unknown.length > 0);
    if (verb < 0 && !unheard && c.word(/^(in|here)$/) < 0) return null;
    const tips = c.entities('tips');
    if (tips.length === 0 || c.entities('scanner').length > 0) return null;
    if (tips.some(({ entity }) => entity.which !== undefined)) return null;
    c.use(verb, fresh, c.at('tip'), ...tips.map(({ at }) => at));
    c.useTags('add', 'come', 'dropoff', 'get', 'have', 'unit', 'find', 'travel');
    if (!tips.some(({ entity }) => entity.named) && c.at('tip') < 0) return null;
    const ids = tips.flatMap(({ entity }) => [...entity.ids, ...entity.unknown]);
    if (ids.length === 0) return null;
    return result(
      [made('added', { tips: ids }, { tips: tips.map(({ at }) => at) })],
      verb >= 0 ? verb : fresh,
      undefined,
      1,
    );
  },
};
