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
    const topic = fogs ? { topic: 'fogging', at: c.at('fog') } : topicOf(c);
    if (topic === null) return null;
    if (
      topic.topic === 'tips' &&
      topic.at >= 0 &&
      c.parts[topic.at]?.entity === undefined &&
      !c.has('wash', 'bag', 'fit', 'remove', 'autoclave', 'clean', 'do', 'tip')
    )
      return null;
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
    );
    for (const [i, part] of c.parts.entries())
      if (part.entity !== undefined && part.entity.is !== 'number') c.use(i);
    if (!hasAnchor(c) && !(question && isItsCare(c, topic.topic))) return null;
    return ask('how', { topic: topic.topic }, 1.6, { topic: [topic.at] });
  },
};

const ASKS_HOW =
  /\bhow (do|does|to|must|is|should|can|would|are|am|did|long|often|d'?you|you|we|best|i|one|calibrate)\b|how's|\b(steps|instructions|guide|procedure|protocol|best way|right way|what's the way|proper way|correct way|what is the way|process) (for|to|of)\b|\bwhat('s| is) the (procedure|process|protocol|best way|right way|drill|routine|proper way|correct way)|(show|tell|remind) me how|remind me how|(walk|talk|take|run|step) (me|us) through|(show|teach|tell) (me|us) (how|the way)|can (someone|you|anyone|somebody) (show|tell|remind|explain|talk|walk) (me )?(to me )?(how|through)|explain how|how-to|(what|wat) (do|should) (i|we|you) do (to|with|when|if)|not sure how to|don't know how to|forgot how to|forgotten how to|can't remember how to|cant remember how to|unsure how to|anyone know how to|know how to|do i need to warm|what's the trick/;
const ASKS_OF_FOG =
  /why|how come|what's (causing|making)|what causes|what makes|how do (i|we|you) stop|stop .* (fogging|misting|steaming)|what can i do|(what|wat) (do|should) (i|we) do|any (tips|ideas|advice)|what helps|prevent/;

/** "How long ago", "how is it going", "what has it to do with": no way of doing things. */
function isOtherHow(c: Clause, text: string): boolean {
  if (/to do with|how long (ago|since|has|have|till|until|before)/.test(text)) return true;
  if (/how (long|often)/.test(text) && !c.has('heat', 'calibrate', 'load')) return true;
  return /how (do|does|are|is|did) (it|you|they|he|she|we) (look|feel|go|going|doing)\b/.test(text);
}

function hasAnchor(c: Clause): boolean {
  if (c.has('calibrate', 'scanner', 'tip', 'autoclave', 'fog', 'load', 'lens', 'cover', 'wipe', 'sterilise'))
    return true;
  return c.entities('scanner').length + c.entities('tips').length > 0;
}

/** "How do I wipe it down?": "it" is the scanner where nothing else is cared for so. */
function isItsCare(c: Clause, topic: string): boolean {
  return isWh(c, /^(it)$/) && (c.has('wipe') || topic === 'set-up' || topic === 'warm-up');
}
