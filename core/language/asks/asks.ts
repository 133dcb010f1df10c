import type { Ask } from './ask.ts';
import { due } from './due.ts';
import { help } from './help.ts';
import { history } from './history.ts';
import { how } from './how.ts';
import { incidents } from './incidents.ts';
import { last } from './last.ts';
import { load } from './load.ts';
import { ready } from './ready.ts';
import { record } from './record.ts';
import { rules } from './rules.ts';
import { supply } from './supply.ts';
import { tips } from './tips.ts';
import { trace } from './trace.ts';
import { where } from './where.ts';
import { who } from './who-can.ts';
import { why } from './why.ts';
import { words } from './words.ts';

/** Every kind of question, the surer before the looser. */
export const asks: readonly Ask[] = [
  help,
  why,
  words,
  rules,
  who,
  how,
  trace,
  supply,
  incidents,
  record,
  due,
  last,
  history,
  load,
  tips,
  where,
  ready,
];
