import { hasTag, type Part } from './part.ts';

/** Verbs that open a clause of their own where no joint was written ("used tip four on blue wiped it down"). */
function starter(part: Part): string | null {
  if (part.entity !== undefined) return null;
  for (const sense of part.senses) {
    if (sense.sort === 'verb' && sense.form === 'd' && !SHADES.has(sense.tag)) return sense.tag;
  }
  return null;
}

const SHADES = new Set([
  'be',
  'have',
  'do',
  'pass',
  'fail',
  'finish',
  'get',
  'see',
  'say',
  'know',
  'give',
  'keep',
  'come',
  'go',
  'need',
  'open',
  'turn',
  'tear',
  'crack',
  'start',
  'check',
  'show',
  'release',
  'add',
  'sick',
  'dead',
  'cover-up',
  'work',
  'run',
  'cold',
  'disconnect',
]);

/** "Scan done", "tip 10 off": an act told without a verb of its own. */
function ending(parts: readonly Part[], i: number): string | null {
  const part = parts[i];
  if (part === undefined || part.entity !== undefined) return null;
  if (
    hasTag(part, 'finish') &&
    parts.slice(Math.max(0, i - 3), i).some((p) => hasTag(p, 'scan') || hasTag(p, 'calibrate'))
  )
    return 'finish';
  if (
    part.text === 'off' &&
    parts[i - 1]?.entity?.is === 'tips' &&
    !parts.slice(0, i).some((p) => hasTag(p, 'take') || hasTag(p, 'remove') || hasTag(p, 'put'))
  )
    return 'off';
  if (
    hasTag(part, 'cover') &&
    i > 0 &&
    !/^(no|without|any)$/.test(parts[i - 1]?.text ?? '') &&
    /^(on|back on)$/.test(parts[i + 1]?.text ?? '')
  )
    return 'cover';
  if (opensCause(parts, i)) return 'cause';
  return part.text === 'on' &&
    parts[i - 1]?.entity?.is === 'tips' &&
    parts.slice(0, i - 1).some((p) => p.text === 'off')
    ? 'on'
    : null;
}

const SIGNS = ['crack', 'scratch', 'fog', 'fray', 'tear', 'mirror', 'strip'];

/** "Binned 11 cracked mirror": why it went, run on to the end. */
function opensCause(parts: readonly Part[], i: number): boolean {
  const before = parts.slice(0, i);
  const part = parts[i];
  return (
    parts[i - 1]?.entity?.is === 'tips' &&
    before.some((p) => p.entity === undefined && (hasTag(p, 'retire') || hasTag(p, 'hold'))) &&
    !before.some((p) => hasTag(p, 'strip') || hasTag(p, 'neg')) &&
    part?.entity === undefined &&
    SIGNS.some((tag) => hasTag(part, tag)) &&
    parts.slice(i).every((p) => p.entity === undefined)
  );
}

/** "Sent it to be autoclaved": what it was sent for. */
function isPurpose(parts: readonly Part[], i: number): boolean {
  // "Asked me to put on here that she wiped blue".
  if (parts[i - 1]?.text === 'to' && parts[i]?.senses.some((s) => s.form === 'b') && hasTag(parts[i], 'put'))
    return true;
  return /^(to be|be)$/.test(parts[i - 1]?.text ?? '') && parts.slice(0, i).some((p) => hasTag(p, 'send'));
}

const OBJECTS = new Set(['tips', 'scanner', 'load', 'some', 'autoclave']);

function isObject(part: Part | undefined): boolean {
  if (part === undefined) return false;
  if (part.entity !== undefined) return OBJECTS.has(part.entity.is);
  return (
    hasTag(part, 'tip') ||
    hasTag(part, 'scanner') ||
    hasTag(part, 'lens') ||
    hasTag(part, 'base') ||
    hasTag(part, 'cover')
  );
}

/** Nobody writes more than this without a mark; past it a segment is left whole, so that the cost stays linear. */
const LONGEST = 200;

