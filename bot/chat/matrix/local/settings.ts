/** How a homeserver of our own is set up. */
export interface ServerSettings {
  readonly folder: string;
  readonly port: number;
  /** The part after the colon of every account. */
  readonly name: string;
  /** Shared secret with which accounts are made. */
  readonly secret: string;
  /** Messages a second that one account may send; unlimited for practical purposes when left out. */
  readonly messagesASecond?: number;
  /** After how long a sign-in runs out, in seconds; never when left out. */
  readonly sessionSeconds?: number;
  /** After how long a token runs out that can be renewed, in seconds; Synapse's own 5 minutes when left out. */
  readonly tokenSeconds?: number;
}

/** Synapse's settings: bound to this machine alone, SQLite, no federation, no limits but the one asked for. Plain JSON is YAML. */
export function serverSettings({
  folder,
  port,
  name,
  secret,
  messagesASecond,
  sessionSeconds,
  tokenSeconds,
}: ServerSettings): string {
  const free = { per_second: 10_000, burst_count: 100_000 };
  const message =
    messagesASecond === undefined ? free : { per_second: messagesASecond, burst_count: messagesASecond };
  return JSON.stringify(
    {
      server_name: name,
      pid_file: `${folder}/homeserver.pid`,
      listeners: [
        {
          port,
          type: 'http',
          tls: false,
          bind_addresses: ['127.0.0.1'],
          resources: [{ names: ['client', 'media'], compress: false }],
        },
      ],
      database: { name: 'sqlite3', args: { database: `${folder}/homeserver.db` } },
      log_config: `${folder}/log.yaml`,
      media_store_path: `${folder}/media`,
      signing_key_path: `${folder}/signing.key`,
      registration_shared_secret: secret,
      macaroon_secret_key: `${secret}-macaroon`,
      form_secret: `${secret}-form`,
      ...(tokenSeconds === undefined ? {} : { refreshable_access_token_lifetime: `${tokenSeconds}s` }),
      ...(sessionSeconds === undefined ? {} : { session_lifetime: `${sessionSeconds}s` }),
      report_stats: false,
      suppress_key_server_warning: true,
      trusted_key_servers: [],
      federation_domain_whitelist: [],
      presence: { enabled: false },
      url_preview_enabled: false,
      rc_message: message,
      rc_login: { address: free, account: free, failed_attempts: free },
      rc_registration: free,
      rc_joins: { local: free, remote: free },
      rc_joins_per_room: free,
      rc_invites: { per_room: free, per_user: free, per_issuer: free },
      rc_room_creation: free,
      rc_admin_redaction: free,
    },
    null,
    2,
  );
}

/** Synapse's log: warnings, into a file. */
export function logSettings(folder: string): string {
  return JSON.stringify({
    version: 1,
    formatters: { plain: { format: '%(asctime)s %(levelname)s %(name)s %(message)s' } },
    handlers: {
      file: { class: 'logging.FileHandler', filename: `${folder}/homeserver.log`, formatter: 'plain' },
    },
    root: { level: 'WARNING', handlers: ['file'] },
    disable_existing_loggers: false,
  });
}
