// @ts-check
/** A box to tick as the work goes; remembered with the plan. */

import { h } from './dom.js';

/**
 * @param {import('./days.js').DayProps} props @param {string} name unique within the plan @param {...any} content
 */
export function tick(props, name, ...content) {
  const box = h('input', { type: 'checkbox', onchange: () => {
    props.ticks[name] = box.checked;
    props.tick(name, box.checked);
  } });
  box.checked = props.ticks[name] ?? false;
  return h('label', { class: 'tick' }, box, h('span', {}, ...content));
}
