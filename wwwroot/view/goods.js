// @ts-check
/** What is there and what can be bought: each good a sentence that opens into its fields. */

import { withOwn } from '../model/measures.js';
import { at } from '../model/order.js';
import { t } from '../texts/index.js';
import { h, lazily, rows, say, set, takeOff } from './dom.js';
import { fields } from './field.js';
import { GOODS } from './goods-fields.js';

/**
 * @typedef {import('./field.js').FieldProps & { add: (list: string, row: any) => void, remove: (list: string, key: string) => void, numbers: import('../model/numbers.js').Numbers }} GoodsProps
 * @param {Element} element @param {GoodsProps} props
 */
export function mountGoods(element, props) {
  const shelves = Object.entries(GOODS).map(([list, sort]) => {
    const body = h('ul', { class: 'goods' });
    const fill = rows(body, (/** @type {any} */ row) => row.key, () => mountGood(list, sort));
    const add = h('button', { type: 'button', class: 'quiet', onclick: () => { props.add(list, sort.fresh(props.order)); focusLast(body); } }, sort.add());
    const section = h('section', { class: 'shelf-of-goods', 'data-list': list }, h('h3', {}, sort.head()), body, add);
    element.append(section);
    return () => {
      section.hidden = sort.when?.(props.order) === false;
      fill(props.order[list] ?? [], props);
    };
  });
  const update = (/** @type {GoodsProps} */ next) => {
    props = next;
    shelves.forEach((fill) => fill());
  };
  update(props);
  return { update };
}

/** What was just added is written in next. @param {Element} body */
const focusLast = (body) => body.lastElementChild?.querySelector('input')?.focus();

/** @param {string} list @param {import('./goods-fields.js').Sort} sort */
function mountGood(list, sort) {
  /** @type {any} */
  let now;
  let row = /** @type {any} */ (null);
  let known = false;
  const said = h('span', { class: 'said' });
  const remove = takeOff(() => now.remove(list, row.key), t.goods.remove);
  const details = h('details', {}, h('summary', {}, said), remove);
  const folded = lazily(details, () => mountFolded(list, sort), (part) => remove.before(...part.elements));
  const element = h('li', { class: 'good' }, details);
  return {
    element,
    /** @param {any} item @param {number} index @param {any} props */
    update(item, index, props) {
      now = props;
      row = item;
      const isNew = !known && !item.name;
      if (isNew || props.problem?.errors) folded.want();
      folded.update(item, index, props);
      say(said, sort.said(item, (text) => withOwn(text, props.order.units), props));
      set(remove, { 'aria-label': `${t.goods.remove}: ${item.name || t.goods.unnamed}` });
      if (isNew) details.open = true;
      known = true;
      if (details.querySelector('[aria-invalid]')) details.open = true;
    },
  };
}

/** @param {string} list @param {import('./goods-fields.js').Sort} sort */
function mountFolded(list, sort) {
  const main = fields(sort.fields(list));
  const parts = sort.parts.map(mountParts);
  const few = sort.fold && fields(sort.fold.fields(list));
  const fold = few && h('details', { class: 'few' }, h('summary', {}, sort.fold?.head()), h('div', { class: 'fields' }, ...few.elements));
  return {
    elements: [h('div', { class: 'fields' }, ...main.elements), ...(fold ? [fold] : []), ...parts.map((part) => part.element)],
    /** @param {any} item @param {number} index @param {any} props */
    update(item, index, props) {
      main.update(props, index);
      few?.update(props, index);
      if (fold?.querySelector('[aria-invalid]')) fold.open = true;
      parts.forEach((part) => part.update(item, `${list}[${index}]`, props));
    },
  };
}

/**
 * Remnants of a cloth, containers of a liquid, prices for larger numbers; a container has prices for larger numbers of its own.
 * @param {import('./goods-fields.js').Part} shape
 */
function mountParts(shape) {
  let path = '';
  let row = /** @type {any} */ (null);
  /** @type {any} */
  let now;
  const body = h('ul', { class: 'parts' });
  const fill = rows(body, (/** @type {any} */ part) => part.key, () => {
    let key = '';
    const all = fields(shape.fields.map((make) => (i) => make(`${path}[${i}]`)));
    const inner = (shape.parts ?? []).map(mountParts);
    const remove = takeOff(() => now.remove(path, key), t.goods.remove);
    return {
      element: h('li', {}, h('span', { class: 'fields' }, ...all.elements), remove, ...inner.map((part) => part.element)),
      update: (/** @type {any} */ part, /** @type {number} */ i, /** @type {any} */ props) => {
        ({ key } = part);
        all.update(props, i);
        inner.forEach((one) => one.update(part, `${path}[${i}]`, props));
      },
    };
  });
  const head = h('h4', {}, shape.head());
  const add = h('button', { type: 'button', class: 'quiet', onclick: () => { now.add(path, shape.fresh(row)); focusLast(body); } }, shape.add());
  return {
    element: h('div', { class: 'parts-of' }, head, body, add),
    /** @param {any} item @param {string} owner the path of what it is part of @param {any} props */
    update(item, owner, props) {
      now = props;
      row = item;
      path = `${owner}.${shape.at}`;
      const all = at(item, shape.at) ?? [];
      head.hidden = all.length === 0;
      fill(all, props);
    },
  };
}
