import type { Clause } from '../../clause.ts';
import { topicOf } from '../../frames/shown.ts';
import { type AskResult, ask } from '../ask.ts';
import { form, type Phrases, SURE } from './phrase.ts';

const TAUGHT =
  '(?:been |was |were |got |gotten |is |had )*(?:shown|trained|taught|signed off|signed-off|walked through|inducted|been through|checked out|competent|passed)(?: on| in| up on| to do| to| for| with| how to do| how to| about)?';
const DOING =
  '(?:(?:how to do|how to|how we|how you|to do|to|do|doing|in|on|with|for|about|run|running|use|using|put on|a|it|its|up) )*';
/** Its words are looked at for what they are about. */
const TOPIC = '[a-z <>-]{3,40}';

/** Who has been shown something, and what somebody was shown. */
export const whoCan: Phrases = {
  name: 'ask:who-can',
  phrases: [
    {
      form: form(
        `who(?:'s| is| are| else| all| here|s)? (?:can|knows how to|know how to|able to|allowed to|trained to|ok to|cleared to|allowed|knows|permitted to|fit to|qualified to) ${DOING}${TOPIC}`,
        `(?:who|whos|who's|who has|who have|who all) ${TAUGHT} ${DOING}${TOPIC}`,
        `(?:has|have|was|were|did) (?:anyone|anybody|everyone|everybody|someone|any of us) (?:else )?(?:get )?${TAUGHT} ${DOING}${TOPIC}`,
        `(?:which|what) (?:staff|nurses?|people|of us|of team) (?:can|know how to|are|have|is|has) (?:${TAUGHT} )?${DOING}${TOPIC}`,
      ),
      make: (c) => ofTopic(c),
    },
    {
      form: form(
        `(?:has|was|have|is|did) <person> (?:ever )?(?:get )?${TAUGHT} ${DOING}${TOPIC}`,
        `(?:does|do) <person> know (?:how )?${DOING}${TOPIC}`,
        `(?:has|have) (?:anyone|anybody|someone|somebody|we|you|i) (?:shown|trained|taught) <person> ${DOING}${TOPIC}`,
        `(?:did|has) <person> (?:do|done|have|had) (?:his |her |their |any |the )?${DOING}${TOPIC} (?:training|induction)`,
        `(?:did|has) <person> (?:do|done|have|had) (?:his |her |their |any )?(?:training|induction) (?:on|in|for|with) ${TOPIC}`,
        `(?:is|was) <person> (?:able|allowed|ok|cleared|fit|qualified) ${DOING}${TOPIC}`,
      ),
      asked: true,
      make: (c) => {
        const person = personIn(c);
        const found = person === null ? null : ofTopic(c, true);
        if (person === null || found === null) return null;
        return ask('who-can', { ...found.made.entry, person: person.name }, SURE, { person: [person.at] });
      },
    },
    {
      form: form(
        `(?:what|which things|what all|what topics) (?:has|was|have|is) <person> ${TAUGHT}`,
        'what can <person> do',
        '(?:has|is) <person> (?:been )?(?:shown|trained|taught)(?: (?:on|in|how to do|to do|with))? (?:everything|anything|it all|all of it|all)',
        "(?:show |show me |give me )?<person>(?:'s)? (?:training|training record|training log|induction)",
        '(?:whats|what training has) <person> (?:been )?(?:shown|trained on|trained in|had|done|trained to do)',
      ),
      make: (c) => {
        const person = personIn(c);
        return person === null
          ? null
          : ask('who-can', { person: person.name }, SURE, { person: [person.at] });
      },
    },
    {
      form: form(
        "who(?:s|'s| is| has| was)? ?(?:been )?(?:shown|trained|taught)(?: (?:what|on what|in what|to do what|how to do what))",
        '(?:show |show me |give me |can i see |list )?(?:staff |all )?training (?:records?|log|list|matrix)',
        "who(?:s| is|'s| has been)? (?:been )?(?:trained|signed off|inducted)",
        'who can do what',
      ),
      make: () => ask('who-can', {}, SURE),
    },
  ],
};

function personIn(c: Clause): { readonly name: string; readonly at: number } | null {
  const person = c.first('person');
  return person?.entity.known ? { name: person.entity.name, at: person.at } : null;
}

/** Words that nobody knows are about something else: "who can do the school run". */
function ofTopic(c: Clause, named = false): AskResult | null {
  if (!named && personIn(c) !== null) return null;
  const strange = c.parts.some(
    (p) => p.entity === undefined && !p.mark && isOther(p.senses.map(({ sort }) => sort)),
  );
  if (strange || c.has('other')) return null;
  const topic = topicOf(c);
  return topic === null || isRequest(c)
    ? null
    : ask('who-can', { topic: topic.topic }, SURE, { topic: [topic.at] });
}

function isOther(sorts: readonly string[]): boolean {
  return sorts.length > 0 && sorts.every((sort) => sort === 'other');
}

/** "Who can take blue to North?", "who can calibrate green now?": somebody is asked to do it. */
function isRequest(c: Clause): boolean {
  const can = c.word(/^(?:who )?can$/) >= 0;
  return can && c.entities('scanner').length + c.entities('site').length + c.entities('time').length > 0;
}
