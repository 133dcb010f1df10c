import type { TipSet } from '../../reading/slots.ts';
import type { Clause } from '../clause.ts';
import type { TipsSaid } from '../part.ts';
import type { Missing } from '../result.ts';
import { LEAVING_OUT, verbBehind } from '../spared.ts';
import { compareIds } from '../tip-ids.ts';
import { brokenList, isDeniedLast, isPassedOver, onlySome, sparedOfIds } from './tips-left-out.ts';

export interface TipsFound {
  readonly ids: readonly string[];
  readonly which?: TipSet;
  readonly except: readonly string[];
  readonly said: readonly number[] | string;
  readonly missing?: Missing;
  readonly spoken: boolean;
  /** Written like this practice's ids though it has none such (new tips). */
  readonly unknown: readonly string[];
}

export interface TipsWanted {
  /** Numbers alone may be tips here: what is done to them is done to tips only. */
  readonly bare?: boolean;
  /** The tips of the clause before may be meant. */
  readonly before?: boolean;
  /** Parts that are not to be looked at. */
  readonly skip?: (at: number) => boolean;
}

/** The tips that a clause speaks of; `null` where it speaks of none. */
export function tipsOf(c: Clause, wanted: TipsWanted = {}): TipsFound | null {
  const found = restOf(c, wanted) ?? tipsSaid(c, wanted);
  const isRest = c.entities('tips').some(({ entity }) => entity.rest === true);
  if (found === null || found.which !== 'all' || !isRest) return found;
  return { ...found, except: [...new Set([...found.except, ...c.scope.memory.named])].sort(compareIds) };
}

/**
 * "4 is held, everything else is sterile": all but the tips that the note named before. Where it named none, or a set, which
 * ones are left is not said. Never those spoken of just before: they are the ones that are not meant.
 */
function restOf(c: Clause, wanted: TipsWanted): TipsFound | null {
  const at = c.word(
    /^(?:the )?(?:rest|others|remainder|remaining|other ones)$|^everything else$|^all the rest$/,
  );
  const { tips, named } = c.scope.memory;
  if (at < 0 || tips === null || c.entities('tips').some(({ at: own }) => !wanted.skip?.(own))) return null;
  c.use(at);
  const set = { ids: [], unknown: [], said: 'all but the tips spoken of just before', spoken: true };
  if (tips.which !== undefined || named.length === 0)
    return { ...set, except: [], missing: { about: 'tip', slot: 'tips', form: 'ids' } };
  return { ...set, which: 'all', except: [...named].sort(compareIds) };
}

function tipsSaid(c: Clause, wanted: TipsWanted): TipsFound | null {
  const mentioned = c.entities('tips').filter(({ at }) => !wanted.skip?.(at));
  const passedOver = mentioned.filter(({ at }) => isPassedOver(c, at) || isDeniedLast(c, at));
  c.use(...passedOver.flatMap(({ at }) => [at, at - 1]));
  const all = mentioned.filter((one) => !passedOver.includes(one));
  const noun = c.at('tip');
  const sure = all.filter(({ entity }) => entity.named);
  const named =
    sure.length > 0
      ? all.filter(({ at, entity }) => entity.named || besideSet(c, at))
      : all.filter(() => noun >= 0 || wanted.bare);
  const spared = sparedTips(c, all);
  if (spared !== null) {
    c.use(...named.map(({ at }) => at), noun);
    return spared;
  }
  const places = named.map(({ at }) => at);
  if (brokenList(c, places) || onlySome(c, named)) {
    c.use(...named.map(({ at }) => at), noun);
    return {
      ids: [],
      except: [],
      unknown: [],
      said: named.map(({ at }) => at),
      spoken: true,
      missing: { about: 'tip', slot: 'tips', form: 'ids' },
    };
  }
  if (named.length > 0) {
    c.use(...named.map(({ at }) => at), noun);
    return gathered(
      named.map(({ entity }) => entity),
      named.map(({ at }) => at),
    );
  }
  const last = c.scope.memory.tips;
  if (c.word(/^(nothing|none)$/) >= 0) return null;
  if (last !== null && (wanted.before ?? true)) {
    c.use(noun);
    return gathered([...theOther(c, last), last], 'the tips spoken of just before');
  }
  if (noun < 0 || /^(every|each|any)$/.test(c.parts[noun - 1]?.text ?? '')) return null;
  c.use(noun);
  return {
    ids: [],
    except: [],
    unknown: [],
    said: [noun],
    spoken: true,
    missing: { about: 'tip', slot: 'tips', form: 'ids' },
  };
}

