import type { Clause } from '../clause.ts';
import { placeOf } from '../roles/place.ts';
import { type Ask, type AskResult, ask, oneItem, siteOf, WH, wordsOf } from './ask.ts';

/** When, or by whom, something was last done. */
export const last: Ask = {
  name: 'ask:last',
  read(c, question) {
    const text = wordsOf(c);
    const when = ASKS_LAST.test(text) && (question || PLAIN.test(text));
    if ((!when && !(question && DONE.test(text))) || isToCome(c, text)) return null;
    const of = lastOf(c);
    if (of === null || (!when && asksSomeone(c))) return null;
    c.useTags(
      ...WH,
      'calibrate',
      'scan',
      'wipe',
      'move',
      'temp',
      'clean',
      'take',
      'unit',
      'bring',
      'use',
      'go',
      'run',
      'finish',
      'check',
      'travel',
      'base',
      'lens',
      'put',
      'swap',
      'come',
      'degree',
      'send',
    );
    return ofItem(c, of, when);
  },
};

/** The ask with the item it names, of all of them where it names none. */
function ofItem(c: Clause, of: string, when: boolean): AskResult | null {
  const item = namesOne(c) ? oneItem(c) : null;
  if (item === null && !when && of !== 'calibration') return null;
  if (item?.missing !== undefined) {
    // "When was the scanner last calibrated?" is answered for all of them.
    if (item.missing.words === undefined) return ask('last', { of, ...siteOf(c) }, 1);
    return ask('last', { of }, 1, {}, item.missing);
  }
  for (const one of c.entities('time')) c.use(one.at);
  for (const one of c.entities('person')) c.use(one.at);
  const site = of === 'temperature' || item === null ? siteOf(c) : {};
  placeOf(c);
  return ask(
    'last',
    { of, ...(item === null ? {} : { item: item.item }), ...site },
    when ? 1 : 0.6,
    item === null ? {} : { item: item.said },
  );
}

const ASKS_LAST =
  /\bwhen('s|s| was| were| did| is| has| have|)\b|\bwhen (did|was|were)|last time|\blast\b|how long (ago|since|has|have)|who (last|calibrated|moved|wiped|cleaned|took|scanned|did|brought|carried|shifted|used|cal'd|put|disinfected)|latest|most recent|what was the last|days since|been (calibrated|wiped|cleaned|moved)|who was the last|date of|^(did|has|have) (anyone|anybody|someone|somebody|any1)|when did .* come/;

/** Without a question mark, only these leave no doubt that the last time is asked for. */
const PLAIN = /last|latest|\bwho\b|recent|how long|date of|since|been|^when/;
/** "So green's been calibrated?", "green calibrated yet?" */
const DONE = /(\byet\b|\btoday\b|\bare\b|has|have|did|was|were|is|been|'s|anyone|anybody|so|we|someone)/;

/** "When is it due?", "when should I calibrate?", "how many times": asked of what is to come, or of a number. */
function isToCome(c: Clause, text: string): boolean {
  if (/how many|\bwhen .*\bwill\b|procedure|\bsteps\b|protocol/.test(text)) return true;
  if (/last/.test(text)) return false;
  return c.has('oblige') || /\b(when|what time) (is|are|do|does|will|should|can|must|'s .* due)\b/.test(text);
}

/** True where one thing is asked about, not scanners in general. */
function namesOne(c: Clause): boolean {
  if (c.entities('scanner').length + c.entities('no-scanner').length > 0 || c.at('caltip') >= 0) return true;
  if (c.entities('tips').some(({ entity }) => entity.named)) return true;
  const noun = c.at('scanner');
  return noun >= 0 && !/s$/.test(c.parts[noun]?.text ?? '');
}

/** "Can someone wipe A?" asks for it to be done. */
function asksSomeone(c: Clause): boolean {
  if (/^(did|has|have)$/.test(c.parts[0]?.text ?? '')) return false;
  return ['calibrate', 'wipe', 'clean', 'move', 'scan', 'take', 'bring'].some((tag) =>
    c.parts.some(
      (p) =>
        p.entity === undefined &&
        p.senses.some((s) => s.tag === tag && s.form === 'b') &&
        !p.senses.some((s) => s.tag === tag && s.form === 'd'),
    ),
  );
}

/** "Reading the message" is no reading of ours. */
function isOfTemperature(c: Clause): boolean {
  const text = wordsOf(c);
  return (c.at('temp') >= 0 && !/\breading the\b/.test(text)) || /how (warm|cold|hot) was it/.test(text);
}

function lastOf(c: Clause): string | null {
  if (c.at('calibrate') >= 0) return 'calibration';
  if (c.at('wipe') >= 0 || c.form('clean', 'd') >= 0) return 'wipe';
  if (isOfTemperature(c)) return 'temperature';
  if (
    c.at('move') >= 0 ||
    (c.at('come') >= 0 && c.word(/^when$/) >= 0) ||
    c.form('take', 'd') >= 0 ||
    c.form('bring', 'd') >= 0 ||
    c.form('travel', 'd') >= 0
  )
    return 'move';
  if (c.at('scan') >= 0 || c.form('use', 'd') >= 0 || (c.at('use') >= 0 && c.word(/^(the )?last$/) >= 0))
    return 'scan';
  return null;
}
