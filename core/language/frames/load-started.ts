import type { Clause } from '../clause.ts';
import { autoclaveOf } from '../roles/autoclave.ts';
import { tipSlots, tipsOf } from '../roles/tips.ts';
import { type Frame, made, result } from './frame.ts';
import { loadOf } from './load-said.ts';

/** "71 on in the big one w/ tips 1-3": a number alone is the load's where an autoclave and tips are named beside it. */
function besideTips(c: Clause): boolean {
  const tipped = c
    .entities('tips')
    .some(({ at, entity }) => entity.named || (entity.ids.length > 0 && c.prep(at) === 'with'));
  return tipped && c.entities('autoclave').length > 0 && c.word(/^(on|running|going|started)$/) >= 0;
}

/** "The rest of the bagged ones went in with 213": a set of tips, and the load that it went in with. */
function joinsLoad(c: Clause): boolean {
  const set = c.entities('tips').some(({ entity }) => entity.which !== undefined);
  const went = c.word(/^(in|into)$/) >= 0 && c.has('go', 'put', 'send');
  return (
    set &&
    went &&
    c.entities('tips').some(({ at, entity }) => entity.unknown.length === 1 && /^(with|as)$/.test(c.prep(at)))
  );
}

export const loadStarted: Frame = {
  name: 'load-started',
  on: ['load', 'tips', 'autoclave'],
  read(c) {
    const load = loadOf(c, besideTips(c) || joinsLoad(c));
    if (load === null || typeof load.said === 'string') return null;
    if (c.has('fail', 'pass', 'finish', 'fault', 'wet', 'strip') || c.entities('cycle').length > 0) {
      const going = c.has('start', 'run') || c.word(/^(on|in)$/) >= 0;
      if (!(going && c.entities('tips').length > 0 && !c.has('fail', 'finish'))) return null;
    }
    const verbs = ['start', 'run', 'put', 'load', 'go', 'fit']
      .map((tag) => c.form(tag, 'dgs'))
      .filter((i) => i >= 0);
    const on = c.word(/^(on|in|into|running|going|away|off|underway|under way)$/);
    const tips = tipsOf(c, {
      bare: true,
      before: false,
      skip: (at) => at === load.said[0] && !load.entity.named,
    });
    if (verbs.length === 0 && on < 0 && tips === null) return null;
    if (c.word(/^out$/) >= 0) return null;
    c.use(...verbs, on);
    c.useTags(
      'start',
      'run',
      'put',
      'load',
      'go',
      'be',
      'autoclave',
      'steri',
      'have',
      'bag',
      'contain',
      'travel',
    );
    const autoclave = autoclaveOf(c);
    const before = tips ?? (c.scope.memory.tips === null ? null : tipsOf(c, {}));
    const missing =
      before === null
        ? ({ about: 'tip', slot: 'tips', form: 'ids', of: `load:${load.entity.ids[0]}` } as const)
        : before.missing;
    const slots = {
      load: load.entity.ids[0],
      ...(before === null ? {} : tipSlots(before)),
      ...(autoclave === null ? {} : { autoclave: autoclave.id }),
    };
    return result(
      [
        made('load-started', slots, {
          load: load.said,
          ...(before === null ? {} : { tips: before.said }),
          ...(autoclave === null ? {} : { autoclave: autoclave.said }),
        }),
      ],
      verbs[0] ?? Math.max(on, 0),
      missing,
    );
  },
};
