import type { Rule } from '../matter.ts';
import { briefRule } from './brief/brief-rule.ts';
import { closeOutRule } from './close-out/close-out-rule.ts';
import { askCountRule, quarterCountRule } from './count/ask-count.ts';
import { restOfCountRule } from './count/rest-of-count.ts';
import { orderRule } from './order/order-rule.ts';
import { quietTipRule } from './quiet-tips.ts';
import { supplyRule } from './supply/supply-rule.ts';

/** What the day brings of itself. */
export const dayRules: readonly Rule[] = [
  supplyRule,
  briefRule,
  quietTipRule,
  askCountRule,
  quarterCountRule,
  restOfCountRule,
  orderRule,
  closeOutRule,
];
