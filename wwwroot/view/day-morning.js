// @ts-check
/** Day 4: out of the press, trim, look over. */

import { t } from '../texts/index.js';
import { h } from './dom.js';
import { tick } from './tick.js';

/** @param {import('./days.js').DayProps} props */
export function morning(props) {
  const { plan, numbers } = props;
  const glued = plan.panels.filter((/** @type {any} */ p) => p.surface === 'cloth' && p.made > 0);
  const trim = glued.map((/** @type {any} */ p) => h('li', {}, tick(props, `trim-${p.mark}`,
    h('strong', { class: 'amount' }, `${p.made} × ${p.mark}`), ' ', `${t.morning.to} ${numbers.size(p.cutWidth, p.cutHeight)}`)));
  const steps = Object.entries(t.morning.steps).filter(([name]) => glued.length > 0 || name === 'seal' || name === 'mark');
  return [
    ...(trim.length > 0 ? [h('h3', {}, t.morning.trim), h('ul', { class: 'slip' }, ...trim)] : []),
    h('h3', {}, t.morning.check),
    h('ul', { class: 'slip' }, ...steps.map(([name, text]) => h('li', {}, tick(props, `check-${name}`, text)))),
    h('p', { class: 'hint' }, t.morning.hint),
  ];
}
