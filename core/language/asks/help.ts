import { type Ask, ask, wordsOf } from './ask.ts';

/** "What can you do?" */
export const help: Ask = {
  name: 'ask:help',
  read(c) {
    const text = wordsOf(c);
    if (
      !/^(please |pls |hi |hello |hey |bot |, |i )*(need help|need some help|instructions please|help me out|help me out here|need help with (the|this) bot|help|help me|help please|help pls|menu|commands|\? help|bot help)( please| pls| bot)?$|what can (you|u) do(?! (about|with|for|to)\b)|what can (you|u) do for (me|us)$|what are you able to do|what else can you do|what do you do|what can i (ask|say|type|tell)|how do (you|u) work|how does (this|it) work|how do i use (you|this|the bot)|what (commands|things) (can|do)|what are you for|what can this bot do|how does this bot work|what can the bot do|what can i ask you|what can (you|u) help|what (am i|are we) able to (ask|say|type)|what (kind|sort|sorts|kinds) of (things|questions|stuff) can i|what do (i|we) (type|write|say to you)$|what (am i|are we) (supposed|meant) to (type|say|write|ask)|how do (i|we) talk to you|what should (i|we) (type|say|write|ask)|what are my options|show me what (you|u) can do|^what (can|do) (you|u) do$|what do you (understand|know how to do)/.test(
        text,
      )
    )
      return null;
    for (const i of c.parts.keys()) c.use(i);
    const plain = /^(so |hi |hello |, )*what can (you|u) do$/.test(text);
    return plain ? ask('help', {}, 9) : { ...ask('help', {}, 9), whole: true };
  },
};
