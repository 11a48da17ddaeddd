// @ts-check
/** Changes that would gain something, each with what it gains and a button that makes it. */

import { t } from '../texts/index.js';
import { h, refill } from './dom.js';

/**
 * @typedef {{ found: { change: import('../model/changes.js').Change, saved: number, sheets: number }[], numbers: import('../model/numbers.js').Numbers, use: (change: import('../model/changes.js').Change) => void }} ChangesProps
 * @param {Element} element
 */
export function mountChanges(element) {
  const list = h('ul');
  const box = h('div', { class: 'changes', 'aria-live': 'polite' }, h('h3', {}, t.change.head), list);
  box.hidden = true;
  element.append(box);
  let shown = '';
  return {
    /** @param {ChangesProps} props */
    update({ found, numbers, use }) {
      const key = found.map((one) => one.change.words).join();
      if (key === shown) return;
      shown = key;
      box.hidden = found.length === 0;
      refill(list, ...found.map(({ change, saved, sheets }) => h('li', {},
        h('span', {}, `${change.words}${change.gain === 'less' ? t.change.sheets(sheets) : ''}: ${change.gain === 'less' ? t.change.less(numbers.money(saved)) : t.change.free}`), ' ',
        h('button', { type: 'button', class: 'quiet', onclick: () => use(change), 'aria-label': `${t.change.use}: ${change.words}` }, t.change.use))));
    },
  };
}
