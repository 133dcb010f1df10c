import { type Logger, logger } from 'matrix-js-sdk/lib/logger.js';

const nothing = () => undefined;

/** The SDK's log tells room names and more, and fills a service's log: it is given none. */
export const silent: Logger = {
  trace: nothing,
  debug: nothing,
  info: nothing,
  warn: nothing,
  error: nothing,
  getChild: () => silent,
};

/** Silences what the SDK logs beside the logger it is given. */
export function silenceSdk(): void {
  Object.assign(logger, silent, { log: nothing });
}
