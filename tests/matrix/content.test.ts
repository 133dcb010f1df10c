import fc from 'fast-check';
import { ConnectionError, MatrixError } from 'matrix-js-sdk/lib/matrix.js';
import { describe, expect, test } from 'vitest';
import { editContent, postContent } from '../../bot/chat/matrix/out/content.ts';
import { transactionOf } from '../../bot/chat/matrix/out/transaction.ts';
import { waitFor } from '../../bot/chat/matrix/out/wait-for.ts';
import type { Post } from '../../core/desk/effect.ts';
import type { Message } from '../../core/words/message.ts';

const post = (message: Message, mentions: readonly string[] = []): Post => {
  return { does: 'post', key: '3/0', room: '!r:example.org', message, about: 'answer', items: [], mentions };
};
const hello: Message = [{ line: [{ strong: 'Ready: ' }, 'green <scanner> & more'] }];

// Client-Server API, m.room.message msgtypes: the tags that a client shows. All 37.
const TAGS = new Set(
  'del h1 h2 h3 h4 h5 h6 blockquote p a ul ol sup sub li b i u strong em s code hr br div table thead tbody tr th td caption pre span img details summary'.split(
    ' ',
  ),
);

const span = fc.oneof(
  fc.string(),
  fc.string().map((strong) => ({ strong })),
  fc.string().map((struck) => ({ struck })),
);
const line = fc.array(span, { maxLength: 4 });
const message = fc.array(
  fc.oneof(
    line.map((one) => ({ line: one })),
    fc.array(line, { maxLength: 4 }).map((points) => ({ points })),
    fc.array(line, { maxLength: 4 }).map((steps) => ({ steps })),
  ),
  { maxLength: 5 },
);

describe('messages', () => {
  test('a notice for what need not ring; m.mentions always, empty where nobody is named', () => {
    expect(postContent(post(hello), null)).toEqual({
      msgtype: 'm.notice',
      body: 'Ready: green <scanner> & more',
      'm.mentions': {},
      format: 'org.matrix.custom.html',
      formatted_body: '<strong>Ready: </strong>green &lt;scanner&gt; &amp; more',
    });
  });

  // The default push rules are silent at notices (Predefined rules, .m.rule.suppress_notices).
  test('a text with a mention for what must reach a phone, in reply', () => {
    const content = postContent(post(hello, ['@rosa:example.org']), '$1');
    expect(content.msgtype).toBe('m.text');
    expect(content['m.mentions']).toEqual({ user_ids: ['@rosa:example.org'] });
    expect(content['m.relates_to']).toEqual({ 'm.in_reply_to': { event_id: '$1' } });
  });

  test('an answer goes into the thread in which it was asked for; what rings stays in the room', () => {
    expect(postContent(post(hello), '$1', '$0')).toMatchObject({
      'm.relates_to': {
        rel_type: 'm.thread',
        event_id: '$0',
        is_falling_back: false,
        'm.in_reply_to': { event_id: '$1' },
      },
    });
    const loud = post(hello, ['@rosa:example.org']);
    expect(postContent(loud, '$1', '$0')['m.relates_to']).toEqual({ 'm.in_reply_to': { event_id: '$1' } });
  });

  test('an edit holds the whole new message, relates to the old one, and rings nobody', () => {
    const content = editContent(hello, '$1');
    expect(content.body).toBe('* Ready: green <scanner> & more');
    expect(content['m.relates_to']).toEqual({ rel_type: 'm.replace', event_id: '$1' });
    expect(content['m.new_content']).toEqual(postContent(post(hello), null));
    expect(content['m.mentions']).toEqual({});
  });

  test('only tags of the specification, text readable without them, never over the size limit', () => {
    fc.assert(
      fc.property(message, (any) => {
        const content = postContent(post(any), null);
        const tags = [...String(content.formatted_body ?? '').matchAll(/<\/?([a-z0-9]+)/g)].map(
          ([, tag]) => tag ?? '',
        );
        expect(tags.filter((tag) => !TAGS.has(tag))).toEqual([]);
        expect(String(content.body)).not.toContain('<strong>');
      }),
    );
  });

  // Client-Server API, Size limits: 65,536 bytes, and encryption makes 4/3 of a text.
  test.each([1, 200, 2000, 50_000])(
    '%i long lines stay under the limit of an event, encrypted too',
    (count) => {
      const long: Message = [
        { points: Array.from({ length: count }, () => ['tip 4 “grün” ✅ and more words']) },
      ];
      for (const content of [postContent(post(long), '$1'), editContent(long, '$1')]) {
        expect(Buffer.byteLength(JSON.stringify(content)) * (4 / 3)).toBeLessThan(64_000);
      }
    },
  );
});

describe('transactions', () => {
  test('the same effect the same, another effect or another text of the same key another', () => {
    const one = transactionOf(post(hello));
    expect(transactionOf(post(hello))).toBe(one);
    expect(transactionOf({ ...post(hello), key: '3/1' })).not.toBe(one);
    expect(transactionOf(post([]))).not.toBe(one);
  });
});

describe('what is waited out', () => {
  const refused = (status: number, more: object = {}, headers: Record<string, string> = {}) =>
    new MatrixError(more, status, undefined, undefined, new Headers(headers));
  // Client-Server API, Rate limiting: Retry-After, else the older retry_after_ms.
  test.each([
    ['a limit with Retry-After', refused(429, { errcode: 'M_LIMIT_EXCEEDED' }, { 'Retry-After': '3' }), 3000],
    [
      'a limit with retry_after_ms',
      refused(429, { errcode: 'M_LIMIT_EXCEEDED', retry_after_ms: 1500 }),
      1500,
    ],
    ['a limit that says nothing', refused(429, {}), 500],
    ['a lost connection', new ConnectionError('gone'), 500],
    ['a server’s own fault', refused(502), 500],
    ['what may not be done', refused(403, { errcode: 'M_FORBIDDEN' }), null],
    ['what is wrong', refused(400, { errcode: 'M_BAD_JSON' }), null],
  ])('%s', (_, error, pause) => {
    expect(waitFor(error, 0)).toBe(pause);
  });

  test('longer each time, with an end', () => {
    const waits = [0, 1, 2, 3, 8, 100].map((tries) => waitFor(new ConnectionError('gone'), tries) ?? 0);
    expect(waits).toEqual([500, 1000, 2000, 4000, 20_000, 20_000]);
  });
});
