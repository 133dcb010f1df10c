import type { Item } from '../reading/slots.ts';
import type { Mark } from './mark.ts';

export interface Found<K extends string> {
  readonly kind: K;
  /** `entry:kind:item`: never the same for two findings, the same after a refold. */
  readonly key: string;
  /** Entry on which it was noticed. */
  readonly mark: Mark;
  readonly items: readonly Item[];
}
