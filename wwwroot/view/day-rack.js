// @ts-check
/** Day 6: what goes back on the rack, drawn to one scale. */

import { kept, keptStrips, nameOf } from '../model/plan.js';
import { t } from '../texts/index.js';
import { h, svg } from './dom.js';
import { made } from './made.js';
import { tick } from './tick.js';

const TALLEST_PIXELS = 96;
const HATCH_PIXELS = 9;

/** @param {import('./days.js').DayProps} props */
export function rack(props) {
  const { plan, order, numbers } = props;
  const liquids = plan.liquids.filter((/** @type {any} */ l) => l.left > 0);
  const content = [
    ...leftovers(props, kept(plan, 'sheets'), t.rack.boards, 'board'),
    ...leftovers(props, kept(plan, 'cloth'), t.rack.cloth, 'cloth'),
    ...strips(props),
    ...(liquids.length > 0 ? [h('h3', {}, t.rack.liquids), h('ul', { class: 'slip' }, ...liquids.map((/** @type {any} */ l) => h('li', {},
      tick(props, `left-${l.id}`, h('strong', { class: 'amount' }, numbers.volume(l.left)), ' ', nameOf(order, l.id, plan)))))] : []),
  ];
  return [...(content.length > 0 ? [...content, h('p', { class: 'hint' }, t.rack.hint)] : [h('p', {}, t.rack.nothing)]), ...labels(props), made(props)];
}

/** @param {import('./days.js').DayProps} props */
function strips(props) {
  const all = keptStrips(props.plan);
  if (all.length === 0) return [];
  return [h('h3', {}, t.rack.strips), h('ul', { class: 'slip' }, ...all.map((one, i) => h('li', {},
    tick(props, `strip${i}`, h('strong', { class: 'amount' }, `${one.count} × ${props.numbers.length(one.length)}`), ' ', nameOf(props.order, one.id, props.plan)))))];
}

/** Labels for what is made and what is kept: plain paper to cut, or the sheets of labels there are. @param {import('./days.js').DayProps} props */
function labels({ plan }) {
  const page = h('input', { type: 'text', size: 3, value: 1, id: 'labels-page', inputmode: 'numeric' });
  const grid = h('select', { id: 'labels-grid' }, ...GRIDS.map(([paper, of]) => h('option', { value: `${paper} ${of}` }, `${t.rack.papers[/** @type {'a4'} */ (paper)]}, ${of === 'plain' ? t.rack.plain : of.replace('x', ' × ')}`)));
  const link = h('a', { target: '_blank' }, t.rack.labels);
  const point = () => {
    const [paper, of] = grid.value.split(' ');
    const query = new URLSearchParams({ lang: t.language, paper, grid: of, page: page.value || '1' });
    link.setAttribute('href', `/api/plans/${encodeURIComponent(plan.id)}/labels.svg?${query}`);
  };
  for (const input of [page, grid]) input.addEventListener('input', point);
  point();
  return [h('div', { class: 'labels-tools tools fields' }, link,
    h('span', { class: 'field' }, h('label', { class: 'name', for: 'labels-grid' }, t.rack.paper), grid),
    h('span', { class: 'field' }, h('label', { class: 'name', for: 'labels-page' }, t.rack.page), page))];
}

/** As `labels.svg` has them. */
const GRIDS = [['a4', 'plain'], ['a4', '2x4'], ['a4', '2x7'], ['a4', '3x7'], ['a4', '3x8'], ['letter', 'plain'], ['letter', '2x5'], ['letter', '2x7'], ['letter', '3x10']];

/** @param {import('./days.js').DayProps} props @param {ReturnType<typeof kept>} all @param {string} head @param {string} sort */
function leftovers(props, all, head, sort) {
  if (all.length === 0) return [];
  const scale = TALLEST_PIXELS / Math.max(...all.flatMap((one) => [one.width, one.height]));
  return [
    h('h3', {}, head),
    h('ul', { class: 'leftovers' }, ...all.map((one, i) => h('li', {}, picture(one.width * scale, one.height * scale),
      tick(props, `${sort}${i}`, h('strong', {}, `${one.count} ${t.make.of} ${props.numbers.size(one.width, one.height)}`), h('span', { class: 'at' }, nameOf(props.order, one.id, props.plan)))))),
  ];
}

/** @param {number} width @param {number} height */
function picture(width, height) {
  const lines = [];
  for (let sum = HATCH_PIXELS; sum < width + height; sum += HATCH_PIXELS) {
    const x1 = Math.max(0, sum - height);
    const x2 = Math.min(width, sum);
    lines.push(`M${x1} ${sum - x1}L${x2} ${sum - x2}`);
  }
  return svg('svg', { class: 'leftover', width: width + 2, height: height + 2, viewBox: `-1 -1 ${width + 2} ${height + 2}`, 'aria-hidden': 'true' },
    svg('rect', { width, height }), svg('path', { d: lines.join('') }));
}
