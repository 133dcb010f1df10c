import { schedule } from 'node-cron';

/** Longest sleep of the timer. Well under the 24.8 days at which Node's timers fire at once, and short enough that a laptop's sleep or a set clock is noticed. */
const LONGEST_SLEEP_MS = 30_000;

export interface Clock {
  /** Looks again at what is next; call it after anything happened. */
  reset(): void;
  stop(): void;
}

/**
 * Wakes the keeper: once a minute by node-cron, and by a capped timer for what falls due in seconds. Neither knows what
 * is due at "10:30": that is asked of the core at each wake-up.
 */
export function startClock(wake: () => void, next: () => number | null): Clock {
  let timer: NodeJS.Timeout | undefined;
  const reset = () => {
    clearTimeout(timer);
    const at = next();
    if (at === null) return;
    const sleep = Math.min(Math.max(at - Date.now(), 0), LONGEST_SLEEP_MS);
    timer = setTimeout(() => {
      wake();
      reset();
    }, sleep);
  };
  const task = schedule('* * * * *', () => {
    wake();
    reset();
  });
  reset();
  return {
    reset,
    stop() {
      clearTimeout(timer);
      void task.stop();
    },
  };
}
