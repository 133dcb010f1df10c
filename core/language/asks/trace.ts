import { type Ask, ask, WH, wordsOf } from './ask.ts';

/** Where the tips of a load, or the scans of a tip, went. */
export const trace: Ask = {
  name: 'ask:trace',
  read(c) {
    const text = wordsOf(c);
    const load = c.first('load') ?? null;
    const memory = c.scope.memory.load;
    const which =
      /(which|what|who|whose|how many) (\w+ )?(scans?|patients?|pts?|mouths?|people|px)|who('s| has| have)? (been|was|were|had|got|did we)|where (did|have|has|were|are) (those|the|these|its|all those|they|all the|them|it'?s) ?(tips?)?|where (did|have) (they|those|these) (go|gone|end up|been)|\btrace\b|track (down )?(everything|all|the tips)|look ?back|which (tips|scans) (were|are) affected|affected|who had|(everything|anything|anyone|any scans?) (that )?(from|scanned with|used)|recall|who did we (use|scan)|what( has|'s)? happened to (the |those |its )?tips|what( has|'s)? (happened|become) (to|of) load .* tips|who got (those|the|these|its) tips|where (have|did|has) (those|the|these|its) tips (got|gone|go|end)|where (were|are|was) (the )?(used )?tips (from|of|in) load/.test(
        text,
      );
    if (!which) return null;
    if (/\bwhich tips\b|what tips/.test(text) && /(in|inside) load/.test(text)) return null;
    if (
      load !== null ||
      (memory !== null && /tips?|those|they/.test(text) && c.entities('tips').length === 0)
    ) {
      c.useTags(
        ...WH,
        'tip',
        'use',
        'scan',
        'patient',
        'load',
        'go',
        'find',
        'travel',
        'take',
        'fail',
        'pass',
        'put',
        'finish',
        'trace',
        'come',
        'move',
      );
      if (load !== null) c.use(load.at);
      const id = load?.entity.ids[0] ?? memory?.ids[0] ?? '';
      return ask('trace', { load: id }, load === null ? 2 : 1.2, {
        load: load === null ? 'the load spoken of just before' : [load.at],
      });
    }
    const tips = c.first('tips');
    if (tips === null) return null;
    if (/where (did|have|has|were|are|is)/.test(text)) return null;
    const [id] = tips.entity.ids;
    if (id === undefined) return null;
    c.use(tips.at);
    c.useTags(
      ...WH,
      'use',
      'scan',
      'patient',
      'load',
      'pass',
      'finish',
      'sterile',
      'tip',
      'autoclave',
      'trace',
      'find',
    );
    for (const one of c.entities('time')) c.use(one.at);
    return ask('trace', { item: `tip:${id}` }, 0.8, { item: [tips.at] });
  },
};
