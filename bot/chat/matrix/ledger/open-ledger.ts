import { wantsPerson } from '../trouble.ts';
import { Ledger, type LedgerParts } from './ledger.ts';

/** The ledger is a copy: where it cannot be opened the work goes on, and it is tried again after so long, ms. */
const AGAIN_MS = 60_000;

/** Opens the ledger, now or when it can be; `opened` is given it. Throws only where a person has to do something. */
export async function openLedger(parts: LedgerParts, opened: (ledger: Ledger) => void): Promise<void> {
  try {
    opened(await Ledger.open(parts));
  } catch (error) {
    if (wantsPerson(error)) throw error;
    parts.say(`No ledger room yet: ${error instanceof Error ? error.message : String(error)}. Trying on.`);
    setTimeout(() => void openLedger(parts, opened).catch(parts.failed), AGAIN_MS);
  }
}
