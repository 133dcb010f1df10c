import { asksAt, form, type Phrases } from './phrase.ts';
import { ANY, SHOW } from './words.ts';

const THING = '(?:anything|any tips?|any scanners?|any of tips|any kit|any autoclaves?|something)';
const HELD =
  '(?:on hold|held|out of service|out of use|out of action|broken|down|damaged|quarantined|not to be used|off limits|faulty|not working)';

/** What is on hold, waits for a release, or cannot be found. */
export const outOfUse: Phrases = {
  name: 'ask:out-of-use',
  phrases: [
    {
      form: form(
        `whats (?:currently |still |all )?(?:on hold|out of service|out of use|out of action|held|quarantined|broken|faulty)`,
        `(?:is|are) (?:there )?${THING} (?:currently |still )?${HELD}`,
        `${THING} (?:currently |still )?${HELD}`,
        `(?:what|which tips|which loads|whats) (?:still )?(?:needs?|waiting|waits?|has|have) (?:for )?(?:to be |a |an )?(?:releasing|released|release|releases)`,
        `${ANY}(?:loads?|tips?|thing) (?:still )?(?:waiting|needing|that need|to be|waiting for)(?: to be| for)?(?: a| an)? ?(?:released|releasing|release|releases)`,
        `(?:is |are )?(?:there )?(?:anything|any loads?|any tips?|something) (?:still )?(?:waiting|needing|needs|need|to be|waiting for)(?: to be| for)?(?: a| an)? ?(?:released|releasing|release)`,
        `${SHOW}(?:holds|held items|things on hold|held tips)`,
        `${ANY}holds`,
        `${ANY}(?:held|damaged|broken|cracked|faulty) (?:tips?|scanners?|kit|loads?)`,
        `${ANY}loads? (?:not|that (?:is|are) not|that (?:isn't|aren't)) released`,
      ),
      asked: true,
      make: asksAt('out-of-use', { which: 'held' }),
    },
    {
      form: form(
        `whats (?:currently |still )?(?:missing|lost|gone missing|not accounted for|unaccounted for)`,
        `(?:is|are) (?:there )?${THING} (?:currently |still )?(?:missing|lost|gone|gone missing|unaccounted for)`,
        `${ANY}(?:missing|lost) (?:tips?|scanners?|kit|things)`,
        `(?:have|did) (?:we|i) (?:lost|lose|mislaid) (?:anything|any tips?|any scanners?|something)`,
        `(?:what|which|how many) tips? (?:are|is|have|has|do we have|'s) (?:we |gone |still |currently )*(?:lost|missing)`,
        `${THING} (?:still )?missing`,
        `(?:has|have) ${THING} (?:gone missing|been lost|got lost|disappeared)`,
      ),
      asked: true,
      make: asksAt('out-of-use', { which: 'missing' }),
    },
  ],
};