/** "Q4 used. Q7 used. Both washed.": the one before is meant too. */
function theOther(c: Clause, last: TipsSaid): readonly TipsSaid[] {
  const other = c.scope.memory.tipsBefore ?? null;
  const both =
    other !== null && last.ids.length === 1 && other.ids.length === 1 && c.word(/^(both|both of them)$/) >= 0;
  return both ? [other] : [];
}

/** "1, 4 and the remaining washed ones": numbers joined to a set are tips too. */
function besideSet(c: Clause, at: number): boolean {
  const next = c.parts.findIndex(
    (part, i) => i > at && (part.entity !== undefined || !/^(and|&|\+|,|plus|n|the)$/.test(part.text)),
  );
  const entity = c.parts[next]?.entity;
  return entity?.is === 'tips' && entity.which !== undefined;
}

/** "All the dirty tips are in the autoclave except 4": ids behind such a word are those left out. */
function sparedTips(c: Clause, named: readonly { at: number; entity: TipsSaid }[]): TipsFound | null {
  const set = named.find(({ entity }) => entity.which !== undefined && entity.except.length === 0);
  if (set === undefined) return sparedBefore(c, named);
  const bar = c.word(
    /^(except|bar|apart|excluding|minus|other|but|barring|not|other than|except for|save|besides|aside|apart from|exception|exceptions|with the exception of)$/,
    set.at + 1,
  );
  const spared = named.filter(({ at, entity }) => bar >= 0 && at > bar && entity.which === undefined);
  if (spared.length === 0) return null;
  c.use(bar, ...spared.map(({ at }) => at));
  const rest = named.filter(({ at }) => at < bar);
  const found = gathered(
    rest.map(({ entity }) => entity),
    rest.map(({ at }) => at),
  );
  return { ...found, except: [...new Set(spared.flatMap(({ entity }) => entity.ids))].sort(compareIds) };
}

/** "All the used ones are scrubbed and rinsed except 15": the set stands in the clause before; ids behind "except" alone are never what was done. */
function sparedBefore(c: Clause, named: readonly { at: number; entity: TipsSaid }[]): TipsFound | null {
  const bar = c.word(LEAVING_OUT);
  const spared = named.filter(({ at, entity }) => bar >= 0 && at > bar && entity.which === undefined);
  const kept = bar >= 0 ? sparedOfIds(named, bar) : null;
  if (kept !== null) {
    c.use(bar, ...named.map(({ at }) => at));
    const [first] = named;
    return first === undefined
      ? null
      : gathered(
          [{ ...first.entity, ids: kept }],
          named.map(({ at }) => at),
        );
  }
  const last = c.scope.memory.tips;
  if (spared.length === 0 || named.some(({ at }) => at < bar)) return null;
  // "Except B4's pouch came out wet" tells of B4, where nothing it could be left out of was said.
  if (last?.which === undefined && bar === 0 && verbBehind(c.parts, spared[0]?.at ?? 0)) return null;
  c.use(bar, ...spared.map(({ at }) => at));
  if (last?.which === undefined)
    return {
      ...gathered(
        [],
        spared.map(({ at }) => at),
      ),
      missing: { about: 'tip', slot: 'tips', form: 'ids' },
    };
  const except = [...new Set([...last.except, ...spared.flatMap(({ entity }) => entity.ids)])];
  return gathered([{ ...last, except }], 'the tips spoken of just before');
}

function gathered(list: readonly TipsSaid[], said: readonly number[] | string): TipsFound {
  const ids = [...new Set(list.flatMap((tips) => tips.ids))].sort(compareIds);
  const except = [...new Set(list.flatMap((tips) => tips.except))].sort(compareIds);
  const unknown = list.flatMap((tips) => tips.unknown);
  const choices = list.flatMap((tips) => tips.choices);
  const which = list.find((tips) => tips.which !== undefined)?.which;
  const base = {
    ids,
    except,
    said,
    unknown,
    spoken: typeof said !== 'string',
    ...(which === undefined ? {} : { which }),
  };
  if (choices.length > 0) return { ...base, missing: { about: 'tip', choices, slot: 'tips', form: 'ids' } };
  if (unknown.length > 0)
    return { ...base, missing: { about: 'tip', slot: 'tips', form: 'ids', words: unknown.join(' ') } };
  return base;
}

/** The slots of a fact that says which tips. */
export function tipSlots(tips: TipsFound): Record<string, unknown> {
  return {
    ...(tips.ids.length > 0 ? { tips: tips.ids } : {}),
    ...(tips.which === undefined ? {} : { which: tips.which }),
    ...(tips.except.length > 0 ? { except: tips.except } : {}),
  };
}
