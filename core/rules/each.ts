import { siteOf } from '../practice/look-up.ts';
import type { Site } from '../practice/practice.ts';
import type { ScannerState } from '../record/state.ts';
import type { Matter, Rule, View } from './matter.ts';
import { remembered } from './watch/remembered.ts';

/** A rule that finds what is due of each scanner by itself: what changes one of them leaves the others as they are. */
export function eachScanner(find: (view: View, scanner: ScannerState) => readonly Matter[]): Rule {
  const ofScanner = remembered((view: View, id: string) => {
    const scanner = view.state.scanners.get(id);
    return scanner === undefined ? [] : find(view, scanner);
  });
  return (view) => [...view.state.scanners.keys()].flatMap((id) => ofScanner(view, id));
}

/** The same for each site of the practice. */
export function eachSite(find: (view: View, site: Site) => readonly Matter[]): Rule {
  const ofSite = remembered((view: View, id: string) => {
    const site = siteOf(view.practice, id);
    return site === undefined ? [] : find(view, site);
  });
  return (view) => view.practice.sites.flatMap(({ id }) => ofSite(view, id));
}
