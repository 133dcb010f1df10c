import { asks, form, type Phrases } from './phrase.ts';

/** Who answers for it here: who may release, and close an incident. */
export const whoMay: Phrases = {
  name: 'ask:who-may',
  phrases: [
    {
      form: form(
        'whos? (?:can|may|is allowed to|allowed to|are allowed to|able to|has to|must|should|do i ask to|is able to) (?:release|close|clear|sign off|free|un-?hold) (?:a |an |this |that |it|any )?(?:load|loads|tips?|<tip>|<load>|<scanner>|scanner|incidents?|autoclave|<autoclave>|hold|holds)?',
        '(?:can|may) (?:anyone|anybody|any 1|i|a nurse) (?:release|close|clear) (?:a |an )?(?:load|tip|<tip>|<load>|<scanner>|scanner|incident|hold|autoclave)',
        'whos (?:lead|lead nurse|deputy|manager|in charge|responsible|boss|person in charge)(?: (?:here|today|of scanners|for scanners|of scanner|of tips|of this))?',
        'who (?:do|should|can) (?:i|we) (?:ask|tell|report to|go to|speak to|talk to|contact)(?: (?:about|if|when|for) (?:scanners?|<scanner>|calibration|calibrating|tips?|autoclave|loads?|an? incident|incident|it))?',
      ),
      make: asks('who-may'),
    },
  ],
};
