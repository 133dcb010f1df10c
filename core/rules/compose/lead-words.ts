import type { Practice } from '../../practice/practice.ts';
import type { Message } from '../../words/message.ts';
import { nameOf } from '../../words/people-words.ts';
import type { Stage } from '../matter.ts';
import { inWords } from '../tips/tip-words.ts';

/** Names whoever is mentioned; where the practice file has nobody for it, says that it stands open all the same. */
export function leadWords(practice: Practice, stage: Stage, leads: readonly string[]): Message {
  if (stage !== 'lead' && leads.length === 0) return [];
  const names = inWords(leads.map((id) => nameOf(practice, id)));
  return [
    {
      line: [
        { strong: names === '' ? 'Still open' : names },
        names === '' ? ':' : stage === 'lead' ? ': still open.' : ', please look at this:',
      ],
    },
  ];
}
