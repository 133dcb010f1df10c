import { z } from 'zod';
import { act } from './act.ts';
import { ask } from './ask.ts';
import { fact } from './fact.ts';

/** What someone means to do: kept apart from facts, never recorded as one. */
export const plan = z.strictObject({ kind: z.literal('plan'), fact });

/** A note for us in which something needed is missing, unknown or in doubt. */
export const unclear = z.strictObject({
  kind: z.literal('unclear'),
  about: z.enum(['scanner', 'tip', 'site', 'room', 'load', 'outcome', 'certainty', 'time', 'what']),
  choices: z.exactOptional(z.array(z.string())),
  of: z.exactOptional(z.string()),
});

/** What one note says: five lists, all empty where it is nobody's business. */
export const reading = z.strictObject({
  facts: z.array(fact),
  asks: z.array(ask),
  acts: z.array(act),
  plans: z.array(plan),
  unclear: z.array(unclear),
});

export type Unclear = z.infer<typeof unclear>;
export type Reading = z.infer<typeof reading>;
