/** What a homeserver gives to whoever signs in. */
export interface Login {
  readonly user_id: string;
  readonly access_token: string;
  readonly device_id: string;
}

/** Signs in with a password, as a new device; `phone` is the name that it shows. */
export async function passwordLogin(
  url: string,
  user: string,
  password: string,
  phone?: string,
): Promise<Login> {
  const answer = await fetch(`${url}/_matrix/client/v3/login`, {
    method: 'POST',
    body: JSON.stringify({
      type: 'm.login.password',
      identifier: { type: 'm.id.user', user },
      password,
      ...(phone === undefined ? {} : { initial_device_display_name: phone }),
    }),
  });
  const { user_id = '', access_token = '', device_id = '' }: Partial<Login> = JSON.parse(await answer.text());
  return { user_id, access_token, device_id };
}
