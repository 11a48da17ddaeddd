// @ts-check
/** How the painter cuts, presses, works and counts: settings with where their defaults come from. What few need is folded. */

import { t } from '../texts/index.js';
import { h, rows, takeOff } from './dom.js';
import { field, fields } from './field.js';

/**
 * @typedef {import('./field.js').FieldShape} FieldShape
 * @typedef {{ head: string, fold?: true, shapes: FieldShape[], lists?: ListShape[] }} Group
 * @typedef {{ list: string, add: string, fresh: (order: any) => any, shapes: ((i: number) => FieldShape)[] }} ListShape
 */

/** @returns {Group[]} */
const groups = () => [
  { head: t.work.saw, shapes: [
    { path: 'saw.kerf', label: t.work.kerf, hint: t.work.kerfHint, unit: 'length' },
    { path: 'saw.undersize', label: t.work.undersize, hint: t.work.undersizeHint, unit: 'length' },
    { path: 'saw.edgeTrim', label: t.work.edgeTrim, hint: t.work.edgeTrimHint, unit: 'length' },
    { path: 'saw.smallestKept[0]', label: t.work.kept, unit: 'length' },
    { path: 'saw.smallestKept[1]', label: t.make.by, spoken: t.work.otherSide(t.work.kept), hint: t.work.keptHint, unit: 'length' },
    { path: 'saw.leastFenceLength', label: t.work.leastFence, hint: t.work.leastFenceHint, unit: 'length' },
  ] },
  { head: t.work.bench, shapes: [
    { path: 'bench.margin[0]', label: t.work.margin, unit: 'length' },
    { path: 'bench.margin[1]', label: t.work.marginEnds, hint: t.work.marginHint, unit: 'length' },
    { path: 'bench.smallestCloth[0]', label: t.work.keptCloth, unit: 'length' },
    { path: 'bench.smallestCloth[1]', label: t.make.by, spoken: t.work.otherSide(t.work.keptCloth), unit: 'length' },
    { path: 'bench.pressHours', label: t.work.pressHours, hint: t.work.pressHint, unit: t.work.hours, kind: 'number', size: 4 },
    { path: 'bench.pressSpaces', label: t.work.pressSpaces, kind: 'number', size: 3 },
    { path: 'bench.stackHeight', label: t.work.stackHeight, kind: 'number', size: 3 },
  ] },
  { head: t.work.search, shapes: [
    { path: 'effort', label: t.work.effort, kind: 'choice', options: [['quick', t.work.quick], ['steady', t.work.steady], ['thorough', t.work.thorough]], fallback: 'steady' },
  ] },
  { head: t.work.handling, fold: true, shapes: [
    { path: 'saw.fenceReach', label: t.work.fenceReach, hint: t.work.noLimit, unit: 'length' },
    { path: 'saw.largest[0]', label: t.work.largest, unit: 'length' },
    { path: 'saw.largest[1]', label: t.make.by, spoken: t.work.otherSide(t.work.largest), hint: t.work.noLimit, unit: 'length' },
    { path: 'saw.heaviest', label: t.work.heaviest, hint: t.work.heaviestHint, unit: 'weight', kind: 'number' },
    { path: 'saw.carry[0]', label: t.work.carry, unit: 'length' },
    { path: 'saw.carry[1]', label: t.make.by, spoken: t.work.otherSide(t.work.carry), hint: t.work.carryHint, unit: 'length' },
    { path: 'saw.supplierKerf', label: t.work.supplierKerf, hint: t.work.supplierKerfHint, unit: 'length' },
  ] },
  { head: t.work.clothFold, fold: true, shapes: [
    { path: 'bench.margin[2]', label: t.work.marginRight, unit: 'length' },
    { path: 'bench.margin[3]', label: t.work.marginBottom, hint: t.work.marginSideHint, unit: 'length' },
    { path: 'bench.shrinkage[0]', label: t.work.shrinkage, unit: '%', kind: 'number', size: 4 },
    { path: 'bench.shrinkage[1]', label: t.work.shrinkageHeight, hint: t.work.shrinkageHint, unit: '%', kind: 'number', size: 4 },
    { path: 'bench.pressure', label: t.work.pressure, hint: t.work.pressureHint, unit: 'pressure', kind: 'number', size: 4 },
    { path: 'bench.openMinutes', label: t.work.openMinutes, hint: t.work.openHint, unit: t.work.minutes, kind: 'number', size: 4 },
    { path: 'bench.dryHours', label: t.work.dryHours, hint: t.work.dryHint, unit: t.work.hours, kind: 'number', size: 4 },
    { path: 'bench.restHours', label: t.work.restHours, hint: t.work.restHint, unit: t.work.hours, kind: 'number', size: 4 },
    { path: 'bench.roomTemperature', label: t.work.room, unit: '°C', kind: 'number', size: 4 },
  ] },
  { head: t.work.cradles, fold: true, shapes: [
    { path: 'strength.brace', label: t.work.brace, hint: t.work.braceHint, kind: 'flag' },
    { path: 'strength.load', label: t.work.load, hint: t.work.loadHint, unit: 'weight', kind: 'number', size: 4 },
    { path: 'strength.limit', label: t.work.limit, hint: t.work.limitHint, kind: 'number', size: 4 },
    { path: 'strength.braceFrom', label: t.work.braceFrom, hint: t.work.braceFromHint, unit: 'length' },
    { path: 'strength.stripWidth', label: t.work.stripWidth, unit: 'length' },
    { path: 'strength.stripDepth', label: t.work.stripDepth, hint: t.work.stripHint, unit: 'length' },
    { path: 'strength.cradleInset', label: t.work.inset, unit: 'length' },
    { path: 'strength.smallestStrip', label: t.work.keptStrip, unit: 'length' },
    { path: 'bench.clampHours', label: t.work.clampHours, unit: t.work.hours, kind: 'number', size: 4 },
    { path: 'strength.faces[0]', label: t.work.backAir, unit: '%', kind: 'number', size: 3 },
    { path: 'strength.faces[1]', label: t.work.frontAir, hint: t.work.facesHint, unit: '%', kind: 'number', size: 3 },
    { path: 'strength.humidity[0]', label: t.work.driest, unit: '%', kind: 'number', size: 3 },
    { path: 'strength.humidity[1]', label: t.work.dampest, hint: t.work.humidityHint, unit: '%', kind: 'number', size: 3 },
    { path: 'strength.temperature', label: t.work.airTemperature, hint: t.work.airHint, unit: '°C', kind: 'number', size: 3 },
  ] },
  { head: t.work.days, fold: true, shapes: [
    { path: 'schedule.start', label: t.work.start, hint: t.work.startHint, kind: 'date' },
    { path: 'schedule.from', label: t.work.from, kind: 'time' },
    { path: 'schedule.to', label: t.work.to, hint: t.work.toHint, kind: 'time' },
    { path: 'schedule.hands', label: t.work.hands, kind: 'number', size: 3 },
    { path: 'schedule.zone', label: t.work.zone, hint: t.work.zoneHint, size: 14 },
  ] },
  { head: t.work.money, fold: true, shapes: [
    { path: 'labour.perHour', label: t.work.labour, hint: t.work.labourHint, unit: 'money', kind: 'number' },
    { path: 'tax.percent', label: t.work.tax, hint: t.work.taxHint, unit: '%', kind: 'number', size: 4 },
    { path: 'budget', label: t.work.budget, hint: t.work.budgetHint, unit: 'money', kind: 'number' },
  ], lists: [
    { list: 'overheads', add: t.work.addOverhead, fresh: () => ({ name: '', cost: '' }), shapes: [
      (i) => ({ path: `overheads[${i}].name`, label: t.work.overheadName, size: 16 }),
      (i) => ({ path: `overheads[${i}].cost`, label: t.work.overhead, unit: 'money', kind: 'number' }),
    ] },
    { list: 'consumables', add: t.work.addConsumable, fresh: () => ({ name: '', per: 'sawMetre' }), shapes: [
      (i) => ({ path: `consumables[${i}].name`, label: t.work.consumable, size: 16 }),
      (i) => ({ path: `consumables[${i}].price`, label: t.goods.price, unit: 'money', kind: 'number' }),
      (i) => ({ path: `consumables[${i}].lasts`, label: t.work.lasts, kind: 'number', size: 5 }),
      (i) => ({ path: `consumables[${i}].per`, label: t.work.per, kind: 'choice', options: Object.entries(t.work.wornBy) }),
    ] },
    { list: 'tools', add: t.work.addTool, fresh: () => ({ name: '' }), shapes: [
      (i) => ({ path: `tools[${i}].name`, label: t.work.tool, size: 16 }),
      (i) => ({ path: `tools[${i}].price`, label: t.goods.price, unit: 'money', kind: 'number' }),
      (i) => ({ path: `tools[${i}].spreadOver`, label: t.work.spreadOver, kind: 'number', size: 5, unit: t.work.panels }),
    ] },
    { list: 'shops', add: t.work.addShop, fresh: (order) => ({ id: `shop-${Date.now().toString(36)}`, name: '', charge: order.shops?.length ? '' : '0' }), shapes: [
      (i) => ({ path: `shops[${i}].name`, label: t.work.shop, size: 16 }),
      (i) => ({ path: `shops[${i}].charge`, label: t.work.charge, unit: 'money', kind: 'number' }),
      (i) => ({ path: `shops[${i}].freeFrom`, label: t.work.freeFrom, hint: t.work.freeFromHint, unit: 'money', kind: 'number' }),
    ] },
  ] },
];

