import { ruleValue } from '../../../defaults/rule-value.ts';
import { siteOf } from '../../../practice/look-up.ts';
import type { Practice } from '../../../practice/practice.ts';
import { zoneOf } from '../../../record/where.ts';
import type { LoadToSend } from '../../../supply/loads-to-send.ts';
import type { Instant } from '../../../time/instant.ts';
import { clockWords } from '../../../words/clock-words.ts';
import { tipsAsRanges } from '../../../words/item-words.ts';
import type { Line } from '../../../words/message.ts';
import type { View } from '../../matter.ts';
import { lastOpen } from '../last-open.ts';
import type { SiteSupply } from './supply-for.ts';

/** "6 scans booked, first 09:00"; "no scans booked". */
export function bookedWords(view: View, { site, booked }: SiteSupply): string {
  const [first] = booked;
  if (first === undefined) return 'no scans booked';
  const from = first.spread ? '' : `, first ${timeAt(view, site, first.at)}`;
  return `${scans(booked.length)} booked${from}`;
}

/**
 * When the site runs short and what prevents it; `null` where it has enough. Times at which nobody is there to act are
 * moved back to the closing before them.
 */
export function shortWords(view: View, supply: SiteSupply): Line | null {
  const { site, short, outlook, unknown } = supply;
  if (short === null) return null;
  if (!supply.certain) {
    const known =
      supply.sterile.length === 0
        ? 'none is known to be sterile'
        : `${tips(supply.sterile.length)} known to be sterile`;
    return [
      { strong: 'Cannot say yet whether tips will do' },
      `: ${scans(supply.booked.length)} booked, ${known}.${unknownWords(unknown)}`,
    ];
  }
  const act = [
    ...outlook.send.map((load) => sendWords(view, site, load)),
    ...outlook.bring.map(({ site: from, count, by }) => {
      return `bring ${tips(count)} from ${siteName(view.practice, from)} by ${timeAt(view, site, by)}`;
    }),
  ];
  const left = outlook.stillShort;
  const rest = left === 0 ? '' : act.length === 0 ? '' : ` ${goWithout(left)} even so.`;
  const how =
    act.length === 0
      ? ' No tip can be back in time: move the scan or bring tips.'
      : ` ${capital(act.join('; '))}.`;
  return [
    { strong: `Short of sterile tips from ${timeAt(view, site, short.at)}` },
    `: ${goWithout(short.scans, view, site)}.${how}${rest}${unknownWords(unknown)}`,
  ];
}

/** With loads as slow as the site's slow ones it would be short: said where at their usual time it is not. */
export function tightWords(view: View, { site, short, outlook }: SiteSupply): string | null {
  if (short !== null || outlook.ifSlow === undefined) return null;
  return `Tight: a slow load makes it short from ${timeAt(view, site, outlook.ifSlow.at)}`;
}

function sendWords(view: View, siteId: string, { by, count, tips: ids, fromScans }: LoadToSend): string {
  const site = siteOf(view.practice, siteId);
  const time = timeAt(
    view,
    siteId,
    site === undefined ? by : Math.max(view.now, lastOpen(view.state, site, by)),
  );
  if (ids.length === 0) return `send ${tips(count)} from the scans before by ${time}`;
  const more = fromScans === 0 ? '' : ` and ${fromScans} more from the scans before`;
  return `send ${tipsAsRanges(ids)}${more} by ${time}`;
}

function unknownWords(unknown: readonly string[]): string {
  return unknown.length === 0 ? '' : ` Not known: ${tipsAsRanges(unknown)}.`;
}

/** `scans` counts tips short: the same where a scan takes one. */
function goWithout(short: number, view?: View, site?: string): string {
  const each = view === undefined ? 1 : ruleValue(view.practice, 'tipsPerScan', { site });
  if (each > 1) return `${tips(short)} too few`;
  return short === 1 ? '1 scan goes without' : `${short} scans go without`;
}

function scans(count: number): string {
  return count === 1 ? '1 scan' : `${count} scans`;
}

function tips(count: number): string {
  return count === 1 ? '1 tip' : `${count} tips`;
}

function siteName(practice: Practice, id: string): string {
  return siteOf(practice, id)?.name ?? id;
}

function timeAt({ practice, now }: View, site: string, at: Instant): string {
  return clockWords(at, now, zoneOf(practice, site));
}

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}
