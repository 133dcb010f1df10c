import type { Item } from '../../reading/slots.ts';
import { isBack, show } from '../tip-change.ts';
import { arrive, checkApart } from './arrive.ts';
import { leaveLoads, takeOff } from './contact.ts';
import { finishScan } from './scan-end.ts';
import { itemParts, type Step, type Steps, scannerOf, tipOf, unknown } from './step.ts';

export const placeSteps = {
  moved: (step, said) => {
    for (const item of said.items) putAt(step, item, said.site, said.room ?? null);
    checkAllApart(step, said.items);
  },
  departed: (step, said) => {
    for (const item of said.items) depart(step, item, said.site ?? null, said.items);
  },
  missing: (step, said) => {
    for (const item of said.items) lose(step, item);
  },
  found: (step, said) => {
    for (const item of said.items) find(step, item, said.site ?? null, said.room ?? null);
    checkAllApart(step, said.items);
  },
} satisfies Steps;

/** After all items of the note are placed: what travels together is never apart on the way. */
function checkAllApart(step: Step, items: readonly Item[]): void {
  const ids = items.map(itemParts).filter(({ kind }) => kind === 'scanner' || kind === 'calibration-tip');
  for (const id of new Set(ids.map((each) => each.id))) {
    const scanner = step.state.scanners.get(id);
    if (scanner !== undefined) checkApart(step, scanner);
  }
}

function putAt(step: Step, item: Item, site: string, room: string | null): void {
  const { kind, id } = itemParts(item);
  const { mark, state } = step;
  if (!state.sites.has(site)) {
    unknown(step, item);
    return;
  }
  if (kind === 'scanner') {
    const scanner = scannerOf(step, id);
    if (scanner !== undefined) arrive(step, scanner, site, room);
  } else if (kind === 'calibration-tip') {
    const scanner = scannerOf(step, id);
    if (scanner !== undefined) scanner.calibrationTip = { site, room, mark, missing: null };
  } else if (kind === 'tip') putTipAt(step, id, site, room);
}

function putTipAt(step: Step, id: string, site: string, room: string | null): void {
  const tip = tipOf(step, id);
  if (tip === undefined) return;
  const scanner = tip.scanner === null ? undefined : step.state.scanners.get(tip.scanner);
  // Said to be elsewhere than the scanner it is on: it has come off.
  if (scanner !== undefined && (scanner.site !== site || scanner.departed !== null)) takeOff(step, tip);
  isBack(tip, step.mark);
  if (tip.site !== site || room !== null) tip.room = room;
  tip.site = site;
  tip.placed = step.mark;
  tip.departed = null;
}

function depart(step: Step, item: Item, to: string | null, items: readonly Item[]): void {
  const { kind, id } = itemParts(item);
  const { mark } = step;
  if (kind === 'scanner') {
    const scanner = scannerOf(step, id);
    if (scanner === undefined) return;
    finishScan(step, scanner);
    const from = scanner.departed?.from ?? scanner.site;
    // Told again with where to: the journey began with the first note.
    const began = scanner.departed?.mark ?? mark;
    scanner.departed = { mark: began, from, to: to ?? scanner.departed?.to ?? null };
    scanner.missing = null;
    scanner.room = null;
  } else if (kind === 'calibration-tip' && !items.includes(`scanner:${id}`)) {
    const scanner = scannerOf(step, id);
    // It is where it is going, if it travels without its scanner and that was said; else it counts as travelling along.
    if (scanner !== undefined && scanner.departed === null && to !== null)
      scanner.calibrationTip = { site: to, room: null, mark, missing: null };
  } else if (kind === 'tip') {
    const tip = tipOf(step, id);
    if (tip === undefined) return;
    if (tip.scanner !== null && !items.includes(`scanner:${tip.scanner}`)) takeOff(step, tip);
    isBack(tip, mark);
    tip.departed = { mark, to };
    tip.room = null;
  }
}

function lose(step: Step, item: Item): void {
  const { kind, id } = itemParts(item);
  const { mark } = step;
  if (kind === 'scanner') {
    const scanner = scannerOf(step, id);
    if (scanner === undefined) return;
    finishScan(step, scanner);
    scanner.missing ??= mark;
  } else if (kind === 'calibration-tip') {
    const scanner = scannerOf(step, id);
    if (scanner !== undefined) scanner.calibrationTip = { ...scanner.calibrationTip, mark, missing: mark };
  } else if (kind === 'tip') loseTip(step, id);
}

function loseTip(step: Step, id: string): void {
  const tip = tipOf(step, id);
  if (tip === undefined) return;
  if (tip.scanner !== null) takeOff(step, tip);
  tip.missing ??= step.mark;
  leaveLoads(step, tip);
  show(tip, step.mark);
}

function find(step: Step, item: Item, site: string | null, room: string | null): void {
  const { kind, id } = itemParts(item);
  if (kind === 'scanner') {
    const scanner = scannerOf(step, id);
    if (scanner === undefined) return;
    if (scanner.missing !== null) scanner.available = step.mark;
    scanner.missing = null;
    const at = site ?? (scanner.departed === null ? scanner.site : null);
    if (at !== null) arrive(step, scanner, at, room);
  } else if (kind === 'calibration-tip') {
    const scanner = scannerOf(step, id);
    if (scanner === undefined) return;
    const at = site ?? scanner.calibrationTip.site;
    scanner.calibrationTip = { site: at, room, mark: step.mark, missing: null };
  } else if (kind === 'tip') {
    const tip = tipOf(step, id);
    if (tip === undefined) return;
    isBack(tip, step.mark);
    const at = site ?? tip.site;
    if (at !== null) putTipAt(step, id, at, room);
  }
}
