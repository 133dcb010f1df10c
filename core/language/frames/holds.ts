import type { Clause } from '../clause.ts';
import { TROUBLE } from '../lexicon/trouble.ts';
import { hasTag } from '../part.ts';
import { type ItemsSaid, itemSlots, itemsOf } from '../roles/items.ts';
import { isDenied } from '../roles/outcome.ts';
import { tipSlots, tipsOf } from '../roles/tips.ts';
import { type Frame, made, result } from './frame.ts';

/** Where "use" is forbidden: "don't use", "nobody use", "not to be used". */
function forbidden(c: Clause): number {
  for (let i = 1; i < c.parts.length; i++) {
    const part = c.parts[i];
    if (!hasTag(part, 'use') || part?.entity !== undefined) continue;
    const base = part?.senses.some((s) => s.tag === 'use' && (s.form === 'b' || s.form === 'g'));
    for (let j = i - 1; j >= 0 && j >= i - 4; j--) {
      const text = c.parts[j]?.text ?? '';
      if (
        base &&
        /^(don't|dont|do not|never|nobody|no one|noone|no-one|avoid|stop|not|cannot|can't|cant|shouldn't|mustn't|no)$/.test(
          text,
        ) &&
        !c.parts.slice(Math.max(0, j - 3), j).some((p) => /^(i|we|did|have|he|she|they|has)$/.test(p.text))
      )
        return i;
      if (!base && /^(not|never)$/.test(text) && /^(be|to be)$/.test(c.parts[i - 1]?.text ?? '')) return i;
    }
  }
  return -1;
}

/** "You can't use a tip twice": said of tips in general. */
function isOfAnyTip(c: Clause): boolean {
  const noun = c.at('tip');
  return noun > 0 && c.entities('tips').length === 0 && /^(a|an|any)$/.test(c.parts[noun - 1]?.text ?? '');
}

/** "Loki is down", "Bertha's out for service": of a machine, and nothing of where. */
function isDown(c: Clause): number {
  const [first, be, down, ...rest] = c.parts.filter((p) => !p.mark);
  const machine = first?.entity?.is === 'autoclave' || first?.entity?.is === 'scanner';
  const is =
    be?.entity === undefined && /^(is|'s|has been|went|gone|is still|'s still)$/.test(be?.text ?? '');
  if (!machine || !is || !/^(down|down again|out)$/.test(down?.text ?? '') || down === undefined) return -1;
  const on = rest.every((p) => p.entity?.is === 'time' || DOWN_FOR.test(p.text));
  return on && (down.text !== 'out' || rest.some((p) => /^(service|servicing|repair)$/.test(p.text)))
    ? c.parts.indexOf(down)
    : -1;
}

const DOWN_FOR =
  /^(again|for|service|servicing|repair|repairs|the|now|until|till|further|notice|at|moment|today|at the moment|just|a|while)$/;

