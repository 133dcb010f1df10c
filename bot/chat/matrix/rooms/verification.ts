import {
  CryptoEvent,
  VerificationPhase,
  type VerificationRequest,
  VerificationRequestEvent,
  type Verifier,
  VerifierEvent,
} from 'matrix-js-sdk/lib/crypto-api/index.js';
import type { MatrixClient } from 'matrix-js-sdk/lib/matrix.js';
import type { Practice } from '../../../../core/practice/practice.ts';

const SAS = 'm.sas.v1';

/**
 * Answers requests to compare emoji (SAS) from the lead and the managers, and from nobody else. The emoji are told where
 * the program's messages go; whoever asked compares them there with the phone and confirms on the phone.
 */
export function acceptVerification(
  client: MatrixClient,
  practice: Practice,
  say: (line: string) => void,
): void {
  const seniors = new Set(
    practice.people.filter(({ part }) => part === 'lead' || part === 'manager').map(({ id }) => id),
  );
  client.on(CryptoEvent.VerificationRequestReceived, (request) => {
    const who = request.otherUserId;
    if (!seniors.has(who)) {
      say(`${who} asked to compare emoji: refused, that is for the lead and the managers.`);
      void request.cancel().catch(() => undefined);
      return;
    }
    void accept(request, say).catch((error: unknown) => {
      say(
        `Comparing emoji with ${who} did not work: ${error instanceof Error ? error.message : String(error)}`,
      );
    });
  });
}

async function accept(request: VerificationRequest, say: (line: string) => void): Promise<void> {
  const follow = () => {
    const { verifier, phase } = request;
    if (phase === VerificationPhase.Started && verifier !== undefined) {
      request.off(VerificationRequestEvent.Change, follow);
      void compare(verifier, request.otherUserId, say);
    }
  };
  request.on(VerificationRequestEvent.Change, follow);
  await request.accept();
  follow();
}

async function compare(verifier: Verifier, who: string, say: (line: string) => void): Promise<void> {
  verifier.on(VerifierEvent.ShowSas, ({ sas, confirm }) => {
    const emoji = (sas.emoji ?? []).map(([picture, name]) => `${picture} ${name}`).join('  ');
    say(`${who} compares: ${emoji || (sas.decimal ?? []).join(' ')}`);
    void confirm().catch(() => undefined);
  });
  await verifier.verify().then(
    () => say(`${who} has verified this device.`),
    () => say(`Comparing emoji with ${who} was not finished.`),
  );
}

/** The one way of verifying that is offered. */
export const VERIFICATION_METHODS = [SAS];
