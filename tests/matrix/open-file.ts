import { Attachment, EncryptedAttachment } from '@matrix-org/matrix-sdk-crypto-wasm';
import type { MatrixClient } from 'matrix-js-sdk/lib/matrix.js';
import type { Content } from './seen.ts';

/** A file of the bot's, downloaded and, where it is locked, unlocked. */
export async function openFile(client: MatrixClient, content: Content): Promise<string> {
  const secret: Content =
    typeof content.file === 'object' && content.file !== null ? { ...content.file } : {};
  const mxc = String(content.url ?? secret.url);
  const url = client.mxcUrlToHttp(mxc, undefined, undefined, undefined, false, true, true);
  const headers = { Authorization: `Bearer ${client.getAccessToken()}` };
  const bytes = new Uint8Array(await (await fetch(url ?? '', { headers })).arrayBuffer());
  if ('url' in content) return new TextDecoder().decode(bytes);
  const { url: _, ...info } = secret;
  const locked = new EncryptedAttachment(bytes, JSON.stringify(info));
  return new TextDecoder().decode(Attachment.decrypt(locked));
}
