import type { Clause } from '../clause.ts';
import type { Result } from '../result.ts';
import { autoclaveOf } from '../roles/autoclave.ts';
import { outcomeOf } from '../roles/outcome.ts';
import { type Frame, made, result } from './frame.ts';
import { dryOf, stripOf } from './load-details.ts';
import { itemOf, loadOf } from './load-said.ts';

const OVER = /^(out|out of|finished|done|complete|completed|came out|is finish|finish|ok|okay|fine|good)$/;

/** True where a number alone may be a load's: beside a result or figures, or where a long one is over. */
function mayBeBare(c: Clause): boolean {
  if (c.has('fail') || c.word(/pass/) >= 0 || c.entities('cycle').length > 0) return true;
  // "The strip in 55 never turned".
  if (
    c.has('strip') &&
    c
      .entities('tips')
      .some(
        ({ at, entity }) =>
          !entity.named && entity.ids.length === 0 && /^(in|of|on|from)$/.test(c.parts[at - 1]?.text ?? ''),
      )
  )
    return true;
  const mild = /^(ok|okay|fine|good)$/.test(c.parts[c.word(OVER)]?.text ?? '');
  if (c.parts.length > 8 || c.word(OVER) < 0 || (mild && c.scope.strange > 0)) return false;
  return c
    .entities('tips')
    .some(
      ({ at, entity }) =>
        at < c.word(OVER) &&
        !entity.named &&
        entity.unknown.some((id) => id.replace(/\D/g, '').length >= (c.parts.length <= 2 ? 2 : 3)),
    );
}

export const loadFinished: Frame = {
  name: 'load-finished',
  on: ['load', 'pass', 'fail', 'finish', 'cycle', 'be', 'autoclave'],
  read(c) {
    const bare = mayBeBare(c);
    const load = loadOf(c, bare);
    if (load === null) return namelessLoad(c);
    if (c.has('calibrate', 'spore', 'penetration', 'leak', 'control', 'inspection', 'magnifier')) return null;
    if (typeof load.said === 'string' && c.entities('tips').some(({ entity }) => entity.named)) return null;
    const strip = stripOf(c);
    const dry = dryOf(c);
    const cycle = c.first('cycle');
    if (cycle !== null) c.use(cycle.at);
    const outcome = outcomeOf(c, [...strip.used, ...dry.used]);
    const over =
      c.form('finish', 'dn') >= 0
        ? c.form('finish', 'dn')
        : c.word(
            /^(out|out of|came out|came out of|done|over|off|complete|finished|ended|is finish|finish)$/,
          );
    if (outcome === null && over < 0 && cycle === null && strip.value === null && dry.value === null)
      return null;
    if (typeof load.said === 'string' && outcome === null && cycle === null) return null;
    c.use(...strip.used, ...dry.used, over);
    c.useTags(
      'run',
      'come',
      'go',
      'finish',
      'do',
      'be',
      'autoclave',
      'turn',
      'hold',
      'get',
      'have',
      'temp',
      'swap',
    );
    const autoclave = autoclaveOf(c);
    const facts = load.entity.ids.map((id) =>
      made(
        'load-finished',
        {
          load: id,
          ...(outcome === null ? {} : { outcome: outcome.outcome }),
          ...(cycle?.entity.celsius === undefined ? {} : { celsius: cycle.entity.celsius }),
          ...(cycle?.entity.minutes === undefined ? {} : { minutes: cycle.entity.minutes }),
          ...(strip.value === null ? {} : { indicator: strip.value }),
          ...(dry.value === null ? {} : { dry: dry.value }),
          ...(autoclave === null ? {} : { autoclave: autoclave.id }),
        },
        {
          load: load.said,
          ...(outcome === null ? {} : { outcome: [outcome.at] }),
          ...(autoclave === null ? {} : { autoclave: autoclave.said }),
        },
      ),
    );
    const missing =
      outcome === null
        ? ({
            about: 'outcome',
            of: itemOf(load.entity, typeof autoclave?.said === 'string' ? null : autoclave?.id),
            slot: 'outcome',
            form: 'outcome',
          } as const)
        : undefined;
    const verb = outcome?.at ?? (over >= 0 ? over : (cycle?.at ?? 0));
    const base: Result = result(
      facts,
      verb,
      missing,
      bare && outcome === null && !TELLS_RESULT.test(c.scope.note) ? 0.7 : 0,
    );
    return outcome?.outcome === 'failed' ? { ...base, anyMood: true } : base;
  },
};

/** What says elsewhere in the note how a load came out. */
const TELLS_RESULT = /pass|past|fail|good|\bok|fine|\b1[23]\d\b|\b27\d\b/i;

/** "Load passed": which one is not said. */
function namelessLoad(c: Clause): Result | null {
  const noun = c.at('load');
  const outcome =
    noun < 0 || c.parts.length > 7 || !/^(load|cycle|batch)$/.test(c.parts[noun]?.text ?? '')
      ? null
      : outcomeOf(c);
  if (outcome === null || c.entities('tips').length > 0) return null;
  c.use(noun);
  autoclaveOf(c);
  return result(
    [made('load-finished', { outcome: outcome.outcome }, { outcome: [outcome.at] })],
    outcome.at,
    { about: 'load', slot: 'load', form: 'id' },
    0.8,
  );
}