export const held: Frame = {
  name: 'held',
  on: ['hold', 'use', 'release', 'safe', 'leave', 'word:down', 'word:out'],
  read(c) {
    const direct = c.form('hold', 'd');
    const ban = forbidden(c);
    const bare = c.parts.length <= 4 && c.entities('tips').length > 0 ? c.word(/^hold$/) : -1;
    const alone =
      bare >= 0
        ? bare
        : c.word(/^leave$/) >= 0 && c.word(/^alone$/) > c.word(/^leave$/)
          ? c.word(/^leave$/)
          : -1;
    const verb = [ban, direct, alone, isDown(c)].find((i) => i >= 0) ?? -1;
    if (verb < 0 || isOfAnyTip(c)) return null;
    if (alone >= 0) c.use(c.word(/^alone$/));
    if (
      direct >= 0 &&
      ban < 0 &&
      isDenied(c, direct) &&
      !/(not|don't|dont|no |never|nobody|unsafe|shouldn)/.test(c.parts[direct]?.text ?? '')
    )
      return null;
    c.use(verb, direct);
    useCause(c, verb);
    c.useTags('hold', 'use', 'unit', 'neg', 'request', 'take', 'put', 'leave');
    const items = itemsOf(c, { autoclaves: true, loads: true, bare: true });
    if (items === null) return null;
    const base = result([made('held', itemSlots(items), { items: items.said })], verb, items.missing);
    return { ...base, anyMood: true };
  },
};

export const released: Frame = {
  name: 'released',
  on: ['release'],
  read(c) {
    const order = orders(c);
    const verb = order >= 0 ? order : c.form('release', 'd');
    if (verb < 0 || isDenied(c, verb)) return null;
    const text = c.parts[verb]?.text ?? '';
    const weak =
      /^(cleared|can be used|fit for use|fine to use|ok to use|okay to use|good to use|safe to use|alright to use|back on|fine again|ok again|okay again)$/.test(
        text,
      );
    c.use(verb);
    c.useTags('release', 'sterile', 'unit', 'be', 'pass', 'work', 'use');
    // "9 ok to use again": said of a number alone where nothing else stands beside it.
    const bare =
      ((order >= 0 && c.scope.memory.frame !== '') ||
        /again|back in|now$/.test(text) ||
        c.first('time')?.entity.span.now === true) &&
      c.parts.length <= 5 &&
      c.scope.strange === 0;
    const items: ItemsSaid | null = itemsOf(c, { autoclaves: true, loads: true, bare });
    if (items === null || (weak && typeof items.said === 'string')) return null;
    if (/^back on$/.test(text)) return null;
    // Tips "of load 118" are released, not the load.
    const some = items.items.filter((item) => item.startsWith('tip:'));
    const of =
      some.length > 0 && c.word(/^(of|from|in|out of)$/, verb) >= 0 ? { ...items, items: some } : items;
    const base = result([made('released', itemSlots(of), { items: of.said })], verb, of.missing, 0.5);
    return order >= 0 ? { ...base, anyMood: true } : base;
  },
};

/** "Release load 118": nobody else can do it, so that to say it is to do it; nothing but a mark or "ok" stands before. */
function orders(c: Clause): number {
  const at = c.parts.findIndex((p) => p.entity === undefined && /^(release|reinstate|unhold)$/.test(p.text));
  const before = c.parts.slice(0, Math.max(at, 0));
  const plain = before.every((p) => p.mark || /^(ok|okay|right|yes|and|then|so|now|i|we)$/.test(p.text));
  const asked = c.has('doubt', 'intend', 'oblige', 'suppose', 'request', 'wh', 'anyq') || c.has('neg');
  const named = c.entities('load').length + c.entities('tips').length + c.entities('scanner').length > 0;
  const again = c.scope.memory.items.length > 0 || c.scope.memory.load !== null;
  return at >= 0 && plain && !asked && (named || again) ? at : -1;
}

/** What is said after "because of", "due to" belongs to the cause. */
function useCause(c: Clause, verb: number): void {
  const at = c.parts.findIndex(
    (p, i) =>
      i > verb &&
      p.entity === undefined &&
      /^(due to|due|because of|because|owing to|on account of|with|for)$/.test(p.text),
  );
  if (at < 0 || !c.parts.slice(at).some((p) => TROUBLE.some((tag) => hasTag(p, tag)))) return;
  for (let i = at; i < c.parts.length; i++) if (c.parts[i]?.entity === undefined) c.use(i);
}

export const retired: Frame = {
  name: 'retired',
  on: ['retire', 'bin', 'put'],
  read(c) {
    const gone =
      c.entities('site').length + c.entities('room').length === 0 &&
      !c.has('autoclave', 'steri', 'pouch') &&
      c.word(/^(in|on|into)$/) < 0
        ? c.word(/^(chucked|slung|lobbed|flung|threw|thrown)$/)
        : -1;
    const out = c.word(/^(out|away)$/) >= 0 ? c.word(/^(out|away)$/) : gone;
    const thrown =
      out >= 0
        ? c.parts.findIndex(
            (p) =>
              /^(chuck|chucked|threw|thrown|throw|toss|tossed|sling|slung|lobbed|flung|took)$/.test(p.text) &&
              p.text !== 'took',
          )
        : -1;
    const verb = c.form('retire', 'dg') >= 0 ? c.form('retire', 'dg') : thrown >= 0 ? thrown : c.at('bin');
    if (verb < 0) return null;
    if (thrown < 0 && !hasTag(c.parts[verb], 'retire') && !c.has('put', 'go', 'drop', 'take')) return null;
    c.use(verb, thrown >= 0 ? out : -1);
    c.useTags('retire', 'bin', 'put', 'go', 'be', 'come');
    useCause(c, verb);
    const tips = tipsOf(c, { bare: true });
    if (tips === null || c.entities('scanner').length > 0) return null;
    const threw = verb === gone && c.parts.length <= 4 ? 0.5 : 0;
    return result([made('retired', tipSlots(tips), { tips: tips.said })], verb, tips.missing, threw);
  },
};
