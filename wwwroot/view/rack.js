// @ts-check
/** The rack: standard formats standing on a shelf, all to one scale on squared paper. Tap one to add it. */

import { readLength, SIGN } from '../model/measures.js';
import { t } from '../texts/index.js';
import { h, rows, say, set, svg } from './dom.js';
import { choices } from './choices.js';

const TALLEST_PIXELS = 150;
const SQUARE_PIXELS = 13;
const SQUARES = [1, 2, 5, 6, 10, 12, 20, 50, 100, 200, 500];

/**
 * @typedef {{ series: string, face: string, lying: boolean, surface: string, cloth: string }} Way
 * @typedef {{ order: import('../model/order.js').Order, series: import('../model/formats.js').Series[], way: Way, setWay: (way: Partial<Way>) => void,
 *   add: (line: Record<string, any>) => void, change: (path: string, value: any) => void }} RackProps
 */

/** @param {Element} element @param {RackProps} props */
export function mountRack(element, props) {
  const series = choices(t.make.series, props.series.map((s) => [s.id, t.series[/** @type {'inch'} */ (s.id)] ?? s.name]), (id) => {
    props.setWay({ series: id, face: props.series.find((s) => s.id === id)?.faces[0] ?? '' });
  });
  const faces = choices(t.make.faces, Object.entries(t.faces), (face) => props.setWay({ face }));
  const hung = choices(t.make.way, [['', t.make.upright], ['lying', t.make.lying]], (way) => props.setWay({ lying: way !== '' }));
  const surface = h('select', { 'aria-label': t.make.surface, onchange: () => props.setWay({ surface: surface.value }) },
    ...Object.entries(t.surfaces).map(([value, text]) => h('option', { value }, text)));
  const source = h('p', { class: 'hint' });
  const shelf = h('ul', { class: 'shelf' });
  const update = (/** @type {RackProps} */ next) => {
    props = next;
    const shown = props.series.find((s) => s.id === props.way.series) ?? props.series[0];
    series.update(shown.id);
    faces.update(props.way.face, shown.faces);
    hung.update(props.way.lying ? 'lying' : '');
    surface.value = props.way.surface;
    const formats = shown.formats.filter((f) => !f.face || f.face === props.way.face);
    const scale = TALLEST_PIXELS / Math.max(...formats.map((f) => f.height));
    const square = SQUARES.find((step) => step * scale >= SQUARE_PIXELS) ?? 1000;
    shelf.style.setProperty('--square', `${square * scale}px`);
    say(source, `${t.make.source(shown.source)} ${t.make.square(`${square} ${SIGN[shown.unit]}`)}`);
    fill(formats, { ...props, unit: shown.unit, scale });
  };
  const fill = rows(shelf, (/** @type {any} */ f) => `${props.way.series}${f.name}`, tile);
  element.append(
    h('div', { class: 'choosers' }, series.element, faces.element, hung.element),
    h('p', { class: 'tap' }, `${t.make.tap} ${t.make.as} `, surface),
    shelf,
    source,
  );
  update(props);
  return { update };
}

/** One format on the shelf. @param {import('../model/formats.js').Format} format */
function tile(format) {
  /** @type {any} */
  let now;
  const board = svg('rect', { class: 'board' });
  const picture = svg('svg', { 'aria-hidden': 'true' }, board);
  const button = h('button', { type: 'button', class: 'format', onclick: () => now.add(line(format, now)) }, picture);
  const label = h('span', { class: 'format-name' });
  const count = h('input', {
    type: 'text', inputmode: 'numeric', size: 3, 'aria-label': t.make.howMany(format.name), class: 'format-count',
    oninput: () => now.change(`panels[${now.at}].quantity`, count.value),
  });
  const under = h('span', { class: 'under' }, label, count);
  const element = h('li', { class: 'tile' }, button, under);
  return {
    element,
    update(/** @type {any} */ _item, /** @type {number} */ _index, /** @type {any} */ props) {
      const [width, height] = sides(format, props.way.lying);
      const at = props.order.panels.findIndex((/** @type {any} */ row) => isThis(row, line(format, props), props.order.units));
      now = { ...props, at };
      draw(picture, board, width * props.scale, height * props.scale);
      say(label, format.name);
      set(button, { 'aria-label': t.make.add(format.name, `${width} × ${height} ${SIGN[/** @type {'inch'} */ (props.unit)]}`) });
      set(element, { 'data-chosen': at >= 0 });
      count.hidden = at < 0;
      const quantity = at < 0 ? '' : String(props.order.panels[at].quantity ?? '');
      if (count.value !== quantity) count.value = quantity;
    },
  };
}

/** @param {Element} picture @param {Element} board @param {number} width @param {number} height */
function draw(picture, board, width, height) {
  set(picture, { width: width + 2, height: height + 1, viewBox: `-1 -1 ${width + 2} ${height + 1}` });
  set(board, { width, height });
}

/** @param {import('../model/formats.js').Format} format @param {boolean} lying */
const sides = (format, lying) => (lying ? [format.height, format.width] : [format.width, format.height]);

/** What a tap puts on the ticket. @param {import('../model/formats.js').Format} format @param {any} props */
function line(format, props) {
  const sign = props.unit === props.order.units ? '' : ` ${SIGN[/** @type {'inch'} */ (props.unit)]}`;
  const [width, height] = sides(format, props.way.lying).map((side) => `${side}${sign}`);
  return { quantity: 1, width, height, surface: props.way.surface };
}

/** Whether a line is of this size and finish, whatever its cloth. @param {any} row @param {any} wanted @param {import('../model/measures.js').Unit} unit */
function isThis(row, wanted, unit) {
  const near = (/** @type {string} */ a, /** @type {string} */ b) => Math.abs((readLength(a, unit) ?? -1) - (readLength(b, unit) ?? -2)) < 0.01;
  return near(row.width, wanted.width) && near(row.height, wanted.height) && (row.surface ?? 'bare') === wanted.surface;
}

