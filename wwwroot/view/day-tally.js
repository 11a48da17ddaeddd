// @ts-check
/** Day 5: what each format came to, against the pencil's figure and the shop. */

import { parts, waste } from '../model/plan.js';
import { t } from '../texts/index.js';
import { h, svg } from './dom.js';
import { figure } from './drawing.js';
import { notMade } from './proof.js';

const BAR = 100;

/** @param {import('./days.js').DayProps} props */
export function tally({ plan, order, numbers }) {
  const { cost } = plan;
  const dearest = Math.max(...cost.panels.flatMap((/** @type {any} */ line) => [line.each, line.shopPrice ?? 0]), 0.01);
  return [
    h('ol', { class: 'ledger' }, ...cost.panels.map((/** @type {any} */ line) => entry(line, plan, numbers, dearest))),
    ...notMade(plan, order),
    h('p', { class: 'sum' }, h('span', {}, t.tally.total), h('strong', {}, numbers.money(cost.used))),
    h('p', {}, t.tally.sum(numbers.money(cost.used), numbers.money(cost.backOnRack), numbers.money(cost.cash))),
    ...against(cost, numbers),
    ...wasted(plan, numbers),
    ...stillMake(plan, numbers),
    curve(plan),
  ];
}

/** Formats that what is left is enough for. @param {any} plan @param {import('../model/numbers.js').Numbers} numbers */
function stillMake(plan, numbers) {
  const spare = (plan.couldStillMake ?? []).slice(0, 8);
  if (spare.length === 0) return [];
  /** @type {Map<string, string[]>} */
  const bySurface = new Map();
  for (const one of spare) bySurface.set(one.surface, [...(bySurface.get(one.surface) ?? []), `${one.count} ${t.make.of} ${numbers.size(one.width, one.height)}`]);
  return [h('p', {}, t.tally.still), h('ul', { class: 'slip still' }, ...[...bySurface].map(([surface, sizes]) => h('li', {}, h('strong', {}, t.surfaces[/** @type {'bare'} */ (surface)]), `${t.colon}${sizes.join(t.tally.or)}.`)))];
}

/** The order made several times over, drawn when it is asked for: every point is a plan of its own. @param {any} plan */
function curve(plan) {
  const details = h('details', { class: 'curve', ontoggle: () => {
    if (details.open && details.childElementCount === 1) details.append(figure(`/api/plans/${plan.id}/batch-curve.svg?upTo=8`, t.tally.curve, undefined, true));
  } }, h('summary', {}, t.tally.curve));
  return details;
}

/** One format: what one costs beside the shop's price, as bars to one scale, and where the money goes. */
function entry(/** @type {any} */ line, /** @type {any} */ plan, /** @type {import('../model/numbers.js').Numbers} */ numbers, /** @type {number} */ dearest) {
  const panel = plan.panels.find((/** @type {any} */ p) => p.mark === line.mark);
  const split = parts(line, t.tally.part).map(([name, sum]) => `${t.tally.part[/** @type {'board'} */ (name)]} ${numbers.money(sum)}`);
  return h('li', { class: 'entry' },
    h('h3', {}, h('span', { class: 'times' }, `${line.quantity} × `), h('span', { class: 'mark' }, line.mark), ` ${numbers.size(panel.width, panel.height)}`),
    h('dl', { class: 'prices' },
      price(t.tally.each, line.each, numbers, dearest, 'own'),
      typeof line.shopPrice === 'number' ? price(t.tally.shop, line.shopPrice, numbers, dearest, 'shop') : null,
      line.byArea ? price(t.tally.area, line.byArea.each, numbers, dearest, 'area') : null),
    h('p', { class: 'split' }, `${numbers.money(line.total)}${t.colon}${split.join(', ')}.`,
      typeof line.savedEach === 'number' && h('span', { class: 'saved' }, ' ', line.savedEach >= 0 ? t.tally.savedEach(numbers.money(line.savedEach)) : t.tally.dearerEach(numbers.money(-line.savedEach)))));
}

/** @param {string} name @param {number} sum @param {import('../model/numbers.js').Numbers} numbers @param {number} dearest @param {string} sort */
function price(name, sum, numbers, dearest, sort) {
  // A frame is drawn half outside its rectangle: without room for that the longest bar has no end on paper.
  const bar = svg('svg', { class: `bar bar-${sort}`, viewBox: `-0.5 -0.25 ${BAR + 1} 4.5`, preserveAspectRatio: 'none', 'aria-hidden': 'true' },
    svg('rect', { x: 0, y: 0, height: 4, width: Math.max(0, (sum / dearest) * BAR) }));
  return h('div', {}, h('dt', {}, name), h('dd', {}, h('span', { class: 'money' }, numbers.money(sum)), bar));
}

/** @param {any} cost @param {import('../model/numbers.js').Numbers} numbers */
function against(cost, numbers) {
  if (typeof cost.savedTotal !== 'number') return [];
  return [h('p', { class: 'saved-all' }, cost.savedTotal >= 0
    ? t.tally.savedAll(numbers.money(cost.savedTotal), numbers.share(cost.savedShare ?? 0))
    : t.tally.dearer(numbers.money(-cost.savedTotal)))];
}

/** @param {any} plan @param {import('../model/numbers.js').Numbers} numbers */
function wasted(plan, numbers) {
  if (plan.sheets.length === 0) return [];
  const { kerf, trim, scrap } = waste(plan);
  return [h('p', {}, t.tally.waste(numbers.area(kerf), numbers.area(trim), numbers.area(scrap))), h('p', { class: 'hint' }, `${t.tally.area}${t.colon}${t.tally.areaHint}.`)];
}
