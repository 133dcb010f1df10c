import type { Clause } from '../clause.ts';
import { hasTag } from '../part.ts';
import type { Missing, Result } from '../result.ts';
import { isDenied } from '../roles/outcome.ts';
import { placeOf } from '../roles/place.ts';
import { scannersOf } from '../roles/scanner.ts';
import { type TipsFound, tipSlots, tipsOf } from '../roles/tips.ts';
import { type Frame, made, result, tipFact } from './frame.ts';

/** The scanner that a clause names beside its tips ("used tip 4 on Robin"), if it names one. */
function namedScanner(c: Clause) {
  if (c.entities('scanner').length === 0 && c.at('scanner') < 0 && c.entities('no-scanner').length === 0)
    return null;
  return scannersOf(c);
}

export const used: Frame = {
  name: 'used',
  on: ['use'],
  read(c) {
    const verb = c.form('use', 'd');
    if (verb < 0) return null;
    c.use(verb);
    const tips = tipsOf(c, { bare: true, before: false });
    const before =
      tips ?? (c.word(/^(it|them|that|this|those)$/) >= 0 || c.parts.length <= 3 ? tipsOf(c, {}) : null);
    if (before === null) return null;
    // "Pulled 23 off, in the dirty box": where it was put says no more than that it came off.
    const put = /^in the /.test(c.parts[verb]?.text ?? '');
    const still =
      /^(dirty|mucky|manky)$/.test(c.parts[verb]?.text ?? '') && c.scope.memory.frame === 'inspected';
    if (still && typeof before.said === 'string') return null;
    if (put && typeof before.said === 'string' && c.scope.memory.frame === 'removed') return null;
    const scanner = namedScanner(c);
    const [id, second] = scanner?.ids ?? [];
    const slots = {
      ...tipSlots(before),
      ...(id !== undefined && second === undefined && scanner?.missing === undefined ? { scanner: id } : {}),
    };
    const ones = /^ones$/.test(c.parts[verb + 1]?.text ?? '');
    if (ones) c.useTags('unit', 'shelf', 'be');
    c.useTags('use');
    return result(
      [made('used', slots, { tips: before.said, ...(scanner === null ? {} : { scanner: scanner.said }) })],
      verb,
      before.missing ?? (scanner?.spoken && typeof scanner.said !== 'string' ? scanner.missing : undefined),
      // "Used ones are 1 and 5".
      ones ? 0.8 : 0,
    );
  },
};

/** "Took tip 5 of", "tip 5 of": one letter short of "off". */
function ofForOff(c: Clause): number {
  const at = c.word(/^of$/);
  const tipBefore = c.parts[at - 1]?.entity?.is === 'tips';
  const after = c.parts[at + 1];
  return at > 0 &&
    tipBefore &&
    (after === undefined || after.mark || (after.entity?.is === 'scanner' && c.form('take', 'd') >= 0))
    ? at
    : -1;
}

export const removed: Frame = {
  name: 'removed',
  on: ['remove', 'word:off', 'word:of'],
  read(c) {
    const off = c.word(/^off$/) >= 0 ? c.word(/^off$/) : ofForOff(c);
    const direct = c.form('remove', 'dg');
    const took = c.form('take', 'd');
    const verb = direct >= 0 ? direct : off >= 0 && took >= 0 ? took : off;
    if (verb < 0) return null;
    if (
      direct < 0 &&
      off >= 0 &&
      c.has('hold', 'travel', 'wipe', 'cancel', 'leave', 'cover', 'scan', 'mirror')
    )
      return null;
    // "The mirror of tip 12 has come off": that is a fault of it.
    if (c.has('mirror') && took < 0) return null;
    if (direct >= 0 && !hasTag(c.parts[direct], 'remove')) return null;
    c.use(direct, took, off);
    const tips = tipsOf(c, { bare: direct >= 0 || took >= 0 || c.parts.length <= 5 });
    if (tips === null || (tips.said !== undefined && typeof tips.said === 'string' && direct < 0 && took < 0))
      return null;
    namedScanner(c);
    c.useTags('get');
    return result([made('removed', tipSlots(tips), { tips: tips.said })], verb, tips.missing, 0.5);
  },
};