/**
 * @typedef {import('./field.js').FieldProps & { add: (list: string, row: any) => void, remove: (list: string, key: string) => void }} WorkProps
 */

/** All settings; the caller puts them where they belong. */
export function settings() {
  const all = groups().map(mountGroup);
  return {
    elements: all.map((one) => one.element),
    /** @param {WorkProps} props */
    update: (props) => all.forEach((one) => one.update(props)),
  };
}

/** @param {Group} group */
function mountGroup({ head, fold, shapes, lists = [] }) {
  const main = fields(shapes.map((shape) => () => shape));
  const more = [...lists.map(mountList), ...(head === t.work.days ? [weekdays()] : [])];
  const content = [h('div', { class: 'fields' }, ...main.elements), ...more.map((one) => one.element)];
  const element = fold
    ? h('details', { class: 'settings' }, h('summary', {}, h('h4', {}, head)), ...content)
    : h('section', { class: 'settings' }, h('h4', {}, head), ...content);
  return {
    element,
    /** @param {WorkProps} props */
    update(props) {
      main.update(props);
      more.forEach((one) => one.update(props));
      if (fold && element.querySelector('[aria-invalid]')) /** @type {any} */ (element).open = true;
    },
  };
}

/** @param {ListShape} shape */
function mountList({ list, add, fresh, shapes }) {
  /** @type {WorkProps} */
  let now;
  const body = h('ul', { class: 'parts' });
  const fill = rows(body, (/** @type {any} */ row) => row.key, () => {
    let key = '';
    const all = fields(shapes);
    const remove = takeOff(() => now.remove(list, key), t.goods.remove);
    return {
      element: h('li', {}, h('span', { class: 'fields' }, ...all.elements), remove),
      update: (/** @type {any} */ row, /** @type {number} */ i, /** @type {any} */ props) => {
        ({ key } = row);
        all.update(props, i);
      },
    };
  });
  const button = h('button', { type: 'button', class: 'quiet', onclick: () => { now.add(list, fresh(now.order)); body.lastElementChild?.querySelector('input')?.focus(); } }, add);
  return {
    element: h('div', { class: 'list' }, body, button),
    /** @param {WorkProps} props */
    update(props) {
      now = props;
      fill(/** @type {any} */ (props.order)[list] ?? [], props);
    },
  };
}

/** The days that are worked; none ticked: all of them. */
function weekdays() {
  const names = Object.entries(t.work.weekdays);
  const days = names.map(([day, label]) => field(() => ({ path: day, label, kind: 'flag' })));
  return {
    element: h('fieldset', { class: 'weekdays' }, h('legend', {}, t.work.worked), ...days.map((one) => one.element), h('span', { class: 'hint' }, t.work.workedHint)),
    /** @param {WorkProps} props */
    update(props) {
      /** @type {string[]} */
      const chosen = props.order.schedule?.days ?? [];
      const order = Object.fromEntries(names.map(([day]) => [day, chosen.includes(day)]));
      const change = (/** @type {string} */ day, /** @type {boolean} */ on) =>
        props.change('schedule.days', names.map(([one]) => one).filter((one) => (one === day ? on : chosen.includes(one))));
      days.forEach((one) => one.update({ order, problem: null, change }));
    },
  };
}
