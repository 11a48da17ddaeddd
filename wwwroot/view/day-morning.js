// @ts-check
/** Day 4: out of the press, trim, look over. */

import { t } from '../texts/index.js';
import { h, table } from './dom.js';
import { tick } from './tick.js';

/** @param {import('./days.js').DayProps} props */
export function morning(props) {
  const { plan, numbers } = props;
  const glued = plan.panels.filter((/** @type {any} */ p) => p.surface === 'cloth' && p.made > 0 && !plan.benchPlan.mountLater.includes(p.mark));
  const trim = glued.map((/** @type {any} */ p) => h('li', {}, tick(props, `trim-${p.mark}`,
    h('strong', { class: 'amount' }, `${p.made} × ${p.mark}`), ' ', `${t.morning.to} ${numbers.size(p.cutWidth, p.cutHeight)}`)));
  const steps = Object.entries(t.morning.steps).filter(([name]) => glued.length > 0 || name === 'seal' || name === 'mark');
  return [
    ...(trim.length > 0 ? [h('h3', {}, t.morning.trim), h('ul', { class: 'slip' }, ...trim)] : []),
    h('h3', {}, t.morning.check),
    h('ul', { class: 'slip' }, ...steps.map(([name, text]) => h('li', {}, tick(props, `check-${name}`, text)))),
    h('p', { class: 'hint' }, t.morning.hint),
    ...strength(props),
  ];
}

/** What the panels weigh and bear: one line for each and for each board. @param {import('./days.js').DayProps} props */
function strength({ plan, numbers }) {
  if (plan.strength.length === 0) return [];
  const words = t.morning.strength;
  return [
    h('h3', {}, words.head),
    h('div', { class: 'strength', tabindex: 0, role: 'group', 'aria-label': words.head }, table(words.columns, plan.strength.map((/** @type {any} */ one) => [
      one.mark, numbers.weight(one.weight), ...[one.sagUnderHand, one.allowed, one.leastThickness, one.bow].map(numbers.fine), advice(one, numbers)]))),
    h('p', { class: 'hint' }, words.hint, ' ', words.batch(numbers.weight(plan.weights.batch)), plan.weights.pack > 0 ? ` ${words.pack(numbers.weight(plan.weights.pack))}` : ''),
  ];
}

/** @param {any} one @param {import('../model/numbers.js').Numbers} numbers */
function advice(one, numbers) {
  const words = t.morning.strength;
  const strips = one.cradle?.strips.map((/** @type {any} */ s) => `${s.count} × ${numbers.length(s.length)}`).join(', ');
  if (one.cradle?.made) return words.cradled(strips);
  if (one.braceIt) return strips ? words.brace(strips) : words.thicker;
  return one.thumbBraces ? words.thumb : words.stiff;
}
