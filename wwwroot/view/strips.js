// @ts-check
/** The strips of the cradles: how each length is cut, drawn as a line along it, and how sure the price is. */

import { nameOf } from '../model/plan.js';
import { t } from '../texts/index.js';
import { h, svg } from './dom.js';
import { tick } from './tick.js';

const HIGH = 14;
const WIDE = 600;

/** @param {import('./days.js').DayProps} props */
export function strips(props) {
  const { plan, order, numbers } = props;
  if (plan.strips.length === 0) return [];
  const longest = Math.max(...plan.strips.map((/** @type {any} */ one) => one.length));
  const { proven, spent, leastPossible } = plan.stripProof;
  return [
    h('h3', {}, t.saw.strips),
    h('p', { class: 'hint' }, proven ? t.saw.stripsLeast : t.saw.stripsOpen(numbers.money(spent - leastPossible))),
    h('ul', { class: 'slip strips' }, ...plan.strips.map((/** @type {any} */ one) => h('li', {},
      tick(props, `strip-cut-${one.number}`, h('strong', { class: 'amount' }, `${one.copies} ×`), ' ', `${nameOf(order, one.strip, plan)}, ${numbers.length(one.length)}`),
      drawn(one, longest),
      h('p', { class: 'at' }, said(one, numbers))))),
  ];
}

/** "2 × 23 1/2 in for A, 18 in for A; 12 in is kept". @param {any} one @param {import('../model/numbers.js').Numbers} numbers */
function said(one, numbers) {
  /** @type {Map<string, number>} */
  const alike = new Map();
  for (const piece of one.pieces) {
    const name = `${numbers.length(piece.length)} ${t.saw.stripFor} ${piece.mark}`;
    alike.set(name, (alike.get(name) ?? 0) + 1);
  }
  const pieces = [...alike].map(([name, count]) => `${count} × ${name}`).join(', ');
  return one.kept ? `${pieces}; ${t.saw.stripRest(numbers.length(one.rest))}` : `${pieces}.`;
}

/** A strip from its left end: a stroke where it is cut, the rest hatched or, where it is kept, left white. @param {any} one @param {number} longest */
function drawn(one, longest) {
  const scale = WIDE / longest;
  const end = one.length * scale;
  const pieces = one.pieces.map((/** @type {any} */ piece) => svg('rect', { x: piece.at * scale, y: 1, width: piece.length * scale, height: HIGH - 2 }));
  const names = one.pieces.map((/** @type {any} */ piece) => svg('text', { x: (piece.at + piece.length / 2) * scale, y: HIGH - 3.5, 'text-anchor': 'middle', 'font-size': 10 }, piece.mark));
  return svg('svg', { class: 'strip-drawing', viewBox: `0 0 ${WIDE + 2} ${HIGH}`, 'aria-hidden': 'true' },
    svg('rect', { class: 'stock', x: 0, y: 1, width: end, height: HIGH - 2 }), svg('g', { class: 'pieces' }, ...pieces), ...names);
}
