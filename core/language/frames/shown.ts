import type { Clause } from '../clause.ts';
import { type Frame, made, result } from './frame.ts';

/** What can be shown or asked about how to do: from the words that name it. */
export function topicOf(c: Clause, from = 0): { topic: string; at: number } | null {
  const has = (...tags: string[]) => tags.map((tag) => c.at(tag, from)).find((i) => i >= 0) ?? -1;
  const checks: [string, number][] = [
    ['calibrate', has('calibrate', 'caltip')],
    ['fogging', has('fog')],
    ['warm-up', has('heat', 'heater')],
    ['load', has('load', 'sterilise')],
    [
      'set-up',
      c.word(
        /^(set up|setup|set-up|set it up|setting up|setting|set|plug|plug in|assemble|install|put together)$/,
        from,
      ),
    ],
    ['clean', has('wipe')],
    ['move', packing(c, from)],
    ['tips', has('wash', 'bag', 'fit', 'remove', 'autoclave')],
    ['clean', has('clean', 'lens', 'base')],
    ['move', has('move', 'travel')],
    ['move', c.word(/^(carry|carrying|transport|transporting)$/, from)],
    ['move', c.word(/^(pack|pack up|packing)$/, from)],
    ['tips', has('tip')],
  ];
  for (const [topic, at] of checks) if (at >= 0) return { topic, at };
  const tips = c.first('tips');
  return tips === null ? null : { topic: 'tips', at: tips.at };
}

/** Packing a scanner, or for the road, is for a move; packing tips is bagging them. */
function packing(c: Clause, from: number): number {
  const at = c.word(/^(pack|pack up|packing|packed|packed up|packing up)$/, from);
  const road =
    c.has('scanner', 'travel', 'move', 'car', 'clinic') ||
    c.entities('scanner').length + c.entities('site').length > 0 ||
    c.word(/^(road|drive|trip|journey|travelling|traveling|her|him)$/) >= 0 ||
    (/up$/.test(c.parts[at]?.text ?? '') && c.entities('tips').length === 0);
  return at >= 0 && road && !c.has('tip') ? at : -1;
}

/** "Took Ines through loading", "ran Jack through calibrating". */
function tookThrough(c: Clause): number {
  const verb = [c.exactly('take', 'd'), c.exactly('run', 'd')].find((i) => i >= 0) ?? -1;
  const through = c.word(/^through$/, verb + 1);
  const person = c.first('person');
  return verb >= 0 && person !== null && person.at > verb && through > person.at ? verb : -1;
}

/** "Trained Kofi and Bríd on calibration": those joined to the first. */
function alsoShown(c: Clause, from: number) {
  const people = c.entities('person').filter(({ at }) => at > from);
  const joined = people.filter(
    ({ at }, i) => at === from + 2 * (i + 1) && /^(and|&|,|\+|n)$/.test(c.parts[at - 1]?.text ?? ''),
  );
  c.use(...joined.map(({ at }) => at));
  return joined;
}

export const shown: Frame = {
  name: 'shown',
  on: ['show', 'word:through'],
  read(c) {
    const verb = c.form('show', 'd') >= 0 ? c.form('show', 'd') : tookThrough(c);
    if (verb < 0) return null;
    // "Farrah was shown how to calibrate by Maureen": who stands behind "by" showed it.
    const people = c.entities('person').filter(({ at }) => c.prep(at) !== 'by');
    const person = people.find(({ at }) => at > verb) ?? people.find(({ at }) => at < verb);
    if (person === undefined) return null;
    const passive =
      (person.at < verb && c.word(/^(been|was|has been|'s been|were|got|is)$/) >= 0) ||
      c.parts[verb]?.text === 'shown';
    if (person.at < verb && !passive) return null;
    const topic = topicOf(c);
    if (topic === null) return null;
    c.use(verb, person.at, topic.at);
    c.useTags(
      'calibrate',
      'wipe',
      'clean',
      'move',
      'bag',
      'wash',
      'fit',
      'load',
      'scanner',
      'tip',
      'autoclave',
      'run',
      'do',
      'put',
      'sterilise',
      'fog',
      'wh',
      'heat',
      'travel',
      'remove',
      'cover',
      'lens',
      'base',
      'use',
      'tips',
      'swap',
      'autoclave',
    );
    for (const one of [...c.entities('scanner'), ...c.entities('tips'), ...c.entities('autoclave')])
      c.use(one.at);
    return result(
      [person, ...alsoShown(c, person.at)].map(({ at, entity }) =>
        made('shown', { person: entity.name, topic: topic.topic }, { person: [at], topic: [topic.at] }),
      ),
      verb,
      undefined,
      person.entity.known ? 1.3 : 0.8,
    );
  },
};
