import { topicOf } from '../frames/shown.ts';
import { type Ask, ask, wordsOf } from './ask.ts';

/** "Who knows how to calibrate?" */
export const who: Ask = {
  name: 'ask:who-can',
  read(c) {
    const text = wordsOf(c);
    if (!/\bwho\b|\banyone\b|\banybody\b|\bwhos\b|\bwho's\b|which of/.test(text)) return null;
    if (
      !/who('s)? (can(?! (you|i|we)\b)|knows how|able|is able|'s able|is trained|is allowed|'s trained|has been (shown|trained|taught)|'s been (shown|trained|taught)|all can|here can|else can|here knows how|allowed|'s allowed|is permitted|is signed off|was shown)|who's (been (shown|trained|taught)|trained|able|allowed|signed off)|which (one )?of (the team|us|you|them|the nurses|the staff) (can|knows? how|is able|are able|are trained|is trained)|anyone (who )?(knows? how)/.test(
        text,
      )
    )
      return null;
    const topic = topicOf(c);
    if (topic === null) return null;
    for (const i of c.parts.keys()) if (c.parts[i]?.unknown !== true) c.use(i);
    return { ...ask('who-can', { topic: topic.topic }, 2, { topic: [topic.at] }), whole: true };
  },
};
