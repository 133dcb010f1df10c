import type { Clause } from '../clause.ts';
import type { EntityOf } from '../part.ts';
import { hasTag } from '../part.ts';
import type { Result } from '../result.ts';
import { autoclaveOf } from '../roles/autoclave.ts';
import { isDenied, outcomeOf } from '../roles/outcome.ts';
import { tipSlots, tipsOf } from '../roles/tips.ts';
import { type Frame, made, result, type Said } from './frame.ts';

/** The load that a clause names: by the word, or a number of at least two figures where nothing else claims it. */
function loadOf(c: Clause, bare: boolean): { entity: EntityOf<'load'>; said: Said } | null {
  const named = c.first('load');
  if (named !== null) {
    c.use(...c.entities('load').map(({ at }) => at));
    return { entity: named.entity, said: [named.at] };
  }
  if (bare) {
    for (const { at, entity } of c.entities('tips')) {
      const [id, more] = entity.unknown;
      if (
        !entity.named &&
        entity.ids.length === 0 &&
        id !== undefined &&
        more === undefined &&
        id.length >= 2 &&
        /^[a-z]*\d+$/i.test(id)
      ) {
        c.use(at);
        return { entity: { is: 'load', ids: [id.replace(/\D/g, '')], named: false }, said: [at] };
      }
    }
  }
  const last = c.scope.memory.load;
  return last === null ? null : { entity: last, said: 'the load spoken of just before' };
}

