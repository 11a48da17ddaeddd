// @ts-check
/** Wishes: panels to fill spare board with. */

import { t } from '../texts/index.js';
import { h, rows, takeOff } from './dom.js';
import { field } from './field.js';

/**
 * @typedef {import('./field.js').FieldProps & { add: (list: string, row: any) => void, remove: (list: string, key: string) => void, freeMark: () => string }} WishesProps
 * @param {Element} element @param {WishesProps} props
 */
export function mountWishes(element, props) {
  const list = h('ul', { class: 'wishes' });
  const fill = rows(list, (/** @type {any} */ row) => row.key, () => mountWish(() => props));
  const add = h('button', { type: 'button', class: 'quiet', onclick: () => { props.add('wishes', { mark: props.freeMark(), width: '', height: '', atMost: '10' }); list.lastElementChild?.querySelector('[data-path$=width]')?.focus(); } }, t.wishes.add);
  element.append(h('h4', {}, t.wishes.head), h('p', { class: 'hint' }, t.wishes.hint), list, add);
  const update = (/** @type {WishesProps} */ next) => {
    props = next;
    fill(props.order.wishes, props);
  };
  update(props);
  return { update };
}

/** @param {() => WishesProps} now */
function mountWish(now) {
  let key = '';
  const parts = [
    field((i) => ({ path: `wishes[${i}].atMost`, label: t.wishes.upTo, kind: 'number', size: 4 })),
    field((i) => ({ path: `wishes[${i}].width`, label: t.make.width, size: 7, unit: 'length' })),
    field((i) => ({ path: `wishes[${i}].height`, label: t.make.height, size: 7, unit: 'length' })),
    field((i) => ({ path: `wishes[${i}].worth`, label: t.wishes.worth, kind: 'number', size: 6, unit: 'money' })),
    field((i) => ({ path: `wishes[${i}].surface`, label: t.make.surface, kind: 'choice', options: [['', t.surfaces.bare], ['primed', t.surfaces.primed]] })),
    field((i) => ({ path: `wishes[${i}].mark`, label: t.make.mark, size: 4 })),
  ];
  const remove = takeOff(() => now().remove('wishes', key), t.make.remove);
  return {
    element: h('li', {}, h('span', { class: 'fields' }, ...parts.map((part) => part.element)), remove),
    /** @param {any} row @param {number} index @param {any} props */
    update(row, index, props) {
      ({ key } = row);
      parts.forEach((part) => part.update(props, index));
    },
  };
}
