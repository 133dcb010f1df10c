import { refoldTo } from '../../bot/keeper/refold.ts';
import { openStore } from '../../bot/store/store.ts';
import { type Verdict, verifyRecord } from '../../bot/store/verify.ts';
import { isSavedDesk } from '../../core/desk/saved-desk.ts';

/** Verifies a folder of `tightDesk`, snapshot and history.db too, as the command does. */
export function verifyAll(folder: string): Verdict {
  const store = openStore(folder, { readOnly: true });
  const value = store.snapshot()?.value;
  store.close();
  // More at hand than that desk keeps, as the command has it.
  return verifyRecord(
    folder,
    isSavedDesk(value) ? { refold: refoldTo(value, { keep: 50, most: 100, days: 0 }) } : {},
  );
}
