import { z } from 'zod';
import { ids, isoInstant, item } from '../reading/slots.ts';

const maybe = z.exactOptional;
/** Id of the entry that the decision is about: where that entry no longer holds, neither does the decision. */
const of = z.string().regex(/^\d+\.\d+$/, 'an entry id such as 12.0');

function kind<K extends string, S extends z.ZodRawShape>(name: K, slots: S) {
  return z.strictObject({ kind: z.literal(name), when: isoInstant, by: maybe(z.string()), ...slots });
}

/**
 * What changes the record without being a fact of a note: answers to what the bot asked, and what the lead decides.
 * `load` is a load's key in the state, or a number as people say it.
 */
export const decision = z.discriminatedUnion('kind', [
  /** The lead, deputy or manager lets a load (or some of its tips) stand as sterile: for loads in doubt or with no published value. */
  kind('load-released', { load: z.string(), tips: maybe(ids) }),
  /** "not sure 118 passed", "not sure tip 4 is sterile": treated as not sterile, not ready, until settled. */
  kind('doubted', { item, reason: maybe(z.string()) }),
  /** The doubt was answered without a new fact ("yes, it had"): what stood before stands again. */
  kind('doubt-settled', { item }),
  /** An incident is open from here; `incident` names it (the finding's key). `of`: the entry that the finding is on. */
  kind('incident-opened', { incident: z.string(), of, items: z.array(item), sort: z.string() }),
  /** "Did the tip reach a patient?" Yes holds the tip; only lead, deputy or manager may release it. */
  kind('incident-answered', { incident: z.string(), of, tip: maybe(z.string()), reached: z.boolean() }),
  /** Closed with what was done; only lead, deputy or manager. */
  kind('incident-closed', { incident: z.string(), reason: maybe(z.string()) }),
  /** "It had sat at room temperature": the pass noted before settling was over counts from its own time. */
  kind('pass-confirmed', { scanner: z.string(), of }),
  /** "It had not": that pass does not count. */
  kind('pass-doubted', { scanner: z.string(), of }),
  /** A setting changed in chat, for the practice, one site or one scanner; `null` puts the practice file's own back. */
  kind('setting', {
    name: z.string(),
    value: z.union([z.number(), z.string(), z.boolean(), z.null()]),
    site: maybe(z.string()),
    scanner: maybe(z.string()),
  }),
  /** A word that a person explained is kept, or forgotten (`means` null). */
  kind('word', { words: z.string(), means: z.union([z.string(), z.null()]) }),
  /** The guided count was asked for in this chat room. */
  kind('stocktake-asked', { site: z.string() }),
  /** The count of a site's tips is taken as done. */
  kind('stocktaken', { site: z.string() }),
  /** A rule that a new practice file changed, for the practice, one site or one scanner: stands beside that `practice`. */
  kind('rule-changed', {
    name: z.string(),
    from: z.union([z.number(), z.string(), z.boolean()]),
    to: z.union([z.number(), z.string(), z.boolean()]),
    site: maybe(z.string()),
    scanner: maybe(z.string()),
  }),
  /** The practice file as it is from here on: canonical JSON of a `Practice`. */
  kind('practice', { file: z.string() }),
]);

export type Decision = z.infer<typeof decision>;
