// @ts-check
/** What the plan costs, and how sure that is, in words; with room for what would change it. */

import { withOwn } from '../model/measures.js';
import { leftOut } from '../model/plan.js';
import { t } from '../texts/index.js';
import { h, refill } from './dom.js';

/**
 * @param {Element} element @param {Element} changes where offered changes stand
 */
export function mountProof(element, changes) {
  const said = h('div', { class: 'proof-said' });
  const stale = h('p', { class: 'stale' }, t.act.stale);
  const section = h('section', { class: 'proof', id: 'plan', tabindex: -1, 'aria-labelledby': 'plan-head' }, stale, said, changes);
  element.append(section);
  /** @type {any} */
  let shown;
  return {
    /** @param {import('./days.js').DayProps | null} props */
    update(props) {
      stale.hidden = !props?.stale;
      if ((props?.plan ?? null) === shown) return;
      shown = props?.plan ?? null;
      section.hidden = !props;
      refill(said, ...(props ? words(props) : []));
    },
  };
}

/** @param {import('./days.js').DayProps} props */
function words({ plan, order, numbers, did }) {
  return [
    h('h2', { id: 'plan-head' }, h('span', { class: 'cash' }, numbers.money(plan.cost.cash)), ` ${t.proof.toBuy}`),
    h('p', { class: 'sure' }, sure(plan, numbers)),
    ...within(plan, numbers),
    ...notMade(plan, order),
    did && (did.saved !== 0 || did.sheets !== 0) && h('p', { class: 'did' }, t.proof.did(did.saved, numbers.money(Math.abs(did.saved)), did.sheets)),
    plan.warnings.length > 0 && h('details', { class: 'notes', open: true }, h('summary', {}, t.proof.notes), h('ul', {}, ...plan.warnings.map((/** @type {any} */ w) => h('li', {}, t.said(w))))),
  ];
}

/** What the money is enough for: whoever reads that nothing is cheaper has to read there what is not made. @param {any} plan @param {import('../model/numbers.js').Numbers} numbers */
function within({ budget }, numbers) {
  if (!budget) return [];
  const lines = budget.lines.map((/** @type {any} */ line) => `${line.mark} ${line.made} ${t.make.of} ${line.wanted}`);
  return [h('p', { class: 'within' }, t.tally.budget(numbers.money(budget.cash), lines.join(', ')), ' ', budget.proven ? t.tally.budgetProven : t.tally.budgetOpen)];
}

/** The lines a budget leaves out, wholly or in part: how many of what size. @param {any} plan @param {any} order */
export function notMade(plan, order) {
  const lines = leftOut(plan, order).map((/** @type {any} */ line) => `${line.count} × ${line.mark}, ${t.figures(String(line.width))} × ${withOwn(line.height, order.units)}`);
  return lines.length > 0 ? [h('p', { class: 'left-out' }, t.tally.leftOut(lines.join('; ')))] : [];
}

/** @param {any} plan @param {import('../model/numbers.js').Numbers} numbers */
function sure(plan, numbers) {
  const { spent, leastPossible, proven } = plan.proof;
  const early = plan.stoppedEarly ? ` ${t.proof.early}` : '';
  if (proven) return (spent === 0 ? t.proof.provenNothing : t.proof.proven) + early;
  const gap = spent - leastPossible;
  return t.proof.open(numbers.money(gap), numbers.share(spent > 0 ? gap / spent : 0)) + early;
}
