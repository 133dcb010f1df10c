import type { Clause } from '../clause.ts';
import { topicOf } from '../frames/shown.ts';
import { type Ask, ask, isWh, WH, wordsOf } from './ask.ts';

/** How something is done. */
export const how: Ask = {
  name: 'ask:how',
  read(c, question) {
    if (c.form('show', 'd') >= 0 && c.entities('person').length > 0) return null;
    const text = wordsOf(c);
    const fogs = c.has('fog') && ASKS_OF_FOG.test(text);
    if ((!fogs && !ASKS_HOW.test(text)) || isOtherHow(c, text)) return null;
    const topic = fogs ? { topic: 'fogging', at: c.at('fog') } : howTopicOf(c);
    if (topic === null) return null;
    c.use(topic.at);
    c.useTags(
      ...WH,
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
      'put',
      'sterilise',
      'fog',
      'heat',
      'travel',
      'remove',
      'cover',
      'lens',
      'base',
      'use',
      'unit',
      'steri',
      'start',
      'patient',
      'go',
      'keep',
      'mirror',
      'take',
      'work',
      'check',
      'site',
      'clinic',
      'record',
      'heater',
      'magnifier',
      'finish',
      'pouch',
      'scan',
      'suppose',
      'oblige',
      'carry',
      'bring',
      'dry',
      'pass',
      'fail',
    );
    for (const [i, part] of c.parts.entries())
      if (part.entity !== undefined && part.entity.is !== 'number') c.use(i);
    if (!hasAnchor(c) && !(question && isItsCare(c, topic.topic))) return null;
    return ask('how', { topic: topic.topic }, 1.6, { topic: [topic.at] });
  },
};

/** What is asked about: cleaning a tip is the tips' topic, and a bare number ("each of the 50") none. */
function howTopicOf(c: Clause): { topic: string; at: number } | null {
  const topic = topicOf(c);
  const part = c.parts[topic?.at ?? -1];
  if (topic === null || (part?.entity?.is === 'tips' && !part.entity.named)) return null;
  if (topic.topic === 'clean' && c.has('tip') && !c.has('scanner', 'lens', 'base', 'wipe'))
    return { ...topic, topic: 'tips' };
  const loose = topic.topic === 'tips' && part !== undefined && part.entity === undefined;
  return loose && !c.has('wash', 'bag', 'fit', 'remove', 'autoclave', 'clean', 'do', 'tip') ? null : topic;
}

const ASKS_HOW =
  /\bhow (do|does|to|must|is|should|can|would|are|am|did|long|often|d'?you|d'?ye|you|we|best|i|one|calibrate)\b|how's|(calibration|cleaning|wipe-?down|moving|set-?up|warm-?up|autoclave|loading|washing) (procedure|steps|process|protocol|instructions|guide)|\b(steps|instructions|guide|procedure|protocol|best way|right way|what's the way|proper way|correct way|what is the way|process) (for|to|of)\b|\bwhat('s| is) the (procedure|process|protocol|best way|right way|drill|routine|proper way|correct way)|(show|tell|remind) me how|remind me how|(walk|talk|take|run|step) (me|us) through|(show|teach|tell) (me|us) (how|the way)|can (someone|you|anyone|somebody) (show|tell|remind|explain|talk|walk) (me )?(to me )?(how|through)|explain how|how-to|(what|wat) (do|should) (i|we|you) do (to|with|when|if)|not sure how to|don't know how to|forgot how to|forgotten how to|can't remember how to|cant remember how to|unsure how to|anyone know how to|know how to|do i need to warm|what's the trick|whats the (way|trick|drill|procedure|process)|the way to|what do (i|we|you) .* with\b|(do|should) (i|we) (have|need) to (warm|heat|wash|bag|wipe)|what do (i|we) (need|have) to do (to|when|before)|where (do|should|does) (i|we|it) plug|(setting|packing|moving|putting) .* how (do|should)/;
const ASKS_OF_FOG =
  /why|how come|what's (causing|making)|what causes|what makes|how do (i|we|you) stop|stop .* (fogging|misting|steaming)|what can i do|(what|wat) (do|should) (i|we) do|any (tips|ideas|advice)|what helps|prevent/;

/** "How long ago", "how is it going", "what has it to do with": no way of doing things. */
function isOtherHow(c: Clause, text: string): boolean {
  if (/^(so |hi |and )*how('s| is| are|'re) (?!.*\b(\w+ed|done|put|set|kept|run|packed|shut)\b)/.test(text))
    return true;
  if (/how (are|'re) (we|you|ye|things|all)\b/.test(text)) return true;
  if (
    /\b(show|teach|tell|showing|teaching) (?!me\b|us\b|you\b|someone|anyone)\w+ how\b/.test(text) &&
    !/^how/.test(text)
  )
    return true;
  if (/\bif you know how|panel/.test(text)) return true;
  if (/\bwhich\b/.test(text) && !/\bhow\b/.test(text)) return true;
  // "Does nobody know how to calibrate" is said of people
  if (/\b(nobody|no one|noone|none of)\b/.test(text)) return true;
  if (/to do with|how long (ago|since|has|have|till|until|before)/.test(text)) return true;
  if (/how (long|often)/.test(text) && !c.has('heat', 'calibrate', 'load')) return true;
  return /how (do|does|are|is|did) (it|you|they|he|she|we) (look|feel|go|going|doing)\b/.test(text);
}

function hasAnchor(c: Clause): boolean {
  if (c.has('calibrate', 'scanner', 'tip', 'autoclave', 'fog', 'load', 'lens', 'cover', 'wipe', 'sterilise'))
    return true;
  return c.entities('scanner').length + c.entities('tips').length > 0;
}

/** "How to clean?", and nothing else. */
const BARE_HOW =
  /^how (long )?(to|do (i|we|you)) (clean|wipe|move|set up|pack|warm up)( it)?( please| pls)?$/;

/** "How do I wipe it down?": "it" is the scanner where nothing else is cared for so. */
function isItsCare(c: Clause, topic: string): boolean {
  if (c.parts.length <= 5 && BARE_HOW.test(wordsOf(c))) return true;
  if (!isWh(c, /^(it|her|him)$/)) return false;
  return c.has('wipe') || /^(set-up|warm-up|move)$/.test(topic) || /between patients/.test(wordsOf(c));
}
