import { createHmac } from 'node:crypto';

const PATH = '/_synapse/admin/v1/register';

/** Makes an account by Synapse's shared-secret registration; one that is there already is left as it is. */
export async function makeAccount(
  url: string,
  secret: string,
  user: string,
  password: string,
): Promise<void> {
  const { nonce } = await json(await fetch(`${url}${PATH}`));
  const mac = createHmac('sha1', secret).update([nonce, user, password, 'notadmin'].join('\0')).digest('hex');
  const body = JSON.stringify({ nonce, username: user, password, admin: false, mac });
  const response = await fetch(`${url}${PATH}`, { method: 'POST', body });
  const answer = await json(response);
  if (!response.ok && answer.errcode !== 'M_USER_IN_USE') {
    throw new Error(`the account ${user} could not be made: ${answer.error}`);
  }
}

async function json(response: Response): Promise<Record<string, unknown>> {
  const read: unknown = await response.json();
  return typeof read === 'object' && read !== null ? { ...read } : {};
}
