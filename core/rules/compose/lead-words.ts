import type { Practice } from '../../practice/practice.ts';
import type { Message } from '../../words/message.ts';
import { nameOf } from '../../words/people-words.ts';
import type { Stage } from '../matter.ts';
import { inWords } from '../tips/tip-words.ts';

/** Names whoever is mentioned; where the practice file has nobody for it, says that it stands open all the same. */
export function leadWords(practice: Practice, stage: Stage, leads: readonly string[]): Message {
  if (stage !== 'lead' && leads.length === 0) return [];
  const names = inWords(leads.map((id) => nameOf(practice, id)));
  if (names === '') return [{ line: [{ strong: 'Still open' }, NOBODY] }];
  return [{ line: [{ strong: names }, stage === 'lead' ? STILL_OPEN : LOOK] }];
}

const NOBODY = ':';
const STILL_OPEN = ': still open.';
const LOOK = ', please look at this:';

/** The message without that line: once settled nobody is called any more. Told by its words, as posts come back from the record. */
export function withoutLeadWords(message: Message): Message {
  const [head, ...rest] = message;
  if (head === undefined || !('line' in head) || head.line.length !== 2) return message;
  const [name, words] = head.line;
  if (name === undefined || typeof name === 'string' || !('strong' in name)) return message;
  const calls = words === STILL_OPEN || words === LOOK || (words === NOBODY && name.strong === 'Still open');
  return calls ? rest : message;
}
