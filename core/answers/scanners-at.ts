import type { ScannerState } from '../record/state.ts';
import type { AskView } from './answer-view.ts';
import { sitesOfAsk } from './site-of-ask.ts';

/** Scanners that stand at the sites asked about; where none does and no site was said, every one. */
export function scannersAt(
  site: string | undefined,
  view: Omit<AskView, 'entries'>,
): readonly ScannerState[] {
  const sites = sitesOfAsk(view.practice, site, view.room);
  const all = [...view.state.scanners.values()];
  const here = all.filter((scanner) => scanner.site !== null && sites.includes(scanner.site));
  return here.length === 0 && site === undefined ? all : here;
}
