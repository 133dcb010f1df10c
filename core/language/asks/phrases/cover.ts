import type { Clause } from '../../clause.ts';
import { type AskResult, ask, oneItem, siteOf } from '../ask.ts';
import { form, type Phrases, SURE } from './phrase.ts';

const CLAD = '(?:cover|covers|protective tip|protective sleeve|cap|sleeve)';

/** Whether the cover is on. */
export const cover: Phrases = {
  name: 'ask:cover',
  phrases: [
    {
      form: form(
        `(?:is|s|was|has) (?:a |its |there a )?${CLAD} (?:back |still |put |gone |been put |been )*(?:on|off|over|back on) ?(?:for )?<scanner>`,
        `(?:has|does|did|is|have|s) <scanner> (?:got |have |get |still |had |wearing )*(?:a |its |it's |any )?${CLAD}(?: (?:on|back on|off|put on|on it))?`,
        `(?:is|was|has|s) <scanner> (?:been |still )?(?:covered|uncovered|covered up)`,
        `(?:did|has|have) (?:anyone|anybody|someone|somebody|we|i|you|they) (?:put |cover|covered|puts |remember to put |remember to cover|remembered to cover) ?(?:${CLAD} (?:back )?on )?<scanner>(?:'s ${CLAD})?(?: up)?`,
        `(?:is|was|s) <scanner>'s ${CLAD} (?:back |still )*(?:on|off)`,
        `<scanner> (?:covered|${CLAD} on)(?: or not)?`,
        `wheres <scanner>'s ${CLAD}`,
        `when was <scanner> (?:last )?covered`,
        `who (?:put|took) ${CLAD} (?:back )?(?:on|off|onto) <scanner>`,
        `who (?:last )?covered <scanner>`,
        `who left <scanner> (?:uncovered|without its cover|with no cover on|without cover|without a cover)`,
      ),
      asked: true,
      make: coverOf,
    },
    {
      form: form(
        `(?:is|are|have|has|were) (?:all |both |all of )?(?:${CLAD}|scanners|scanner) (?:all |both |back |still |been |put )*(?:covered|uncovered|on|covered up|off|back on)`,
        `(?:which|what) scanners? (?:is|are|has|have|s|hasn't|haven't|isn't|aren't|need|needs|got) (?:still |not |been |got )*(?:covered|uncovered|a cover|no cover|cover on|covering|a cover on|no cover on|its cover on|their covers on|cover)(?: on)?`,
        `${CLAD} (?:all |back )?on`,
        `do any scanners need (?:a cover|covering|covers)`,
        `(?:all |both )scanners covered`,
      ),
      asked: true,
      make: (c) => ask('cover', siteOf(c), SURE),
    },
  ],
};

function coverOf(c: Clause): AskResult | null {
  const [scanner] = c.entities('scanner');
  const [id] = scanner?.entity.ids ?? [];
  if (scanner !== undefined && id !== undefined)
    return ask('cover', { item: `scanner:${id}` }, SURE, { item: [scanner.at] });
  const item = oneItem(c, { before: false });
  return item?.item.startsWith('scanner:') ? ask('cover', { item: item.item }, SURE) : null;
}
