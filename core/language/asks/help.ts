import { type Ask, ask, wordsOf } from './ask.ts';

/** "What can you do?" */
export const help: Ask = {
  name: 'ask:help',
  read(c) {
    const text = wordsOf(c);
    if (
      !/^(please |pls |hi |hello |hey )*(help|help me|help please|help pls|menu|commands|\? help|bot help)( please| pls| bot)?$|what can (you|u) do|what are you able to do|what else can you do|what do you do|what can i (ask|say|type|tell)|how do (you|u) work|how does (this|it) work|how do i use (you|this|the bot)|what (commands|things) (can|do)|what are you for|what can this bot do|how does this bot work|what can the bot do|what can i ask you|what can (you|u) help|what (am i|are we) able to (ask|say|type)|what (kind|sort|sorts|kinds) of (things|questions|stuff) can i|what words do you (know|understand)|what do you (understand|know how to do)/.test(
        text,
      )
    )
      return null;
    for (const i of c.parts.keys()) c.use(i);
    return { ...ask('help', {}, 9), whole: true };
  },
};
