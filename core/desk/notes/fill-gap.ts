import type { Gap } from '../../language/read.ts';
import { type Fact, fact } from '../../reading/fact.ts';
import type { State } from '../../record/state.ts';
import type { View } from '../../rules/matter.ts';
import { itemWords } from '../../words/item-words.ts';

/** What the record tells of a note that left something out, and in which words the reply says so. */
export interface Filled {
  readonly entry: Fact;
  readonly filledIn: string;
}

/**
 * Completes what a note left out where the record leaves no doubt: "took the tip off" with one tip fitted here needs no
 * question. `null` where there are none or several to choose from, or where a person must say it (outcomes, doubts).
 */
export function fillGap(gap: Gap, view: View, sites: readonly string[]): Filled | null {
  if (gap.draft === undefined || gap.slot === undefined || gap.draft.list !== 'facts') return null;
  // Something was named that is not known ("tip 44"): whatever the record would offer was not meant.
  if (gap.words !== undefined) return null;
  const { entry } = gap.draft;
  const candidates = candidatesFor(gap, String(entry.kind), entry, view.state, sites);
  const [only] = candidates;
  if (candidates.length !== 1 || only === undefined) return null;
  const completed = fact.safeParse(withSlot(entry, gap.slot, gap.form ?? 'id', only, gap.unclear.about));
  if (!completed.success) return null;
  return { entry: completed.data, filledIn: itemWords(view.practice, `${gap.unclear.about}:${only}`) };
}

/** The draft with one slot written as its form asks: an id, a list of ids, or items; several are joined by commas. */
export function withSlot(
  draft: Readonly<Record<string, unknown>>,
  slot: string,
  form: NonNullable<Gap['form']>,
  value: string,
  about: string,
): Record<string, unknown> {
  if (form === 'confirm') return { ...draft };
  // A room that no site was said of brings its own.
  const [ofSite, room] = slot === 'room' ? value.split('/') : [];
  if (ofSite !== undefined && room !== undefined) return { ...draft, site: ofSite, room };
  const items = value.split(',').map((one) => (one.includes(':') ? one : `${about}:${one}`));
  const ids = items.map((one) => one.slice(one.indexOf(':') + 1));
  const [id = ''] = ids;
  const [item = ''] = items;
  const written = { id, ids, items, item, outcome: id }[form];
  const before = draft[slot];
  const joined = Array.isArray(before) && Array.isArray(written) ? [...before, ...written] : written;
  return { ...draft, [slot]: joined };
}

function candidatesFor(
  gap: Gap,
  kind: string,
  entry: Readonly<Record<string, unknown>>,
  state: State,
  sites: readonly string[],
): readonly string[] {
  const here = (site: string | null) => sites.length === 0 || (site !== null && sites.includes(site));
  const tips = [...state.tips.values()].filter((tip) => here(tip.site));
  const scanners = [...state.scanners.values()].filter((scanner) => here(scanner.site));
  switch (`${gap.unclear.about} ${kind}`) {
    case 'tip removed':
      return scanners.flatMap((scanner) => (scanner.tip === null ? [] : [scanner.tip]));
    case 'scanner scan-finished':
      return scanners.filter((scanner) => scanner.scan !== null).map((scanner) => scanner.id);
    case 'scanner fitted':
    case 'scanner scan-started':
      return withTipOn(entry, scanners);
    case 'tip sent':
    case 'tip washed':
      return tips.filter((tip) => tip.state === 'used' && tip.needs.length > 0).map((tip) => tip.id);
    case 'load load-finished':
      return state.loads
        .recent()
        .filter((load) => load.status === 'open' && here(load.site))
        .map((load) => load.number);
    default:
      return [];
  }
}

/** A scan that names its tip is on the scanner that has that tip; otherwise only one scanner standing here leaves no doubt. */
function withTipOn(
  entry: Readonly<Record<string, unknown>>,
  scanners: readonly { id: string; tip: string | null }[],
): readonly string[] {
  const carrying = scanners.filter((scanner) => scanner.tip !== null && scanner.tip === entry.tip);
  return carrying.map((scanner) => scanner.id);
}
