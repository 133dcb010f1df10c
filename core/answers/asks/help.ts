import { sitesOfChatRoom } from '../../practice/look-up.ts';
import type { Message } from '../../words/message.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { guidePlace } from '../guides/guide-place.ts';
import { sitesOfAsk } from '../site-of-ask.ts';

/** What the bot is for, in examples made of this practice's own names, and how to put a slip right. */
export function answerHelp(view: AskView): Answer {
  const { practice } = view;
  const { scanner, tip, load, figures, scanners } = guidePlace(
    view,
    sitesOfAsk(practice, undefined, view.room),
  );
  const here = sitesOfChatRoom(practice, view.room)[0] ?? practice.sites[0];
  const there = practice.sites.find(({ id }) => id !== (scanners[0]?.home ?? here?.id));
  const notes = [
    `“tip ${tip} on ${scanner}” · “used tip ${tip}, sent to autoclave”`,
    `“load ${load} on with tip ${tip}” · “load ${load} passed, ${figures}”`,
    `“calibrated ${scanner}” · “${scanner} wiped down”`,
    ...(there === undefined ? [] : [`“moved ${scanner} to ${there.name}”`]),
  ];
  const asks = [
    '“which tips are out?” · “how many sterile tips have we got?”',
    `“is ${scanner} ready?” · “where is tip ${tip}?” · “what’s due today?”`,
    '“give me the rundown” · “what’s booked tomorrow?” · “when is the spore test due?”',
    '“how do I calibrate?” · “record for last week”',
  ];
  const message: Message = [
    { line: [{ strong: 'Tell me what you did' }, ', in your own words:'] },
    { points: notes.map((note) => [note]) },
    { line: [{ strong: 'Ask me' }, ':'] },
    { points: asks.map((ask) => [ask]) },
    {
      line: [
        { strong: 'A slip?' },
        ' Edit your note, or type “undo”. Done what I asked? ✅ or “done”; not now: “later”.',
      ],
    },
    { line: ['I keep the record and remind; I certify nothing. No patient names here, please.'] },
  ];
  return { about: 'help', message, items: [] };
}
