import { z } from 'zod';
import { isoInstant } from './slots.ts';

const maybe = z.exactOptional;

/** Every kind of act: something to do with what was said. */
export const act = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('undo') }),
  z.strictObject({ kind: z.literal('close'), reason: maybe(z.string()) }),
  z.strictObject({ kind: z.literal('amend'), from: maybe(z.string()), to: z.string() }),
  z.strictObject({ kind: z.literal('done') }),
  z.strictObject({ kind: z.literal('later'), until: maybe(isoInstant) }),
  z.strictObject({ kind: z.literal('yes') }),
  z.strictObject({ kind: z.literal('no') }),
  z.strictObject({ kind: z.literal('pick'), choice: z.string() }),
]);

export type Act = z.infer<typeof act>;
