// @ts-check
/** Changes that would gain something, each with what it gains and a button that makes it. */

import { t } from '../texts/index.js';
import { h, rows, say, set } from './dom.js';

/**
 * @typedef {{ change: import('../model/changes.js').Change, saved: number, sheets: number }} Found
 * @typedef {{ found: Found[], numbers: import('../model/numbers.js').Numbers, use: (change: import('../model/changes.js').Change) => void }} ChangesProps
 * @param {Element} element
 */
export function mountChanges(element) {
  const list = h('ul');
  const box = h('div', { class: 'changes', 'aria-live': 'polite' }, h('h3', {}, t.change.head), list);
  box.hidden = true;
  element.append(box);
  const fill = rows(list, (/** @type {Found} */ one) => one.change.words, mountChange);
  return {
    /** @param {ChangesProps} props */
    update(props) {
      box.hidden = props.found.length === 0;
      fill(props.found, props);
    },
  };
}

function mountChange() {
  /** @type {() => void} */
  let use = () => {};
  const said = h('span');
  const button = h('button', { type: 'button', class: 'quiet', onclick: () => use() }, t.change.use);
  return {
    element: h('li', {}, said, ' ', button),
    /** @param {Found} one @param {number} _index @param {ChangesProps} props */
    update({ change, saved, sheets }, _index, props) {
      use = () => props.use(change);
      say(said, `${change.words}${change.gain === 'less' ? t.change.sheets(sheets) : ''}${t.colon}${change.gain === 'less' ? t.change.less(props.numbers.money(saved)) : t.change.free}`);
      set(button, { 'aria-label': `${t.change.use}: ${change.words}` });
    },
  };
}
