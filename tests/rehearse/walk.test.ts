import { describe, expect, test } from 'vitest';
import { type Did, end, play, posts, type Short, script } from './play.ts';

const STEPS = Array.from(
  { length: 6 },
  (_, index): Short => [`10:0${index + 1}`, 'tom', index % 2 ? 'ok' : 'next'],
);
const WALKED: readonly Short[] = [['10:00', 'tom', 'show me how to calibrate'], ...STEPS];

function last(did: readonly Did[], about: string): string {
  return posts(did, about).at(-1)?.text ?? '';
}

describe('“show me” walks a person through a topic', () => {
  test('one step at a time', async () => {
    const did = await play([...script(WALKED.slice(0, 2)), end('10:03')]);
    expect(posts(did, 'help').map(({ text }) => /, (\d of 6)/.exec(text ?? '')?.[1])).toEqual([
      '1 of 6',
      '2 of 6',
    ]);
  });

  test('what was shown is kept on “done”, and “who can calibrate?” answers from it', async () => {
    const did = await play([
      ...script([...WALKED, ['10:20', 'tom', 'done'], ['10:21', 'rosa', 'who can calibrate?']]),
      end('10:22'),
    ]);
    expect(last(did, 'record')).toContain('Tom was shown how to calibrate');
    expect(last(did, 'answer')).toMatch(/Shown how to calibrate[\s\S]*Tom/);
  });

  test.each<[string, readonly Short[]]>([
    [
      'stopped on the way',
      [
        ['10:00', 'tom', 'show me how to calibrate'],
        ['10:01', 'tom', 'stop'],
      ],
    ],
    ['stopped at the end', [...WALKED, ['10:20', 'tom', 'stop']]],
    ['left for longer than a question waits', [...WALKED, ['10:50', 'tom', 'done']]],
    ['gone on with by somebody else', [...WALKED, ['10:20', 'dan', 'done']]],
  ])('nothing is kept where it was %s', async (_name, notes) => {
    const did = await play([...script([...notes, ['10:55', 'rosa', 'who can calibrate?']]), end('10:56')]);
    expect(last(did, 'answer')).toContain('Nobody');
  });

  test('a restart loses nothing', async () => {
    const restart = { at: '2026-11-23T10:19:00Z', restart: true };
    const more = script([['10:20', 'tom', 'done']]).map((line) => ({ ...line, id: '$more' }));
    const did = await play([...script(WALKED), restart, ...more, end('10:22')]);
    expect(last(did, 'record')).toContain('Tom was shown');
  });

  test('“how do I” tells all of it and offers the walk', async () => {
    const did = await play([
      ...script([
        ['10:00', 'tom', 'how do I calibrate?'],
        ['10:01', 'tom', 'walk me through it'],
      ]),
      end('10:02'),
    ]);
    expect(last(did, 'help')).toContain('1 of 6');
  });

  test('it takes no “yes” from a question about a patient', async () => {
    const did = await play([
      ...script([
        ['09:00', 'tom', 'used tip 4'],
        ['09:10', 'tom', 'tip 4 on blue'],
        ['09:11', 'tom', 'show me how to calibrate'],
        ['09:12', 'tom', 'yes'],
      ]),
      end('09:13'),
    ]);
    expect(last(did, 'incident')).toContain('Tip 4 reached a patient');
  });

  test('✅ goes on', async () => {
    const did = await play([
      ...script([
        ['10:00', 'tom', 'show me how to calibrate'],
        ['10:01', 'tom', '', { reacts: { last: 'help' }, key: '✅' }],
      ]),
      end('10:02'),
    ]);
    expect(last(did, 'help')).toContain('2 of 6');
  });
});