/** What is said of a tip or scanner besides fitting it: then "on" tells where, not that it was put there. */
const NOT_FITTING = [
  ...[
    'use',
    'start',
    'scan',
    'crack',
    'fog',
    'load',
    'wipe',
    'wash',
    'bag',
    'scratch',
    'drop',
    'cover',
    'lens',
    'base',
  ],
  ...['calibrate', 'mirror', 'pouch', 'strip', 'debris', 'cable', 'lose', 'find'],
];

/** "Loaded tip 7 on blue": a scanner is loaded with a tip, an autoclave with a load. */
function loadedOn(c: Clause): number {
  const scanner = c.first('scanner');
  return scanner !== null && /^(on|to)$/.test(c.prep(scanner.at)) ? c.exactly('load', 'd') : -1;
}

export const fitted: Frame = {
  name: 'fitted',
  on: [
    'fit',
    'put',
    'word:on',
    'word:onto',
    'word:on to',
    'word:back on',
    'word:back onto',
    'word:->',
    'word:on it',
    'load',
  ],
  read(c) {
    const on = c.word(/^(on|onto|on to|back on|back onto|->|on it|on her|on him)$/);
    const fit = c.form('fit', 'dn') >= 0 ? c.form('fit', 'dn') : loadedOn(c);
    const put = c.form('put', 'd');
    if ((fit < 0 && on < 0) || c.has(...NOT_FITTING.filter((tag) => tag !== 'load' || loadedOn(c) < 0)))
      return null;
    const tips = tipsOf(c, { bare: true, before: false }) ?? (fit >= 0 || put >= 0 ? tipsOf(c, {}) : null);
    if (tips === null) return null;
    const scanner = scannersOf(c);
    if (
      /^on (it|her|him)$/.test(c.parts[on]?.text ?? '') &&
      c.first('scanner') === null &&
      c.scope.memory.scanners.length === 0
    )
      return null;
    if (!scanner.spoken && fit < 0 && !(put >= 0 && on >= 0) && !endsOn(c, on)) return null;
    c.use(fit, put, on);
    c.useTags('click');
    placeOf(c);
    const [tip, more] = tips.ids;
    const [id, second] = scanner.ids;
    if (more !== undefined || second !== undefined || tips.which !== undefined) return null;
    const slots = { ...(tip === undefined ? {} : { tip }), ...(id === undefined ? {} : { scanner: id }) };
    const verb = [fit, put, on].find((i) => i >= 0) ?? 0;
    return result(
      [made('fitted', slots, { tip: tips.said, scanner: scanner.said })],
      verb,
      tipMissing(tips) ?? scanner.missing,
    );
  },
};

/** "Tip 3 on": only which scanner is left out. */
function endsOn(c: Clause, on: number): boolean {
  return (
    on === c.parts.length - 1 &&
    c
      .entities('tips')
      .some(({ entity }) => entity.named || (c.scope.memory.frame === 'removed' && entity.ids.length > 0))
  );
}

/** What is missing of the one tip that is fitted. */
function tipMissing(tips: TipsFound): Missing | undefined {
  if (tips.missing === undefined || tips.ids.length > 0) return tips.missing;
  return { ...tips.missing, slot: 'tip', form: 'id' };
}

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

/** Where autoclaving is done: the words for it, an autoclave, or one of the practice's own rooms for it. */
function sterilePlace(c: Clause): number {
  const steri = c.at('steri');
  if (steri >= 0) return steri;
  const autoclave = c.at('autoclave');
  if (autoclave >= 0) return autoclave;
  const named = c.first('autoclave');
  if (named !== null) return named.at;
  const room = c
    .entities('room')
    .find(({ entity }) => entity.rooms.some((ref) => c.names.sterileRooms.has(ref)));
  return room?.at ?? -1;
}

const GOING = [
  'send',
  'go',
  'take',
  'put',
  'bring',
  'dropoff',
  'be',
  'drop',
  'leave',
  'move',
  'come',
  'load',
  'get',
  'give',
  'travel',
  'fit',
];

