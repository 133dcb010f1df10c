import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Fields, toHeard } from '../../bot/chat/matrix/sync/to-heard.ts';
import { withoutQuote } from '../../bot/chat/matrix/sync/without-quote.ts';

const ME = '@scanward:example.org';

/** An event of Rosa's, read. */
function heard(
  type: string,
  content: Fields,
  more: { wire?: Fields; sender?: string; redacts?: string } = {},
) {
  const { wire = content, sender = '@rosa:example.org', redacts = null } = more;
  return toHeard({ id: '$1', room: '!quay:example.org', sender, at: 5, type, content, wire, redacts }, ME);
}
const base = { id: '$1', room: '!quay:example.org', from: '@rosa:example.org', at: 5 };
const text = { msgtype: 'm.text', body: 'wiped down blue' };
const edit = { rel_type: 'm.replace', event_id: '$0' };

describe('what counts as typed', () => {
  test.each<[string, Fields, string | null]>([
    ['a text', text, 'wiped down blue'],
    ['an emote', { msgtype: 'm.emote', body: 'wiped down blue' }, 'wiped down blue'],
    // Client-Server API, m.notice: must never be automatically responded to.
    ['a notice', { msgtype: 'm.notice', body: 'wiped down blue' }, null],
    ['a picture whose body is its name', { msgtype: 'm.image', body: 'IMG_1.jpg' }, null],
    [
      'a picture with the same file name',
      { msgtype: 'm.image', body: 'IMG_1.jpg', filename: 'IMG_1.jpg' },
      null,
    ],
    ['a picture with a caption', { msgtype: 'm.image', body: 'tip 4', filename: 'IMG_1.jpg' }, 'tip 4'],
    ['a location', { msgtype: 'm.location', body: 'here' }, null],
    ['blanks', { msgtype: 'm.text', body: '  \n' }, null],
    ['no body', { msgtype: 'm.text' }, null],
    ['a body that is no text', { msgtype: 'm.text', body: 4 }, null],
  ])('%s', (_, content, words) => {
    expect(heard('m.room.message', content)).toEqual(
      words === null ? null : { sort: 'note', ...base, text: words },
    );
  });

  test('our own is never read', () => {
    expect(heard('m.room.message', text, { sender: ME })).toBeNull();
  });

  test('a change of the room’s state is nobody’s business', () => {
    expect(heard('m.room.topic', { topic: 'wiped down blue' })).toBeNull();
  });
});

describe('edits', () => {
  test('of the new text, never of the fallback', () => {
    const content = { msgtype: 'm.text', body: '* new', 'm.new_content': { msgtype: 'm.text', body: 'new' } };
    const wire = { 'm.relates_to': edit };
    expect(heard('m.room.message', content, { wire })).toEqual({
      sort: 'edit',
      ...base,
      edits: '$0',
      text: 'new',
    });
  });

  // Client-Server API, Validity of replacement events: without m.new_content the event is ignored.
  test('without m.new_content', () => {
    expect(heard('m.room.message', { ...text, 'm.relates_to': edit })).toBeNull();
  });
});

describe('replies and threads', () => {
  const reply = { 'm.in_reply_to': { event_id: '$post' } };
  const thread = { rel_type: 'm.thread', event_id: '$root' };
  test.each<[string, Fields, string]>([
    ['a reply', reply, '$post'],
    ['a message in a thread', { ...thread, is_falling_back: true, ...reply }, '$root'],
    ['a reply in a thread', { ...thread, is_falling_back: false, ...reply }, '$post'],
    ['a message in a thread, without fallback', thread, '$root'],
  ])('%s', (_, relation, to) => {
    const content = { ...text, 'm.relates_to': relation };
    expect(heard('m.room.message', content)).toEqual({ sort: 'note', ...base, text: text.body, replyTo: to });
  });
});

describe('deletions and reactions', () => {
  // Room version 11, Redactions: content.redacts; before, beside the content.
  test.each([
    ['version 11', { redacts: '$0' }, {}],
    ['before', {}, { redacts: '$0' }],
  ])('a deletion, %s', (_, content, more) => {
    expect(heard('m.room.redaction', content, more)).toEqual({ sort: 'redaction', ...base, redacts: '$0' });
  });

  test('a reaction', () => {
    const content = { 'm.relates_to': { rel_type: 'm.annotation', event_id: '$0', key: '✅' } };
    expect(heard('m.reaction', content)).toEqual({ sort: 'reaction', ...base, reacts: '$0', emoji: '✅' });
  });
});

// Client-Server API, Rich replies: the fallback is stripped by readers.
test.each([
  ['> <@tom:example.org> old text\n> more\n\nnew', 'new'],
  ['> <@tom:example.org> old\n\nnew\n> not quoted by a client', 'new\n> not quoted by a client'],
  ['> old\nnew', 'new'],
  ['> nothing but the quote', ''],
  ['17.5 > 17 in surgery 1', '17.5 > 17 in surgery 1'],
  ['>20 degrees in surgery 1', '>20 degrees in surgery 1'],
])('the quoted message is no part of %j', (body, rest) => {
  expect(withoutQuote(body)).toBe(rest);
});

test('whatever an event holds, it is read or left, never a failure', () => {
  const type = fc.constantFrom('m.room.message', 'm.reaction', 'm.room.redaction', 'm.sticker');
  const value = fc.jsonValue();
  const content = fc.dictionary(
    fc.constantFrom('msgtype', 'body', 'filename', 'm.relates_to', 'm.new_content', 'redacts'),
    fc.oneof(value, fc.constantFrom('m.text', 'm.image'), fc.constant(edit)),
  );
  fc.assert(
    fc.property(type, content, (kind, fields) => {
      const result = heard(kind, fields);
      if (result?.sort === 'note') expect(result.text).not.toBe('');
    }),
  );
});
