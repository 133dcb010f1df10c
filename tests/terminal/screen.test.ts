import { expect, test } from 'vitest';
import { Screen } from '../../bot/chat/terminal/screen.ts';
import type { Post } from '../../core/desk/effect.ts';
import { lines } from '../../core/words/message.ts';

const sent = { eventIdOf: (key: string) => `$post-${key}` };

function screen(width: number | null) {
  const printed: string[] = [];
  const names = { person: () => 'Priya', room: () => 'North Clinic' };
  return {
    printed,
    screen: new Screen(
      (line) => printed.push(line),
      '!here',
      names,
      () => width,
    ),
  };
}

const post: Post = {
  does: 'post',
  key: '1',
  room: '!here',
  message: lines('Wipe down blue scanner: scan ended 09:10.', 'Lens too.'),
  about: 'clean',
  items: [],
  mentions: [],
};

test('buttons stand on a line of their own, under the words', async () => {
  const { printed, screen: shown } = screen(null);
  await shown.deliver({ ...post, buttons: ['✅', '⏰'] }, sent);
  expect(printed).toEqual(['[1] Wipe down blue scanner: scan ended 09:10.', '    Lens too.', '    [✅ ⏰]']);
});

test('no buttons, no empty brackets', async () => {
  const { printed, screen: shown } = screen(null);
  await shown.deliver({ ...post, buttons: [] }, sent);
  expect(printed.join('\n')).not.toContain('[]');
});

test('a post is wrapped to the width, under its number', async () => {
  const { printed, screen: shown } = screen(30);
  await shown.deliver(post, sent);
  expect(printed).toEqual(['[1] Wipe down blue scanner:', '    scan ended 09:10.', '    Lens too.']);
});

test('another chat room is called by its name', async () => {
  const { printed, screen: shown } = screen(null);
  await shown.deliver({ ...post, room: '!there', mentions: ['@priya:example.org'] }, sent);
  expect(printed[0]).toBe('[1] (North Clinic) @Priya Wipe down blue scanner: scan ended 09:10.');
});
