// @ts-check
/** Day 1: what to buy, by kind of shop, and what to take from the rack. */

import { withOwn } from '../model/measures.js';
import { GOODS } from '../model/order.js';
import { clothOf, fromRack, nameOf } from '../model/plan.js';
import { t } from '../texts/index.js';
import { h } from './dom.js';
import { tick } from './tick.js';

/** @type {Record<string, keyof typeof t.errand.shops>} */
const SHOP = { sheet: 'board', step: 'cloth', roll: 'cloth', container: 'liquid', panel: 'ready', strip: 'board', delivery: 'way' };

/** @param {import('./days.js').DayProps} props */
export function errand(props) {
  const { plan, numbers, address } = props;
  const bought = plan.buy.length === 0
    ? [h('p', {}, t.errand.nothing)]
    : [...shops(props), h('p', { class: 'sum' }, h('span', {}, t.errand.sum), h('strong', {}, numbers.money(plan.cost.cash)))];
  return [
    ...bought,
    ...surplus(props),
    ...taken(props),
    h('p', { class: 'tools' },
      h('button', { type: 'button', onclick: () => print() }, t.errand.print),
      plan.buy.length > 0 && h('button', { type: 'button', class: 'print-list', onclick: printList }, t.errand.printList),
      plan.buy.length > 0 && shareButton(props),
      h('a', { href: `${address}/buy.csv`, download: '' }, t.errand.csv)),
  ];
}

/** What is on the list beyond what is cut, since more costs less. @param {import('./days.js').DayProps} props */
function surplus({ plan, order }) {
  const all = plan.surplus.map((/** @type {any} */ one) => `${one.quantity} × ${nameOf(order, one.id, plan)}`);
  return all.length > 0 ? [h('p', { class: 'hint' }, t.errand.surplus(all.join(', ')))] : [];
}

/** The errand alone on paper. */
function printList() {
  const root = document.documentElement;
  root.dataset.print = 'errand';
  addEventListener('afterprint', () => { delete root.dataset.print; }, { once: true });
  print();
}

/** The list as text, to whom the browser lets one send it; else to the clipboard. @param {import('./days.js').DayProps} props */
function shareButton(props) {
  const { plan, numbers } = props;
  const button = h('button', { type: 'button', onclick: share }, t.errand.share);
  const lines = byShop(plan).flatMap(([shop, here]) => [`${t.errand.shops[shop]}:`, ...here.map((line) => `– ${amountOf(line, props)} ${calledOf(line, props)}, ${numbers.money(line.cost)}`), '']);
  const text = [...lines, `${t.errand.sum}: ${numbers.money(plan.cost.cash)}`].join('\n');
  async function share() {
    try {
      if (navigator.share) return void await navigator.share({ title: plan.title, text });
      // A plain address of the network has no clipboard: then the text stands there to be copied by hand.
      if (!navigator.clipboard) return byHand(button, text);
      await navigator.clipboard.writeText(text);
      button.textContent = t.errand.copied;
    } catch (fault) {
      // Sent to nobody, or not allowed: the list still stands on the page.
      if (!(fault instanceof DOMException)) throw fault;
    }
  }
  return button;
}

/** @param {Element} button @param {string} text */
function byHand(button, text) {
  const area = h('textarea', { class: 'by-hand', readonly: true, rows: text.split('\n').length, 'aria-label': t.errand.share });
  area.value = text;
  button.parentElement?.after(area);
  area.select();
}

/** @param {import('./days.js').DayProps} props */
function shops(props) {
  return byShop(props.plan).flatMap(([shop, here]) => [
    h('h3', {}, t.errand.shops[shop]),
    h('ul', { class: 'slip' }, ...here.map((line) => h('li', {}, tick(props, `buy${line.i}`, ...said(line, props))))),
  ]);
}

/** What to buy by kind of shop, in the order of the way there; each line with its place in the whole. @param {any} plan @returns {[keyof typeof t.errand.shops, any[]][]} */
function byShop(plan) {
  const all = plan.buy.map((/** @type {any} */ line, /** @type {number} */ i) => ({ ...line, i }));
  const shops = /** @type {(keyof typeof t.errand.shops)[]} */ (Object.keys(t.errand.shops));
  return shops.map((shop) => /** @type {[typeof shop, any[]]} */ ([shop, all.filter((/** @type {any} */ line) => SHOP[line.saleUnit] === shop)])).filter(([, here]) => here.length > 0);
}

/** @param {any} line @param {import('./days.js').DayProps} props */
function said(line, props) {
  const { numbers } = props;
  return [
    h('strong', { class: 'amount' }, amountOf(line, props)), ' ', h('span', { class: 'what' }, calledOf(line, props)),
    h('span', { class: 'at' }, [`${t.errand.at} ${numbers.money(line.unitPrice)}`, shopOf(line, props)].filter(Boolean).join(', ')), h('span', { class: 'cost' }, numbers.money(line.cost)),
  ];
}

/** A good by its name; a way by the shop it leads to. @param {any} line @param {import('./days.js').DayProps} props @returns {string} */
const calledOf = (line, { order }) => (line.saleUnit === 'delivery' && (order.shops ?? []).find((/** @type {any} */ one) => one.id === line.id)?.name) || line.name || line.id;

/** Where it is bought, where the ticket says: which shop's delivery is paid hangs on it. @param {any} line @param {import('./days.js').DayProps} props @returns {string} */
function shopOf(line, { order }) {
  const good = GOODS.flatMap((list) => order[list] ?? []).find((one) => one.id === line.id);
  return (order.shops ?? []).find((/** @type {any} */ one) => one.id === good?.shop)?.name ?? good?.shop ?? '';
}

/** "3 ×", or so many lengths off the roll. @param {any} line @param {import('./days.js').DayProps} props @returns {string} */
function amountOf(line, props) {
  const step = line.saleUnit === 'step' ? stepOf(line, props) : '';
  return step ? t.errand.ofSteps(line.quantity, step) : `${line.quantity} ×`;
}

/** How long one step is, as the ticket says it; one from the shelf as what is cut of it tells, unless more is bought than that. @param {any} line @param {import('./days.js').DayProps} props @returns {string} */
function stepOf(line, { plan, order, numbers }) {
  const step = order.cloths?.find((/** @type {any} */ c) => c.id === line.id)?.sale?.step;
  if (step !== undefined) return withOwn(step, order.units);
  if (plan.surplus.some((/** @type {any} */ one) => one.id === line.id)) return '';
  const bought = plan.cloth.filter((/** @type {any} */ c) => c.cloth === line.id && c.source === 'bought');
  return numbers.length(bought.reduce((/** @type {number} */ sum, /** @type {any} */ c) => sum + c.length * c.copies, 0) / line.quantity);
}

/** @param {import('./days.js').DayProps} props */
function taken(props) {
  const { plan, order, numbers } = props;
  const all = fromRack(plan);
  if (all.length === 0) return [];
  const one = (/** @type {any} */ good) => (good.sort === 'liquid'
    ? [h('strong', { class: 'amount' }, numbers.volume(good.volume)), ' ', nameOf(order, good.id, plan)]
    : [h('strong', { class: 'amount' }, `${good.count} ×`), ' ', `${clothOf(order, good, plan)}, ${good.sort === 'strip' ? numbers.length(good.length) : numbers.size(good.width, good.height)}`]);
  return [
    h('h3', {}, t.errand.fromRack),
    h('ul', { class: 'slip' }, ...all.map((good, i) => h('li', {}, tick(props, `take${i}`, ...one(good))))),
  ];
}
