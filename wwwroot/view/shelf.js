// @ts-check
/** The studio's own shelf: what is there under its pencil ids and what can be bought, kept by the service for every ticket. */

import * as studio from '../api/studio.js';
import { GOODS, toWire } from '../model/order.js';
import { reader } from '../model/numbers.js';
import { t } from '../texts/index.js';
import { h, refill, say } from './dom.js';
import { attempt, heapSaid } from './made.js';

/**
 * @typedef {{ order: any, numbers: import('../model/numbers.js').Numbers, fromShelf: boolean, setFromShelf: (on: boolean) => void }} ShelfProps
 * @param {Element} element @param {ShelfProps} props
 */
export function mountShelf(element, props) {
  const said = h('p', { role: 'status', class: 'shelf-said' });
  const use = h('input', { type: 'checkbox', id: 'from-shelf', onchange: () => props.setFromShelf(use.checked) });
  const save = h('button', { type: 'button', class: 'quiet', onclick: () => attempt(said, putAll) }, t.shelf.save);
  const list = h('div', { class: 'shelf-list' });
  const holder = h('details', { class: 'shelf-holder', ontoggle: () => { if (holder.open) void attempt(said, load); } }, h('summary', {}, t.shelf.open), list);
  element.append(h('p', { class: 'shelf-use' }, use, h('label', { for: 'from-shelf' }, t.shelf.use), ' ', save), holder, said);

  async function load() {
    const [heaps, goods] = await Promise.all([studio.stock(), studio.supplies()]);
    const onSale = GOODS.flatMap((sort) => goods[sort] ?? []);
    refill(list,
      h('h4', {}, t.shelf.there), heaps.length > 0 ? h('ul', { class: 'slip heaps' }, ...heaps.map(heap)) : h('p', {}, t.shelf.empty),
      ...(onSale.length > 0 ? [h('h4', {}, t.shelf.toBuy)] : []), h('ul', { class: 'slip' }, ...onSale.map((/** @type {any} */ one) => h('li', {}, one.name ?? one.id, one.pricedOn ? h('span', { class: 'at' }, t.shelf.priced(new Date(one.pricedOn).toLocaleDateString(reader()))) : ''))));
  }

  /** @param {any} one */
  function heap(one) {
    const count = one.count === undefined ? null : h('input', { type: 'number', min: 0, value: one.count, inputmode: 'numeric', 'aria-label': t.shelf.howMany(one.id), onchange: () => attempt(said, async () => {
      await studio.correct(one, Number(count.value));
      await load();
    }) });
    return h('li', {}, h('strong', { class: 'pencil' }, one.id), ' ', count, ' ', heapSaid({ ...one, count: undefined }, props.numbers));
  }

  /** Goods of this ticket become supplies; what it says is on hand goes into stock, once. */
  async function putAll() {
    const order = toWire(props.order);
    for (const sort of GOODS) {
      for (const good of order[sort] ?? []) {
        const { onHand, value, remnants, ...rest } = good;
        if (rest.price !== undefined || rest.sale !== undefined || rest.containers !== undefined) await studio.supply(sort, { units: order.units, currency: order.currency, ...rest });
      }
    }
    say(said, t.shelf.saved);
    if (holder.open) await load();
  }

  const update = (/** @type {ShelfProps} */ next) => {
    props = next;
    use.checked = props.fromShelf;
  };
  update(props);
  return { update };
}
