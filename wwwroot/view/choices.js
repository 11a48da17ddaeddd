// @ts-check
/** One out of a few, as radio buttons in a row: reachable by arrow keys, read as a group. */

import { h } from './dom.js';

let next = 0;

/**
 * @param {string} legend @param {[string, string][]} options value and text @param {(value: string) => void} choose
 */
export function choices(legend, options, choose) {
  const name = `c${next++}`;
  const inputs = options.map(([value, text]) => {
    const input = h('input', { type: 'radio', name, value, onchange: () => choose(value) });
    return { value, input, label: h('label', { class: 'choice' }, input, h('span', {}, text)) };
  });
  const element = h('fieldset', { class: 'choices' }, h('legend', {}, legend), ...inputs.map((one) => one.label));
  return {
    element,
    /** @param {string} chosen @param {string[]} [offered] those on offer; left out: all */
    update(chosen, offered) {
      inputs.forEach(({ value, input, label }) => {
        input.checked = value === chosen;
        label.hidden = offered !== undefined && !offered.includes(value);
      });
      element.hidden = offered?.length === 0;
    },
  };
}
