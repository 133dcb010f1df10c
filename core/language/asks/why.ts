import { type Ask, ask, wordsOf } from './ask.ts';

/** "Why?" in reply. */
export const why: Ask = {
  name: 'ask:why',
  read(c) {
    const text = wordsOf(c);
    if (
      !/^(why|but why|why so|why is that|why's that|why did you (say|think|put|record|log|do) (that|this|so)|how come|how did you (get|know|work) (that|that out)|why that|explain|explain that|says who|what makes you (say|think) (that|so)|how do you know|why not|where did (you|u) get (that|this)( from)?|and why is that|why's that|why did (you|u) (put|write) (that|it))$/.test(
        text,
      )
    )
      return null;
    for (const i of c.parts.keys()) c.use(i);
    return { ...ask('why', {}, 9), whole: true };
  },
};
