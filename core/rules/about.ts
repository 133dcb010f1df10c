/**
 * What a post is for. `warning` is kept for infection, so that nobody mutes it; `caution` is for the rest
 * that should make someone stop and look.
 */
export type About =
  | 'answer'
  | 'question'
  | 'warning'
  | 'caution'
  | 'incident'
  | 'look-back'
  | 'calibration'
  | 'settle'
  | 'warm-up'
  | 'clean'
  | 'cover'
  | 'tips'
  | 'load'
  | 'spore-test'
  | 'fault'
  | 'supply'
  | 'order'
  | 'set-up'
  | 'brief'
  | 'close-out'
  | 'board'
  | 'escalation'
  | 'record'
  | 'privacy'
  | 'help';
