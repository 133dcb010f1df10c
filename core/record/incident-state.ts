import type { Item } from '../reading/slots.ts';
import type { Mark } from './mark.ts';

/** Open in every brief until the lead, deputy or manager closes it with what was done. */
export interface IncidentState {
  /** Key of the finding that opened it. */
  readonly id: string;
  readonly sort: string;
  readonly items: readonly Item[];
  /** Entry that the finding is on. */
  readonly of: string;
  readonly opened: Mark;
  readonly answered: { readonly mark: Mark; readonly reached: boolean } | null;
  readonly closed: { readonly mark: Mark; readonly reason: string | null } | null;
}
