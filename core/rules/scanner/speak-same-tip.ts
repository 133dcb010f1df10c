import { toIso } from '../../time/instant.ts';
import { lines } from '../../words/message.ts';
import type { Speak } from '../speech.ts';
import { scannerWords, sterileHere } from '../tips/tip-words.ts';
import { foundWith } from '../tips/together.ts';
import { scanWords } from './reason-words.ts';

const YES_NO = [
  { label: 'yes', value: 'yes' },
  { label: 'no', value: 'no' },
] as const;

/** The tip was in another scan before this one: a warning, then whether it reached a patient. */
export const speakSameTipAgain: Speak<'same-tip-again'> = (finding, view) => {
  const { tip, scanner, earlier, items, key, mark } = finding;
  const site = view.state.scanners.get(scanner)?.site ?? null;
  const warning = [
    ...lines(
      [{ strong: `Stop: tip ${tip} was used` }, ' on an earlier scan and has had no load since.'],
      `On ${scannerWords(view.practice, scanner)}: that ${scanWords(view, earlier)}.`,
    ),
    ...sterileHere(view, site),
    ...lines('Same patient? Edit your note to say “same patient”.'),
  ];
  const stop = { about: 'warning', items, message: warning, mentions: [] } as const;
  // Warned of for another cause with the same note: that warning asks already.
  if (foundWith(view, finding, 'unsafe-tip').some(({ again }) => !again)) return [stop];
  const question = lines([{ strong: `Did tip ${tip} reach a patient?` }, ' yes or no']);
  return [
    stop,
    {
      about: 'question',
      items,
      message: question,
      mentions: [],
      asks: {
        choices: YES_NO,
        person: null,
        lasts: null,
        purpose: { sort: 'reached-patient', tip, entry: mark.entry, incident: key },
      },
      decides: [
        {
          kind: 'incident-opened',
          when: toIso(view.now),
          incident: key,
          of: mark.entry,
          items: [...items],
          sort: 'same-tip-again',
        },
      ],
    },
  ];
};
