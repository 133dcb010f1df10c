import type { Ask } from '../reading/ask.ts';
import { lines } from '../words/message.ts';
import type { Answer, AskView } from './answer-view.ts';
import { answerBookings } from './asks/bookings.ts';
import { answerCover } from './asks/cover.ts';
import { answerDue } from './asks/due.ts';
import { answerHelp } from './asks/help.ts';
import { answerHistory } from './asks/history.ts';
import { answerHours } from './asks/hours.ts';
import { answerHow } from './asks/how.ts';
import { answerIncidents } from './asks/incidents.ts';
import { answerLast } from './asks/last.ts';
import { answerLoad } from './asks/load.ts';
import { answerLoads } from './asks/loads.ts';
import { answerOrder } from './asks/order.ts';
import { answerOutOfUse } from './asks/out-of-use.ts';
import { answerReady } from './asks/ready.ts';
import { answerRecord } from './asks/record.ts';
import { answerRules } from './asks/rules.ts';
import { answerSupply } from './asks/supply.ts';
import { answerTests } from './asks/tests.ts';
import { answerTips } from './asks/tips.ts';
import { answerTrace } from './asks/trace.ts';
import { answerWear } from './asks/wear.ts';
import { answerWhere } from './asks/where.ts';
import { answerWhoCan } from './asks/who-can.ts';
import { answerWhoMay } from './asks/who-may.ts';
import { answerWords } from './asks/words.ts';

/** Answers one ask from the record as it stands. */
export function answer(ask: Ask, view: AskView): Answer {
  switch (ask.kind) {
    case 'tips':
      return answerTips(ask, view);
    case 'where':
      return answerWhere(ask, view);
    case 'ready':
      return answerReady(ask, view);
    case 'due':
      return answerDue(ask, view);
    case 'last':
      return answerLast(ask, view);
    case 'history':
      return answerHistory(ask, view);
    case 'supply':
      return answerSupply(ask, view);
    case 'load':
      return answerLoad(ask, view);
    case 'trace':
      return answerTrace(ask, view);
    case 'record':
      return answerRecord(ask, view);
    case 'incidents':
      return answerIncidents(ask, view);
    case 'how':
      return answerHow(ask, view);
    case 'who-can':
      return answerWhoCan(ask, view);
    case 'who-may':
      return answerWhoMay(view);
    case 'rules':
      return answerRules(view);
    case 'words':
      return answerWords(view);
    case 'help':
      return answerHelp(view);
    case 'bookings':
      return answerBookings(ask, view);
    case 'tests':
      return answerTests(ask, view);
    case 'loads':
      return answerLoads(ask, view);
    case 'wear':
      return answerWear(ask, view);
    case 'order':
      return answerOrder(view);
    case 'out-of-use':
      return answerOutOfUse(ask, view);
    case 'hours':
      return answerHours(ask, view);
    case 'cover':
      return answerCover(ask, view);
    case 'why':
      return {
        about: 'answer',
        message: lines('Reply “why?” to one of your own notes or to a post of mine.'),
        items: [],
      };
  }
}