/** Cuts a segment that holds several acts with no joint between them. */
export function cutAtActs(parts: readonly Part[]): (readonly Part[])[] {
  const starts = parts
    .map((part, i) => ({ i, tag: isPurpose(parts, i) ? null : (starter(part) ?? ending(parts, i)) }))
    .filter((s) => s.tag !== null);
  if (starts.length < 2 || parts.length > LONGEST) return [parts];
  const cuts: number[] = [];
  for (let k = 1; k < starts.length; k++) {
    const before = starts[k - 1];
    const here = starts[k];
    if (before === undefined || here === undefined || before.tag === here.tag) continue;
    if (isOneAct(parts, before.i, before.tag, here.i, here.tag)) continue;
    // "Scan done used tip 7": what has ended needs nothing more.
    if (
      before.tag === 'finish' &&
      here.i === before.i + 1 &&
      ending(parts, before.i) === 'finish' &&
      cutsOff(parts, here.i)
    ) {
      cuts.push(here.i);
      continue;
    }
    const cut = cutBetween(parts, cuts.at(-1) ?? 0, before.i, here.i);
    if (cut > (cuts.at(-1) ?? 0)) cuts.push(cut);
  }
  const pieces: (readonly Part[])[] = [];
  let from = 0;
  for (const cut of [...cuts, parts.length]) {
    if (cut > from) pieces.push(parts.slice(from, cut));
    from = cut;
  }
  return pieces;
}

/** What is no act apart from the one before it. */
function isOneAct(
  parts: readonly Part[],
  before: number,
  tag: string | null,
  here: number,
  next: string | null,
): boolean {
  // "Haven't wiped or covered green": one denial for both.
  if (/^n?or$/.test(parts[here - 1]?.text ?? '')) return true;
  // "Dropped 5 and 6 in the ultrasonic": where they were put.
  if (tag === 'drop' && next === 'wash' && /^in /.test(parts[here]?.text ?? '')) return true;
  // "Put tip 5 back on the shelf dirty": how it is is told of where it was put.
  return tag === 'sterile' && next === 'use' && here === before + 1;
}

/** Steps that are told one after another with nothing between ("used washed bagged"). */
const ROUND = new Set([
  'use',
  'wash',
  'bag',
  'send',
  'wipe',
  'cover',
  'sterile',
  'check',
  'remove',
  'clean',
  'sterilise',
]);

function cutsOff(parts: readonly Part[], i: number): boolean {
  return (
    ['use', 'wipe', 'take', 'remove', 'wash'].some((tag) => hasTag(parts[i], tag)) &&
    parts[i + 1] !== undefined
  );
}

function tagOf(part: Part | undefined): string {
  return part === undefined ? '' : (starter(part) ?? '');
}

function cutBetween(parts: readonly Part[], from: number, first: number, second: number): number {
  const between = parts.slice(first + 1, second);
  const objects = between.filter(isObject).length;
  const pronoun = between.some((p) => /^(it|them|that|off|down|on)$/.test(p.text) || p.entity !== undefined);
  if (objects === 0 && !pronoun && !(ROUND.has(tagOf(parts[first])) && ROUND.has(tagOf(parts[second]))))
    return -1;
  const subjectFirst = parts.slice(from, first).some(isObject);
  let at = second;
  while (at > first + 1 && glueOnly(parts[at - 1])) at--;
  if (isObject(parts[at - 1]) && (subjectFirst || objects > 1)) {
    at--;
    while (at > first + 1 && /^(the|and|then|our)$/.test(parts[at - 1]?.text ?? '')) at--;
  }
  return at > first ? at : -1;
}

function glueOnly(part: Part | undefined): boolean {
  if (part === undefined || part.entity !== undefined) return false;
  return (
    /^(and|then|i|we|i've|we've|have|has|been|just|also|now|it's|its|it|was|is|are|were|'s|they|they're|ive|weve|all|both|not|never|haven't|hasn't|had|he|she|i then|i have|then i)$/.test(
      part.text,
    ) && !/^(it)$/.test(part.text)
  );
}
