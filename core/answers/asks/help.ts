import { sitesOfChatRoom } from '../../practice/look-up.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { itemWords } from '../item-words.ts';

/** What the bot is for, in examples made of this practice's own names, and how to put a slip right. */
export function answerHelp(view: AskView): Answer {
  const { practice } = view;
  const sites = sitesOfChatRoom(practice, view.room);
  const here = sites[0] ?? practice.sites[0];
  const there = practice.sites.find(({ id }) => id !== here?.id);
  const [scanner] = practice.scanners;
  const tip = practice.tips.find(({ home }) => home === here?.id) ?? practice.tips[0];
  const name = scanner === undefined ? 'the scanner' : itemWords(practice, `scanner:${scanner.id}`);
  const notes = [
    ...(tip === undefined ? [] : [`tip ${tip.id} on ${name}`, `used tip ${tip.id}, sent to autoclave`]),
    `${name} wiped down`,
    `calibrated ${name}`,
    ...(there === undefined ? [] : [`moved ${name} to ${there.name}`]),
  ];
  const asks = ['which tips are out?', `is ${name} ready?`, 'what’s due today?', 'how do I calibrate?'];
  return {
    about: 'help',
    message: [
      { line: [{ strong: 'Tell me what you did' }, ', in your own words:'] },
      { points: notes.map((note) => [note]) },
      { line: [{ strong: 'Ask me' }, ':'] },
      { points: asks.map((ask) => [ask]) },
      { line: [{ strong: 'A slip?' }, ' Edit your note, or type “undo”. Done what I asked? ✅ or “done”.'] },
    ],
    items: [],
  };
}
