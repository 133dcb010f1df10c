import type { Entity, Part } from '../../part.ts';

/**
 * A short question as one line for patterns: names and times of its own stand as `<scanner>`, `<tip>`, `<time>` …, words for
 * the same thing are one, articles, greetings, thanks and marks are left out.
 */
export interface Shape {
  /** With its places and times: "whats at <site>". */
  readonly line: string;
  /** Without them: "whats booked" of "what's booked at North tomorrow?". */
  readonly core: string;
}

/** Longer notes are no such questions. */
const LONGEST = 18;

/** `null` where the parts are too many, or hold a mark that no short question has. */
export function shapeOf(parts: readonly Part[]): Shape | null {
  if (parts.length === 0 || parts.length > LONGEST) return null;
  const words: string[] = [];
  for (const part of parts) {
    if (part.entity === undefined && QUIET.test(part.text)) continue;
    if (part.mark && part.text !== ',' && part.entity === undefined) return null;
    words.push(part.entity === undefined ? wordOf(part) : holderOf(part.entity, part.text));
  }
  const line = withoutCourtesy(alike(words.filter((word) => word !== '').join(' ')));
  return line === '' ? null : { line, core: withoutPlaces(line) };
}

const QUIET = /^[?!.\-–—…]+$|^\n$/;

/** Things of ours under one word, whatever people call them. */
const THINGS = new Map([
  ['scanner', 'scanner'],
  ['tip', 'tip'],
  ['autoclave', 'autoclave'],
  ['cover', 'cover'],
]);
const TESTS = new Set(['spore', 'penetration', 'control', 'leak']);

function wordOf({ senses, text }: Part): string {
  for (const { sort, tag } of senses) {
    if (sort !== 'noun') continue;
    if (TESTS.has(tag)) return '<test>';
    const thing = THINGS.get(tag);
    if (thing !== undefined) return text.endsWith('s') && text !== 'ios' ? `${thing}s` : thing;
  }
  return text;
}

function holderOf(entity: Entity, text: string): string {
  switch (entity.is) {
    case 'tips':
      if (entity.which !== undefined) return `<${entity.which}-tips>`;
      if (!entity.named) return '<number>';
      return entity.ids.length + entity.unknown.length + entity.choices.length === 1 ? '<tip>' : '<tips>';
    case 'scanner':
      // "A scanner" is any of them, also where one is called A
      if (/^a(?: |$)/.test(text)) return text;
      return entity.named === 'noun' ? text : '<scanner>';
    case 'load':
      return entity.named ? '<load>' : '<number>';
    case 'some':
      return `${entity.of}s`;
    case 'time':
      if (entity.span.now !== true) return '<time>';
      return text === 'now' ? text : '';
    default:
      return `<${entity.is}>`;
  }
}

/** "Remind me when the spore test is due", "when we close": asked in the order of a statement. */
const TURNED =
  /^(when|where) ((?:<[a-z-]+>|last|next|first|scanner|tips?|autoclave|spore|weekly|daily|test|scan|order|calibration|everything|scanners)(?: (?:<[a-z-]+>|test|scan|calibration|scanner))?) (?:is|are|was|were)(?= |$)/;

/** How people write the same: apostrophes left out, text-speak, articles, "have we got" for "is there". */
function alike(line: string): string {
  return line
    .replaceAll(" 's", "'s")
    .replaceAll(" 're", "'re")
    .replace(SHORT, (word) => IN_FULL.get(word) ?? word)
    .replace(/\b(?:the|our|an|all of|any of) /g, '')
    .replace(/\b(?:of|on|about) <time>/g, '<time>');
}

const IN_FULL = new Map([
  ['wat', 'what'],
  ['wot', 'what'],
  ['wots', "what's"],
  ['wats', "what's"],
  ['whr', 'where'],
  ['wen', 'when'],
  ['hav', 'have'],
  ['u', 'you'],
  ['r', 'are'],
  ['b4', 'before'],
  ['owt', 'anything'],
  ['ne', 'any'],
  ['isnt', "isn't"],
  ['2day', 'today'],
  ['any 1', 'anyone'],
  ['some 1', 'someone'],
  ['nuff', 'enough'],
  ['dunno', 'do not know'],
]);
const SHORT = new RegExp(`\\b(?:${[...IN_FULL.keys()].join('|')})\\b`, 'g');

/** Greetings before and thanks behind say nothing of what is asked. */
function withoutCourtesy(line: string): string {
  return line
    .replace(BEFORE, '')
    .replace(BEHIND, '')
    .replace(TURNED, '$1s $2')
    .replace(/^(what|when|where|who|how)(?:'?s|'re| is| are) /, '$1s ');
}

const BEFORE =
  /^(?:(?:(?:(?:can|could) (?:i|we) (?:get|have|see) |give me |show me |send me |get me |i need )?(?:a |full )?list of(?= what)|hi|hello|hey|hiya|morning|good morning|afternoon|good afternoon|evening|bot|so|ok|okay|right|and|but|just|sorry|please|pls|plz|eh|aye|oi|here|now then|now|quick one|quick question|question|remind me|can you tell me|could you tell me|can you remind me|can someone tell me|do you know|do we know|does anyone know|anyone know|anybody know|any idea|any idea if|tell me|let me know|i need to know|need to know|just checking|just wondering|wondering|can i ask|may i ask|hi im locum|im locum|im new|wonder|i wonder|wondering if you can tell me|um|erm|well|then|could you let me know|can you let me know|let us know|inform me|kindly|can you check|could you check|check|find out|not sure|im not sure|i forget|i forgot|ive forgotten|forgot|i cant remember|cant remember|all|team|folks|guys|everyone|lads|girls|ladies|there|,)(?: |$))+/;
const BEHIND =
  /(?: (?:please|pls|plz|thanks|thank you|ta|cheers|thx|right now|at moment|at present|at the moment|atm|currently|so far|mate|love|hun|folks|guys|lads|team|everyone|everybody|bot|lah|yeah|yea|do you know|does anyone know|anyone know|any idea|then|again|at all|exactly|actually|,|kindly|asap|already|altogether|in total|again|na|so))+$/;

/** What says where and when, taken out: it is read by itself. */
function withoutPlaces(line: string): string {
  return line
    .replace(PLACES, '')
    .replace(/^ +/, '')
    .replace(BEHIND, '')
    .replace(/ {2,}/g, ' ')
    .replace(/(?<!\b(?:what|do|next|going on)) (?:now|yet|still)$/, '');
}

const PLACES =
  /(?:^| )(?:(?:for|on|in|at|of|from|by|since|until|till|over|up|down|during|within) )*(?:<time>|<site>|<room>)(?:'s)?/g;
