import { topicOf } from '../frames/shown.ts';
import { type Ask, ask, isWh, WH, wordsOf } from './ask.ts';

/** How something is done. */
export const how: Ask = {
  name: 'ask:how',
  read(c, question) {
    if (c.form('show', 'd') >= 0 && c.entities('person').length > 0) return null;
    const text = wordsOf(c);
    const asks =
      /\bhow (do|does|to|must|is|should|can|would|are|am|did|long|often|d'?you|you|we|best)\b|how's|\b(steps|instructions|guide|procedure|protocol|best way|right way|what's the way|proper way|correct way|what is the way|process) (for|to|of)\b|\bwhat('s| is) the (procedure|process|protocol|best way|right way|drill|routine|proper way|correct way)|(show|tell|remind) me how|remind me how|walk me through|can (someone|you|anyone|somebody) (show|tell|remind|explain|talk|walk) (me )?(to me )?(how|through)|explain how|how-to|what do i do (to|when|if)|what do we do (to|when|if)|not sure how to|don't know how to|forgot how to|forgotten how to|can't remember how to|cant remember how to|unsure how to|anyone know how to|know how to|do i need to warm|what's the trick/.test(
        text,
      );
    const fogs =
      c.has('fog') &&
      /why|how come|what's (causing|making)|what causes|what makes|how do (i|we|you) stop|stop .* (fogging|misting|steaming)|what can i do|what do (i|we) do|any (tips|ideas|advice)|what helps|prevent/.test(
        text,
      );
    if (/to do with/.test(text)) return null;
    if (!asks && !fogs) return null;
    if (/how (long|often)/.test(text) && !c.has('heat', 'calibrate', 'load')) return null;
    if (/how long (ago|since|has|have|till|until|before)/.test(text)) return null;
    if (/how (do|does|are|is|did) (it|you|they|he|she|we) (look|feel|go|going|doing)\b/.test(text))
      return null;
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
    const anchor =
      c.has('calibrate', 'scanner', 'tip', 'autoclave', 'fog', 'load') ||
      c.entities('scanner').length + c.entities('tips').length > 0 ||
      c.has('lens', 'cover', 'wipe', 'sterilise');
    if (
      !anchor &&
      !(
        question &&
        isWh(c, /^(it)$/) &&
        (c.has('wipe') || topic.topic === 'set-up' || topic.topic === 'warm-up')
      )
    )
      return null;
    return ask('how', { topic: topic.topic }, 1.6, { topic: [topic.at] });
  },
};
