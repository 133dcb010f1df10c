import { asksOn, form, type Phrases } from './phrase.ts';

const WE = '(?:we|i|you|they|there)';

/** "Have we got enough for tomorrow?": enough of what is not said, so that a day has to be. */
export const supply: Phrases = {
  name: 'ask:supply',
  phrases: [
    {
      form: form(
        '(?:what|how many tips|which tips|how many) (?:do|should|must|shall) (?:i|we) (?:need to |have to )?(?:bring|take|carry|send over|bring over|take over)(?: (?:to|over to|with me to|with us to|along to|for|up to|down to))?',
        '(?:do|should|must) (?:i|we) (?:need to |have to )?(?:bring|take|send|send over) (?:any |some |more |extra |any more |some more )?tips?(?: (?:to|over to|over|up to|down to|off|for))?',
        'when (?:do|should|must|shall) (?:i|we) (?:need to |have to )?(?:send|get) (?:tips|used tips|them|<used-tips>)(?: (?:off|in|by|away|off by|in by|sent|sent by))*',
        'by when (?:do|should|must) (?:i|we) (?:need to )?send tips',
      ),
      make: asksOn('supply'),
    },
    {
      form: form(
        `(?:have|do|will|would|did|has) ${WE} (?:be |have |got |get |have got )?(?:enough|plenty|sufficient)(?: <number>)?`,
        `${WE} (?:got|have) enough`,
        '(?:is|are|will) there (?:be )?(?:enough|plenty)',
        '(?:got |have )?(?:enough|plenty)',
        `(?:are|will|is|r) ${WE} (?:be |going to be |gonna be )?(?:short|covered|stuck)`,
        `will ${WE} (?:manage|make it|run out|run short|cope|get through)`,
      ),
      timed: true,
      asked: true,
      make: asksOn('supply'),
    },
    {
      form: form(
        '(?:are|r) (?:we|you) (?:low|running low|getting low|short|running out|out) (?:on|of) (?:tips|<sterile-tips>)',
        '(?:do|will) we (?:need|want) (?:any |more |some )?tips(?: for)?',
        '(?:hows|whats) (?:tip )?(?:stock|supply|supplies)(?: (?:looking|like))?',
        '(?:tip )?(?:supply|stock)(?: (?:check|level|levels|status|outlook|count))?',
        '(?:are|will) (?:sterile |clean )?tips (?:going to |gonna )?(?:last|be enough|do|stretch|run out|run short)(?: us)?',
        'will <sterile-tips> (?:last|do|be enough|run out)',
      ),
      make: asksOn('supply'),
      asked: true,
    },
  ],
};
