import { asksOn, form, type Phrases } from './phrase.ts';

const WE = '(?:we|i|you|they|there)';

/** "Have we got enough for tomorrow?": enough of what is not said, so that a day has to be. */
export const supply: Phrases = {
  name: 'ask:supply',
  phrases: [
    {
      form: form(
        `(?:have|do|will|would|did|has) ${WE} (?:be |have |got |get |have got )?(?:enough|plenty|sufficient)`,
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
