import type { Finding } from './finding.ts';
import type { Lists } from './lists.ts';
import type { LongList } from './long-list.ts';
import type { Mark } from './mark.ts';

/** One contact of a tip with a patient: a scan, or a note that it was used. */
export interface TipUse {
  readonly mark: Mark;
  readonly tip: string;
  readonly scanner: string | null;
  readonly site: string | null;
  readonly room: string | null;
  /** Key of the load that it stood under; `null`: none on record. */
  readonly load: string | null;
  readonly samePatient: boolean;
}

/** A tip fitted to a scanner: fitted since a failed load is told even with no scan noted. */
export interface TipFitting {
  readonly mark: Mark;
  readonly tip: string;
  readonly scanner: string;
  readonly site: string | null;
  readonly room: string | null;
}

/**
 * What is only looked back on. Every list is only ever added to at its end, in the order of the fold, so a checkpoint
 * needs to remember nothing but lengths; going back cuts the lists. The beginning of each may be in the archive.
 */
export interface History {
  readonly uses: Lists<TipUse>;
  readonly fittings: Lists<TipFitting>;
  /** Load keys by tip, in the order it was put in. */
  readonly tipLoads: Lists<string>;
  readonly findings: LongList<Finding>;
}
