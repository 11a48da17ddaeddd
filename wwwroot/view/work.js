// @ts-check
/** How the painter cuts and presses: settings with where their defaults come from. */

import { t } from '../texts/index.js';
import { h, rows } from './dom.js';
import { fields } from './field.js';

/** @typedef {import('./field.js').FieldShape} FieldShape */

/** @returns {[string, FieldShape[]][]} */
const groups = () => [
  [t.work.saw, [
    { path: 'saw.kerf', label: t.work.kerf, hint: t.work.kerfHint, unit: 'length' },
    { path: 'saw.undersize', label: t.work.undersize, hint: t.work.undersizeHint, unit: 'length' },
    { path: 'saw.edgeTrim', label: t.work.edgeTrim, hint: t.work.edgeTrimHint, unit: 'length' },
    { path: 'saw.smallestKept[0]', label: t.work.kept, unit: 'length' },
    { path: 'saw.smallestKept[1]', label: t.make.by, hint: t.work.keptHint, unit: 'length' },
    { path: 'saw.leastFenceLength', label: t.work.leastFence, hint: t.work.leastFenceHint, unit: 'length' },
  ]],
  [t.work.handling, [
    { path: 'saw.fenceReach', label: t.work.fenceReach, hint: t.work.noLimit, unit: 'length' },
    { path: 'saw.largest[0]', label: t.work.largest, unit: 'length' },
    { path: 'saw.largest[1]', label: t.make.by, hint: t.work.noLimit, unit: 'length' },
    { path: 'saw.heaviest', label: t.work.heaviest, hint: t.work.heaviestHint, unit: 'weight', kind: 'number' },
    { path: 'saw.carry[0]', label: t.work.carry, unit: 'length' },
    { path: 'saw.carry[1]', label: t.make.by, hint: t.work.carryHint, unit: 'length' },
    { path: 'saw.supplierKerf', label: t.work.supplierKerf, hint: t.work.supplierKerfHint, unit: 'length' },
  ]],
  [t.work.bench, [
    { path: 'bench.margin[0]', label: t.work.margin, unit: 'length' },
    { path: 'bench.margin[1]', label: t.work.marginEnds, hint: t.work.marginHint, unit: 'length' },
    { path: 'bench.smallestCloth[0]', label: t.work.keptCloth, unit: 'length' },
    { path: 'bench.smallestCloth[1]', label: t.make.by, unit: 'length' },
    { path: 'bench.pressHours', label: t.work.pressHours, hint: t.work.pressHint, unit: t.work.hours, kind: 'number', size: 4 },
    { path: 'bench.pressSpaces', label: t.work.pressSpaces, kind: 'number', size: 3 },
    { path: 'bench.stackHeight', label: t.work.stackHeight, kind: 'number', size: 3 },
  ]],
  [t.work.money, [
    { path: 'labour.perHour', label: t.work.labour, hint: t.work.labourHint, unit: 'money', kind: 'number' },
    { path: 'effort', label: t.work.effort, kind: 'choice', options: [['quick', t.work.quick], ['steady', t.work.steady], ['thorough', t.work.thorough]] },
  ]],
];

/**
 * @typedef {import('./field.js').FieldProps & { add: (list: string, row: any) => void, remove: (list: string, key: string) => void }} WorkProps
 * @param {Element} element @param {WorkProps} props
 */
export function mountWork(element, props) {
  const all = groups().map(([head, shapes]) => {
    const part = fields(shapes.map((shape) => () => shape));
    element.append(h('section', { class: 'settings' }, h('h4', {}, head), h('div', { class: 'fields' }, ...part.elements)));
    return part;
  });
  const list = h('ul', { class: 'parts' });
  const fill = rows(list, (/** @type {any} */ row) => row.key, () => mountOverhead(() => props));
  const add = h('button', { type: 'button', class: 'quiet', onclick: () => props.add('overheads', { name: '', cost: '' }) }, t.work.addOverhead);
  element.lastElementChild?.append(list, add);
  const update = (/** @type {WorkProps} */ next) => {
    props = next;
    all.forEach((part) => part.update(props));
    fill(props.order.overheads, props);
  };
  update(props);
  return { update };
}

/** @param {() => WorkProps} now */
function mountOverhead(now) {
  let key = '';
  const all = fields([
    (i) => ({ path: `overheads[${i}].name`, label: t.work.overheadName, size: 16 }),
    (i) => ({ path: `overheads[${i}].cost`, label: t.work.overhead, unit: 'money', kind: 'number' }),
  ]);
  const remove = h('button', { type: 'button', class: 'quiet', onclick: () => now().remove('overheads', key) }, t.goods.remove);
  return {
    element: h('li', {}, h('span', { class: 'fields' }, ...all.elements), remove),
    /** @param {any} row @param {number} i @param {any} props */
    update(row, i, props) {
      ({ key } = row);
      all.update(props, i);
    },
  };
}
