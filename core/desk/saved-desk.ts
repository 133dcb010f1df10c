import type { LearnedWord } from '../language/read.ts';
import { GRAMMAR_VERSION } from '../language/version.ts';
import type { Practice } from '../practice/practice.ts';
import { startState } from '../record/start-state.ts';
import type { SavedTimeline } from '../record/timeline.ts';
import type { Question } from '../rules/question.ts';
import { RULES_VERSION } from '../rules/version.ts';
import type { LateHere } from './late-notes.ts';
import type { SavedNotes } from './note-log.ts';
import type { SavedPosts } from './post-log.ts';

/** Counts up with every change of what a saved desk holds or means; one of another version is folded anew. */
const VERSION = 6;

/** Everything that a desk knows after turn `turns`, as plain JSON values: for starting from there instead of from turn 1. */
export interface SavedDesk {
  readonly made: string;
  readonly turns: number;
  readonly file: string;
  readonly learned: readonly LearnedWord[];
  readonly timeline: SavedTimeline;
  readonly notes: SavedNotes;
  readonly posts: SavedPosts;
  readonly questions: readonly Question[];
  readonly late: readonly (readonly [room: string, late: LateHere])[];
}

/**
 * What a saved desk was made under: versions, and the names of what the state holds, so that a build that keeps something
 * else of a tip or a scanner does not start from what lacks it.
 */
export const MADE_UNDER = `${VERSION}/${RULES_VERSION}/${GRAMMAR_VERSION}/${shapeOfState()}`;

/** Whether this build made it. What is further in it is taken as it stands: the store has checked that nothing changed it. */
export function isSavedDesk(value: unknown): value is SavedDesk {
  return typeof value === 'object' && value !== null && 'made' in value && value.made === MADE_UNDER;
}

function shapeOfState(): string {
  const shut = { mon: [], tue: [], wed: [], thu: [], fri: [], sat: [], sun: [] };
  const silent = { 'set-up': [], pack: [], clean: [], calibrate: [] };
  const empty: Practice = {
    name: '',
    timezone: 'UTC',
    dates: 'day-first',
    sites: [{ id: 's', name: '', also: [], timezone: 'UTC', rooms: [], hours: shut, closed: [] }],
    scanners: [{ id: 'a', name: '', also: [], home: 's', notes: silent }],
    autoclaves: [],
    tips: [{ id: '1', home: 's', cycles: null, cyclesSoFar: 0 }],
    people: [],
    chat: [],
    rules: { practice: {}, bySite: {}, byScanner: {} },
  };
  const state = startState(empty);
  const parts = [state, state.history, ...state.sites.values(), ...state.scanners.values()];
  return [...parts, ...state.tips.values(), ...state.autoclaves.values()]
    .map((part) => Object.keys(part).join(' '))
    .join('; ');
}
