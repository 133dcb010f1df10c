import type { Clause } from '../clause.ts';
import { type Ask, type AskResult, ask, WH, wordsOf } from './ask.ts';
import { loadOf } from './load.ts';

/** Where the tips of a load, or the scans of a tip, went. */
export const trace: Ask = {
  name: 'ask:trace',
  read(c) {
    const text = wordsOf(c);
    if (!TRACES.test(text)) return null;
    if (/\bwhich tips\b|what tips/.test(text) && /(in|inside) load/.test(text)) return null;
    return ofLoad(c, text) ?? ofTip(c, text);
  },
};

const TRACES =
  /(which|what|who|whose|how many|list the|any) (\w+ )?(scans?|scanners|patients?|pts?|mouths?|people|px)|who('s| has| have)? (been|was|were|had|got|did we)|where (did|have|has|were|are) (those|the|these|its|all those|they|all the|them|it'?s) ?(tips?)?|where (did|have) (they|those|these) (go|gone|end up|been)|\btrace\b|track (down )?(everything|all|the tips)|look ?back|which (tips|scans) (were|are) affected|affected|who had|(everything|anything|anyone|any scans?) (that )?(from|scanned with|used)|recall|who did we (use|scan)|what( has|'s)? happened to (the |those |its )?tips|what( has|'s)? (happened|become) (to|of) load .* tips|who got (those|the|these|its) tips|where (have|did|has) (those|the|these|its) tips (got|gone|go|end)|where (were|are|was) (the )?(used tips|used|tips) (from|of|in) load|what( has|'s| have)? happened to load .* tips|(were|have|has|was) any (of )?.*\bused\b|where'?d? (did )?the tips (from|of|in)|track everything|look-back|lookback/;

/** The load named, or the one spoken of just before: "load 43 failed, who got those tips?" */
function ofLoad(c: Clause, text: string): AskResult | null {
  const load = loadOf(c, text);
  const before =
    /tips?|those|they/.test(text) && c.entities('tips').every(({ entity }) => entity.ids.length === 0)
      ? c.scope.memory.load
      : null;
  const id = load?.id ?? before?.ids[0];
  if (id === undefined) return null;
  c.useTags(...WH, ...OF_LOAD);
  if (load === null) return ask('trace', { load: id }, 2, { load: 'the load spoken of just before' });
  c.use(load.at);
  for (const { at, entity } of c.entities('tips')) if (entity.ids.length === 0) c.use(at);
  return ask('trace', { load: id }, 1.2, { load: [load.at] });
}

const OF_LOAD =
  'tip use scan patient load go find travel take fail pass put finish trace come move scanner have unit check'.split(
    ' ',
  );

function ofTip(c: Clause, text: string): AskResult | null {
  const tips = c.first('tips');
  const id = tips?.entity.ids[0];
  if (tips === null || id === undefined || /where (did|have|has|were|are|is)/.test(text)) return null;
  c.use(tips.at);
  c.useTags(...WH, ...OF_TIP);
  for (const one of c.entities('time')) c.use(one.at);
  return ask('trace', { item: `tip:${id}` }, 0.8, { item: [tips.at] });
}

const OF_TIP = 'use scan patient load pass finish sterile tip autoclave trace find'.split(' ');