export const loadStarted: Frame = {
  name: 'load-started',
  on: ['load', 'tips', 'autoclave'],
  read(c) {
    // "71 on in the big one w/ tips 1-3": a number alone is the load's where tips are named beside it.
    const bare =
      c.entities('autoclave').length > 0 &&
      c.word(/^(on|running|going|started)$/) >= 0 &&
      c.entities('tips').some(({ entity }) => entity.named);
    const load = loadOf(c, bare);
    if (load === null || typeof load.said === 'string') return null;
    if (c.has('fail', 'pass', 'finish', 'fault', 'wet', 'strip') || c.entities('cycle').length > 0) {
      const going = c.has('start', 'run') || c.word(/^(on|in)$/) >= 0;
      if (!(going && c.entities('tips').length > 0 && !c.has('fail', 'finish'))) return null;
    }
    const verbs = ['start', 'run', 'put', 'load', 'go', 'fit']
      .map((tag) => c.form(tag, 'dgs'))
      .filter((i) => i >= 0);
    const on = c.word(/^(on|in|into|running|going|away|off|underway|under way)$/);
    const tips = tipsOf(c, { bare: true, before: false });
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

export const loadFinished: Frame = {
  name: 'load-finished',
  on: ['load', 'pass', 'fail', 'finish', 'cycle', 'be'],
  read(c) {
    const bare =
      c.has('fail') ||
      c.word(/pass/) >= 0 ||
      c.entities('cycle').length > 0 ||
      (c.parts.length <= 8 &&
        c.word(
          /^(out|out of|finished|done|complete|completed|came out|is finish|finish|ok|okay|fine|good)$/,
        ) >= 0 &&
        c
          .entities('tips')
          .some(
            ({ entity }) => !entity.named && entity.unknown.some((id) => id.replace(/\D/g, '').length >= 3),
          ));
    const load = loadOf(c, bare);
    if (load === null) return namelessLoad(c);
    if (c.has('calibrate', 'spore', 'penetration', 'leak', 'control', 'inspection', 'magnifier')) return null;
    if (typeof load.said === 'string' && c.entities('tips').some(({ entity }) => entity.named)) return null;
    const strip = stripOf(c);
    const dry = dryOf(c);
    const cycle = c.first('cycle');
    if (cycle !== null) c.use(cycle.at);
    const outcome = outcomeOf(c, [...strip.used, ...dry.used]);
    const over =
      c.form('finish', 'dn') >= 0
        ? c.form('finish', 'dn')
        : c.word(/^(out|out of|came out|came out of|done|over|off|complete|finished|ended)$/);
    if (outcome === null && over < 0 && cycle === null && strip.value === null && dry.value === null)
      return null;
    if (typeof load.said === 'string' && outcome === null && cycle === null) return null;
    c.use(...strip.used, ...dry.used, over);
    c.useTags(
      'run',
      'come',
      'go',
      'finish',
      'do',
      'be',
      'autoclave',
      'turn',
      'hold',
      'get',
      'have',
      'temp',
      'swap',
    );
    const autoclave = autoclaveOf(c);
    const facts = load.entity.ids.map((id) =>
      made(
        'load-finished',
        {
          load: id,
          ...(outcome === null ? {} : { outcome: outcome.outcome }),
          ...(cycle?.entity.celsius === undefined ? {} : { celsius: cycle.entity.celsius }),
          ...(cycle?.entity.minutes === undefined ? {} : { minutes: cycle.entity.minutes }),
          ...(strip.value === null ? {} : { indicator: strip.value }),
          ...(dry.value === null ? {} : { dry: dry.value }),
          ...(autoclave === null ? {} : { autoclave: autoclave.id }),
        },
        {
          load: load.said,
          ...(outcome === null ? {} : { outcome: [outcome.at] }),
          ...(autoclave === null ? {} : { autoclave: autoclave.said }),
        },
      ),
    );
    const missing =
      outcome === null
        ? ({
            about: 'outcome',
            of: itemOf(load.entity, typeof autoclave?.said === 'string' ? null : autoclave?.id),
            slot: 'outcome',
            form: 'outcome',
          } as const)
        : undefined;
    const verb = outcome?.at ?? (over >= 0 ? over : (cycle?.at ?? 0));
    const base: Result = result(
      facts,
      verb,
      missing,
      bare && outcome === null && !TELLS_RESULT.test(c.scope.note) ? 0.7 : 0,
    );
    return outcome?.outcome === 'failed' ? { ...base, anyMood: true } : base;
  },
};

/** What says elsewhere in the note how a load came out. */
const TELLS_RESULT = /pass|past|fail|good|\bok|fine|\b1[23]\d\b|\b27\d\b/i;

function itemOf(load: EntityOf<'load'>, named: string | null | undefined): string {
  const autoclave = load.autoclave ?? named ?? null;
  return autoclave === null ? `load:${load.ids[0]}` : `load:${autoclave}/${load.ids[0]}`;
}

/** "Load passed": which one is not said. */
function namelessLoad(c: Clause): Result | null {
  const noun = c.at('load');
  const outcome =
    noun < 0 || c.parts.length > 7 || !/^(load|cycle|batch)$/.test(c.parts[noun]?.text ?? '')
      ? null
      : outcomeOf(c);
  if (outcome === null || c.entities('tips').length > 0) return null;
  c.use(noun);
  autoclaveOf(c);
  return result(
    [made('load-finished', { outcome: outcome.outcome }, { outcome: [outcome.at] })],
    outcome.at,
    { about: 'load', slot: 'load', form: 'id' },
    0.8,
  );
}

interface Found<T> {
  readonly value: T | null;
  readonly used: readonly number[];
}

const TURNED =
  /^(turned|brown|gone brown|turned brown|turned black|gone black|changed|passed|pass|good|fine|ok|okay|black|correct|green|done|changed colour|changed color|all good|turned black|changed fully|complete|right)$/;

const UNTURNED =
  /^(unchanged|white|unturned|blank|pink|(still|stayed|stays|remained) (pink|white|blank|unchanged))$/;

/** What the load's indicator showed: "strip turned", "indicator hadn't changed". */
function stripOf(c: Clause): Found<'passed' | 'failed'> {
  const noun = c.at('strip');
  if (noun < 0) return { value: null, used: [] };
  const denials: number[] = [];
  for (let i = noun + 1; i < Math.min(c.parts.length, noun + 6); i++) {
    const part = c.parts[i];
    if (part?.entity?.is === 'load') continue;
    if (part === undefined || part.entity !== undefined || hasTag(part, 'pouch')) break;
    if (hasTag(part, 'neg')) denials.push(i);
    const value = stripSays(c, i, noun);
    if (value !== null) return { value, used: [noun, ...denials, i] };
  }
  return { value: null, used: [noun, ...denials] };
}

function stripSays(c: Clause, at: number, noun: number): 'passed' | 'failed' | null {
  const part = c.parts[at];
  if (part === undefined) return null;
  if (hasTag(part, 'fail') || UNTURNED.test(part.text)) return 'failed';
  const turned = TURNED.test(part.text) || ['turn', 'swap', 'pass'].some((tag) => hasTag(part, tag));
  if (!turned) return null;
  return isDenied(c, at) || hasTag(c.parts[noun - 1], 'neg') ? 'failed' : 'passed';
}

/** Whether the load came out dry: "packs dry", "came out wet". */
function dryOf(c: Clause): Found<boolean> {
  const wet = c.word(
    /^(wet|humid|damp|soaked|soaking|soaking wet|soggy|not dry|still wet|moist|wet through)$/,
  );
  const dry = c.word(/^(dry|all dry|bone dry|nice and dry|dried)$/);
  const at = wet >= 0 ? wet : dry;
  if (at < 0) return { value: null, used: [] };
  const pouch = c.at('pouch');
  return { value: wet < 0 && !isDenied(c, at), used: pouch < 0 ? [at] : [at, pouch] };
}
