import { Attachment } from '@matrix-org/matrix-sdk-crypto-wasm';
import type { MatrixClient } from 'matrix-js-sdk/lib/matrix.js';
import type { Content } from './content.ts';

// The wasm package comes with matrix-js-sdk and is not listed by itself: there must be one copy of it.

/** A file to be sent, with its text. */
export interface Attached {
  readonly name: string;
  readonly type: string;
  readonly content: string;
}

/** Uploads a file, encrypted for an encrypted room, and gives the message that shows it. */
export async function attach(client: MatrixClient, file: Attached, encrypted: boolean): Promise<Content> {
  const bytes = new TextEncoder().encode(file.content);
  const shown = {
    msgtype: 'm.file',
    body: file.name,
    filename: file.name,
    info: { mimetype: file.type, size: bytes.length },
    'm.mentions': {},
  };
  if (!encrypted) {
    const { content_uri } = await client.uploadContent(Buffer.from(bytes), {
      name: file.name,
      type: file.type,
    });
    return { ...shown, url: content_uri };
  }
  const locked = Attachment.encrypt(bytes);
  const secret: unknown = JSON.parse(locked.mediaEncryptionInfo ?? 'null');
  if (typeof secret !== 'object' || secret === null) throw new Error('the file could not be encrypted');
  // The homeserver learns neither name nor type of a file in an encrypted room.
  const { content_uri } = await client.uploadContent(Buffer.from(locked.encryptedData), {
    type: 'application/octet-stream',
    includeFilename: false,
  });
  return { ...shown, file: { ...secret, url: content_uri } };
}