export const sent: Frame = {
  name: 'sent',
  on: ['send', 'steri', 'autoclave', 'room', 'sterilise'],
  read(c) {
    const send = c.form('send', 'd');
    const place = sterilePlace(c);
    const cooking = c.form('sterilise', 'g');
    if (send < 0 && place < 0 && cooking < 0) return null;
    if (place >= 0 && send < 0 && (c.prep(place) === 'from' || c.word(/^out$/) >= 0)) return null;
    if (send >= 0 && place < 0 && (c.entities('site').length > 0 || c.entities('room').length > 0))
      return null;
    if (
      c.has(
        'hold',
        'release',
        'fail',
        'pass',
        'repair',
        'scan',
        'find',
        'lose',
        'use',
        'spore',
        'penetration',
        'leak',
        'control',
      ) ||
      c.entities('load').length > 0
    )
      return null;
    const verb = send >= 0 ? send : motionVerb(c, place);
    if (verb < 0 && !/^(to|in|at)$/.test(c.prep(place))) return null;
    c.use(send, place, cooking);
    if (verb >= 0) c.use(verb);
    c.useTags('autoclave', 'load', 'send', 'sterilise');
    if (place >= 0) for (const room of c.entities('room')) c.use(room.at);
    if (c.parts[place - 1]?.entity?.is === 'site') c.use(place - 1);
    return tipFact(c, 'sent', verb >= 0 ? verb : place, { bare: true });
  },
};

