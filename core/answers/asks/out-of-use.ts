import type { AskOf } from '../../reading/ask.ts';
import type { Item } from '../../reading/slots.ts';
import type { Hold, Mark } from '../../record/state.ts';
import { openLoads } from '../../rules/day/open-loads.ts';
import { capital, scannerWords } from '../../rules/tips/tip-words.ts';
import { autoclaveWords, loadItem, loadWords } from '../../words/load-words.ts';
import type { Line, Message } from '../../words/message.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { autoclavesAt } from '../autoclaves-at.ts';
import { sitesOfAsk } from '../site-of-ask.ts';
import { whenBy } from '../when-by.ts';

interface OutOfUse {
  readonly item: Item;
  readonly line: Line;
}

/** "Is anything on hold?", "what's missing?": what must not be used or cannot be found, since when and why. */
export function answerOutOfUse({ which, site }: AskOf<'out-of-use'>, view: AskView): Answer {
  const sites = sitesOfAsk(view.practice, site, view.room);
  const held = which === 'missing' ? [] : heldAt(sites, view);
  const missing = which === 'held' ? [] : missingAt(sites, view);
  const found = [...held, ...missing];
  if (found.length === 0) {
    const none =
      which === 'missing' ? 'Nothing is missing' : which === 'held' ? 'Nothing is on hold' : NOTHING;
    return { about: 'answer', message: [{ line: [{ strong: none }, ' on this record.'] }], items: [] };
  }
  const message: Message = [{ points: found.map(({ line }) => line) }];
  return { about: 'answer', message, items: found.map(({ item }) => item) };
}

const NOTHING = 'Nothing is on hold or missing';

/** Scanners, autoclaves, tips, and loads that nobody has released. */
function heldAt(sites: readonly string[], view: AskView): readonly OutOfUse[] {
  const { practice, state } = view;
  const isHere = (site: string | null) => site === null || sites.includes(site);
  const heldLine = (item: Item, name: string, site: string | null, holds: readonly Hold[]): OutOfUse[] => {
    const [hold] = isHere(site) ? holds : [];
    if (hold === undefined) return [];
    const own = hold.sort === 'said' || hold.sort === 'damaged' ? hold.reason : null;
    const why = own ?? HOLDS[hold.sort];
    const line: Line = [
      { strong: capital(name) },
      `: on hold since ${whenBy(hold.mark, site, view)}, ${why}`,
    ];
    return [{ item, line }];
  };
  const waiting = sites
    .flatMap((site) => openLoads(view, site))
    .filter(({ status }) => status === 'needs-release')
    .map((load): OutOfUse => {
      const line: Line = [{ strong: capital(loadWords(practice, load)) }, ': waits to be released'];
      return { item: loadItem(load), line };
    });
  return [
    ...[...state.scanners.values()].flatMap(({ id, site, holds }) => {
      return heldLine(`scanner:${id}`, scannerWords(practice, id), site, holds);
    }),
    ...autoclavesAt(undefined, undefined, view).flatMap(({ id, site, holds }) => {
      return heldLine(id === '' ? 'autoclave' : `autoclave:${id}`, autoclaveWords(practice, id), site, holds);
    }),
    ...[...state.tips.values()].flatMap(({ id, site, holds, retired }) => {
      return retired === null ? heldLine(`tip:${id}`, `tip ${id}`, site, holds) : [];
    }),
    ...waiting,
  ];
}

const HOLDS: Readonly<Record<Hold['sort'], string>> = {
  said: 'no reason noted',
  damaged: 'damaged',
  dropped: 'dropped, until its calibration passes',
  'reached-patient': 'after an incident',
  'test-failed': 'a test failed',
  'spore-positive': 'spore test positive',
};

function missingAt(sites: readonly string[], view: AskView): readonly OutOfUse[] {
  const lineOf = (item: Item, name: string, site: string | null, mark: Mark | null): OutOfUse[] => {
    if (mark === null || (site !== null && !sites.includes(site))) return [];
    const line: Line = [{ strong: capital(name) }, `: missing since ${whenBy(mark, site, view)}`];
    return [{ item, line }];
  };
  return [
    ...[...view.state.scanners.values()].flatMap(({ id, site, missing, calibrationTip }) => [
      ...lineOf(`scanner:${id}`, scannerWords(view.practice, id), site, missing),
      ...lineOf(
        `calibration-tip:${id}`,
        `calibration tip of ${scannerWords(view.practice, id)}`,
        calibrationTip.site,
        calibrationTip.missing,
      ),
    ]),
    ...[...view.state.tips.values()].flatMap(({ id, site, missing, retired }) => {
      return retired === null ? lineOf(`tip:${id}`, `tip ${id}`, site, missing) : [];
    }),
  ];
}
