import { PlainError } from '../../../plain-error.ts';

/** Another machine keeps this practice's record now: this one must not write another word. */
export class TakenOver extends Error {
  override readonly name = 'TakenOver';

  constructor() {
    super(
      'another machine has taken this practice over (rebuild). This folder is out of date; end its service and keep the folder aside.',
    );
  }
}

/** The folder is older than the ledger: an archive that was put back, or another machine's work. */
export class FolderBehind extends PlainError {
  constructor(folder: number, ledger: number) {
    super(
      `This folder has ${folder} lines of the record and the ledger room has ${ledger}: going on from here would lose the rest. Make a new folder from the room: rebuild --room --practice FILE --store NEW_FOLDER.`,
    );
  }
}

/** This device has no keys to the ledger: the work goes on without a copy until somebody gives the recovery key. */
export class LedgerLocked extends Error {
  override readonly name = 'LedgerLocked';

  constructor(events: number) {
    super(
      `${events} events in it cannot be read by this new device. Start once with SCANWARD_RECOVERY_KEY; where that key is lost, with --new-recovery-key, which begins the copy anew from this folder`,
    );
  }
}