function motionVerb(c: Clause, place: number): number {
  for (const tag of GOING) {
    const at = c.form(tag, 'dgs');
    if (at >= 0 && (tag !== 'be' || /^(in|at|to)$/.test(c.prep(place)))) return at;
  }
  return c.word(/^('s|gone|are|is|was|were|going|went|been)$/);
}

/** What was sterilised, or is meant to be; not what is under way or "to be autoclaved". */
function sterilisedAt(c: Clause): number {
  const at = c.form('sterilise', 'd');
  const text = c.parts[at]?.text ?? '';
  if (/^(be|to be)$/.test(c.parts[at - 1]?.text ?? '') && c.has('send', 'go')) return -1;
  return /ing$/.test(text) && c.exactly('sterilise', 'd') < 0 && !c.has('finish', 'intend') ? -1 : at;
}

export const sterile: Frame = {
  name: 'sterile',
  on: ['sterile', 'sterilise', 'autoclave', 'steri', 'room', 'come'],
  read(c) {
    if (c.has('debris', 'spore', 'held')) return null;
    let verb = c.form('sterile', 'd');
    if (verb < 0) verb = sterilisedAt(c);
    if (verb < 0) {
      const place = sterilePlace(c);
      const back = c.word(/^(back|out|out of|returned|come back|came back)$/);
      if (place < 0 || c.prep(place) !== 'from' || (back < 0 && !c.has('come', 'get', 'take', 'bring')))
        return null;
      c.use(place, back);
      verb = place;
    }
    c.use(verb);
    c.useTags('sterile', 'sterilise', 'shelf', 'autoclave', 'come');
    const tips = tipsOf(c, { bare: true });
    if (tips === null) return null;
    if (isDenied(c, verb) || c.parts[verb - 1]?.text === 'no') {
      if (tips.missing === undefined && tips.ids.length === 0) return null;
      return {
        ...result(
          [made('held', { items: tips.ids.map((id) => `tip:${id}`) }, { items: tips.said })],
          verb,
          tips.missing,
        ),
        anyMood: true,
      };
    }
    return result([made('sterile', tipSlots(tips), { tips: tips.said })], verb, tips.missing);
  },
};

interface Look {
  readonly mag: number;
  readonly check: number;
  readonly noun: number;
  readonly debris: number;
}

/** True where it is tips that were looked at, and not the oxygen or the post. */
function looksAtTips(c: Clause, look: Look, tips: TipsFound): boolean {
  if (look.mag >= 0 || look.noun >= 0 || c.word(/^inspected$/) >= 0 || c.at('tip') >= 0) return true;
  if (typeof tips.said === 'string' || c.entities('tips').some(({ entity }) => entity.named)) return true;
  if (look.check >= 0 && c.scope.strange <= 0.5) return true;
  if (/^(debris|residue|blood|gunk|soiling)/.test(c.parts[look.debris]?.text ?? '')) return true;
  return (
    look.debris >= 0 && c.scope.strange <= 1 && !/^(dirt|stain|muck)/.test(c.parts[look.debris]?.text ?? '')
  );
}

export const inspected: Frame = {
  name: 'inspected',
  on: ['check', 'inspection', 'magnifier', 'debris', 'see'],
  read(c): Result | null {
    const look: Look = {
      mag: c.at('magnifier'),
      check: c.form('check', 'dgn'),
      noun: c.at('inspection'),
      debris: c.at('debris'),
    };
    const verb = [look.check, look.noun, look.mag, look.debris].find((i) => i >= 0);
    if (verb === undefined || (c.has('pouch', 'strip') && look.mag < 0)) return null;
    c.use(look.mag, look.check, look.noun, look.debris);
    c.useTags('do', 'inspection', 'debris', 'magnifier', 'see', 'check');
    const tips = tipsOf(c, { bare: true });
    if (tips === null || !looksAtTips(c, look, tips)) return null;
    const outcome = inspectionOutcome(c, look.debris);
    c.useTags('wash', 'clean');
    if (outcome === null) return inspectedOnly(c, look, tips, verb);
    const base = result(
      [made('inspected', { ...tipSlots(tips), outcome }, { tips: tips.said })],
      verb,
      tips.missing,
    );
    return outcome === 'failed' ? { ...base, anyMood: true } : base;
  },
};

/** Looked at, with what was seen left out. */
function inspectedOnly(c: Clause, look: Look, tips: TipsFound, verb: number): Result | null {
  const plainly = c.word(/^inspected$/) >= 0 && c.scope.strange === 0;
  if (!plainly && look.mag < 0 && look.noun < 0) return null;
  const of = tips.ids.length === 1 ? { of: `tip:${tips.ids[0]}` } : {};
  const missing: Missing = tips.missing ?? { about: 'outcome', slot: 'outcome', form: 'outcome', ...of };
  return result([made('inspected', tipSlots(tips), { tips: tips.said })], verb, missing);
}

function inspectionOutcome(c: Clause, debris: number): 'passed' | 'failed' | null {
  if (debris >= 0) {
    return isDenied(c, debris) ||
      hasTag(c.parts[debris - 1], 'neg') ||
      /^(no|any|free|free of|zero)$/.test(c.parts[debris - 1]?.text ?? '')
      ? 'passed'
      : 'failed';
  }
  let found: 'passed' | 'failed' | null = null;
  for (const [i, part] of c.parts.entries()) {
    if (part.entity !== undefined) continue;
    if (
      hasTag(part, 'fail') ||
      /^(redo|dirty|again please|rewash|redoing|doing it again|needs redoing)$/.test(part.text)
    ) {
      c.use(i);
      return 'failed';
    }
    if (
      hasTag(part, 'pass') ||
      /^(clean|cleared|spotless|pristine|clear|good|fine|ok|okay|immaculate|spotlessly|sparkling)$/.test(
        part.text,
      )
    ) {
      c.use(i);
      found = isDenied(c, i) ? 'failed' : (found ?? 'passed');
    }
  }
  return found;
}

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
    const verb = [add, come, given, got, opened].find((i) => i >= 0) ?? -1;
    if (verb < 0 && fresh < 0) return null;
    if (add < 0 && fresh < 0) return null;
    const unheard = c.entities('tips').some(({ entity }) => entity.unknown.length > 0);
    if (verb < 0 && !unheard && c.word(/^(in|here)$/) < 0) return null;
    const tips = c.entities('tips');
    if (tips.length === 0 || c.entities('scanner').length > 0) return null;
    if (tips.some(({ entity }) => entity.which !== undefined)) return null;
    c.use(verb, fresh, c.at('tip'), ...tips.map(({ at }) => at));
    c.useTags('add', 'come', 'dropoff', 'get', 'have', 'unit');
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
