// @ts-check
/**
 * Changes worth trying: the same order with one thing other. Each is planned in the background, and shown only where
 * it buys less, or gives more panels for nothing.
 *
 * @typedef {{ words: string, edit: (order: any) => void, gain: 'less' | 'free' }} Change
 */

import { readLength, withOwn } from './measures.js';
import { t } from '../texts/index.js';

const MOST_LINES = 4;
const MOST_SHOWN = 4;
const THIN_BLADE = 2.38125;
const UNDER = 1.5875;

/** @param {import('./order.js').Order} order @returns {Change[]} */
export function changesOf(order) {
  const { units } = order;
  const kerf = readLength(order.saw.kerf || '1/8 in', units) ?? 0;
  const undersize = readLength(order.saw.undersize || '0', units) ?? 0;
  const thin = units === 'inch' ? '3/32 in' : '2.4 mm';
  const under = units === 'inch' ? '1/16 in' : '1.5 mm';
  return [
    ...(kerf > THIN_BLADE + 0.05 ? [{ words: t.change.blade(t.figures(thin)), edit: (/** @type {any} */ o) => { o.saw.kerf = thin; }, gain: /** @type {'less'} */ ('less') }] : []),
    ...(undersize < UNDER - 0.1 ? [{ words: t.change.under(t.figures(under)), edit: (/** @type {any} */ o) => { o.saw.undersize = under; }, gain: /** @type {'less'} */ ('less') }] : []),
    ...order.panels.slice(0, MOST_LINES).map((line, i) => ({
      words: t.change.more(2, `${t.figures(String(line.width))} × ${withOwn(line.height, units)}`),
      edit: (/** @type {any} */ o) => { o.panels[i].quantity = String(Number(o.panels[i].quantity) + 2); },
      gain: /** @type {'free'} */ ('free'),
    })),
  ];
}

/** The best of those found: what saves most first, then what is free. @template {{ saved: number }} F @param {F[]} found @returns {F[]} */
export const best = (found) => [...found].sort((a, b) => b.saved - a.saved).slice(0, MOST_SHOWN);

/** How many sheets a plan cuts. @param {any} plan @returns {number} */
const sheetsOf = (plan) => plan.sheets.reduce((/** @type {number} */ sum, /** @type {any} */ s) => sum + s.copies, 0);

/**
 * What another plan of the same ticket does against the one before.
 * @param {any} before @param {any} after
 * @returns {{ saved: number, sheets: number } | null} null where the two cannot be compared
 */
export function against(before, after) {
  if (before.title !== after.title || before.currency !== after.currency || before.id === after.id) return null;
  return { saved: Math.round((before.cost.cash - after.cost.cash) * 1e4) / 1e4, sheets: sheetsOf(before) - sheetsOf(after) };
}

/**
 * Whether a change gains anything, by the two plans.
 * @param {Change} change @param {any} before @param {any} after
 * @returns {{ saved: number, sheets: number } | null}
 */
export function gainOf(change, before, after) {
  const saved = Math.round((before.proof.spent - after.proof.spent) * 1e4) / 1e4;
  const gains = change.gain === 'less' ? saved > 0 : saved >= 0;
  return gains ? { saved, sheets: sheetsOf(before) - sheetsOf(after) } : null;
}
