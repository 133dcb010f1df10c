import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toHtml } from '../../bot/show/html.ts';
import { toText } from '../../bot/show/text.ts';
import { lines, type Message } from '../../core/words/message.ts';
import { anyMessage, standingMessage } from './any-message.ts';

/** Matrix Client-Server API v1.19, m.room.message msgtypes: the tags that clients are to show, all 37. */
const LISTED = new Set(
  'del h1 h2 h3 h4 h5 h6 blockquote p a ul ol sup sub li b i u strong em s code hr br div table thead tbody tr th td caption pre span img details summary'.split(
    ' ',
  ),
);

/** The tags of a piece of HTML, in order; throws on a `<` or `>` that is not a bare tag's. */
function tagsOf(html: string): readonly string[] {
  const tags = [...html.matchAll(/<(\/?[a-z0-9]+)>/g)].map(([, tag = '']) => tag);
  if (/[<>]/.test(html.replaceAll(/<\/?[a-z0-9]+>/g, ''))) throw new Error(`a loose < or > in ${html}`);
  return tags;
}

/** How deep the tags nest; throws where one is closed that is not open. */
function depthOf(tags: readonly string[]): number {
  const open: string[] = [];
  let deepest = 0;
  for (const tag of tags) {
    if (tag === 'br') continue;
    if (tag.startsWith('/')) {
      if (open.pop() !== tag.slice(1)) throw new Error(`</${tag}> closes what is not open`);
    } else open.push(tag);
    deepest = Math.max(deepest, open.length);
  }
  if (open.length > 0) throw new Error(`left open: ${open.join()}`);
  return deepest;
}

/** What a client shows of it: tags taken out, lists and breaks on lines of their own, entities read. */
function shownAs(html: string): string {
  const entities: Readonly<Record<string, string>> = { lt: '<', gt: '>', amp: '&', quot: '"', '#39': "'" };
  return html.replaceAll(/<[^>]*>/g, '').replaceAll(/&(#?\w+);/g, (_, name: string) => entities[name] ?? '?');
}

describe('a message as HTML', () => {
  it('lines, points, steps, what matters, what no longer holds', () => {
    const message: Message = [
      { line: [{ strong: '2 due' }, ' at Quay & Co:'] },
      { line: ['today'] },
      { points: [['wipe ', { strong: 'green' }], [{ struck: 'cover blue' }]] },
      { steps: [['yes'], ['no']] },
      { line: ['End.'] },
    ];
    expect(toHtml(message)).toBe(
      '<strong>2 due</strong> at Quay &amp; Co:<br>today<ul><li>wipe <strong>green</strong></li><li><del>cover blue</del></li></ul><ol><li>yes</li><li>no</li></ol>End.',
    );
  });

  it('what was typed cannot become a tag or an attribute', () => {
    expect(toHtml(lines('<img src=x onerror="alert(1)"> & \'co\''))).toBe(
      '&lt;img src=x onerror=&quot;alert(1)&quot;&gt; &amp; &#39;co&#39;',
    );
  });

  it('empty lists and lines leave no gap', () => {
    expect(toHtml([{ points: [] }, { line: ['a'] }, { line: [] }, { steps: [] }, { line: ['b'] }])).toBe(
      'a<br>b',
    );
  });

  it('only tags that the specification lists, without attributes, closed in order, nowhere deeper than three', () => {
    fc.assert(
      fc.property(anyMessage, (message) => {
        const tags = tagsOf(toHtml(message));
        for (const tag of tags) expect(LISTED).toContain(tag.replace('/', ''));
        expect(depthOf(tags)).toBeLessThanOrEqual(3);
      }),
    );
  });

  it('says the same words as the plain text', () => {
    const bare = (text: string) => text.replaceAll(/[\s~•]|\d+\. /g, '');
    fc.assert(
      fc.property(standingMessage, (message) => {
        expect(bare(shownAs(toHtml(message)))).toBe(bare(toText(message)));
      }),
    );
  });
});
