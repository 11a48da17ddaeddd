// @ts-check
/** The lines on the ticket, each a sentence with blanks: "12 of 8 × 10 in, cloth glued on, linen, on any board". */

import { hasUnit, readLength, SIGN } from '../model/measures.js';
import { t } from '../texts/index.js';
import { h, lazily, rows, say, set, svg, takeOff } from './dom.js';
import { field, fields } from './field.js';

const BOX = 46;

/**
 * @typedef {import('./field.js').FieldProps & { remove: (list: string, key: string) => void, addOwn: () => void }} LinesProps
 * @param {Element} element @param {LinesProps} props
 */
export function mountLines(element, props) {
  const none = h('p', { class: 'none' }, t.make.none);
  const list = h('ol', { class: 'lines' });
  const fill = rows(list, (/** @type {any} */ row) => row.key, mountLine);
  const own = h('button', { type: 'button', class: 'quiet own', onclick: () => { now.addOwn(); list.lastElementChild?.querySelector('[data-path$=width]')?.focus(); } }, t.make.own);
  let now = props;
  element.append(none, list, own);
  const update = (/** @type {LinesProps} */ next) => {
    now = next;
    none.hidden = next.order.panels.length > 0;
    const largest = Math.max(...next.order.panels.flatMap((/** @type {any} */ row) => mm(row, next.order.units)), 1);
    fill(next.order.panels, { ...next, scale: BOX / largest });
  };
  update(props);
  return { update };
}

/** @param {any} row @param {import('../model/measures.js').Unit} unit */
const mm = (row, unit) => [readLength(row.width, unit) ?? 0, readLength(row.height, unit) ?? 0];

function mountLine() {
  /** @type {any} */
  let now;
  let key = '';
  const picture = portrait();
  const main = parts();
  const folded = h('div', { class: 'fields' });
  const rest = h('details', { class: 'more' }, h('summary', {}, t.make.more), folded);
  const more = lazily(rest, () => fields(moreShapes), (part) => folded.append(...part.elements));
  const remove = takeOff(() => now.remove('panels', key), t.make.remove);
  const element = h('li', { class: 'line' }, picture.element, h('div', { class: 'sentence' }, ...main.content, rest, remove));
  return {
    element,
    update(/** @type {any} */ row, /** @type {number} */ index, /** @type {any} */ props) {
      now = props;
      ({ key } = row);
      picture.update(row, props);
      main.update(props, index, row);
      if (props.problem?.errors) more.want();
      more.update(props, index);
      set(remove, { 'aria-label': `${t.make.remove}: ${row.mark}` });
      set(element, { 'aria-label': row.mark });
    },
  };
}

function parts() {
  const name = (/** @type {number} */ i, /** @type {string} */ part) => `panels[${i}].${part}`;
  const quantity = field((i) => ({ path: name(i, 'quantity'), label: t.make.quantity, kind: 'number', size: 3 }));
  const width = field((i) => ({ path: name(i, 'width'), label: t.make.width, size: 4 }));
  const height = field((i) => ({ path: name(i, 'height'), label: t.make.height, size: 4 }));
  const surface = field((i) => ({ path: name(i, 'surface'), label: t.make.surface, kind: 'choice', options: Object.entries(t.surfaces), fallback: 'bare' }));
  const cloth = field((i) => ({ path: name(i, 'cloth'), label: t.make.clothKind, size: 8, list: 'cloth-kinds', placeholder: t.make.anyCloth }));
  const board = field((i) => ({ path: name(i, 'board'), label: t.make.boardKind, size: 8, list: 'board-kinds', placeholder: t.make.anyBoard }));
  const price = field((i) => ({ path: name(i, 'shopPrice'), label: t.make.shop, kind: 'number', size: 4 }));
  const on = h('span', {}, t.make.on);
  const unit = h('span', { class: 'unit' });
  const currency = h('span', { class: 'unit' });
  const group = (/** @type {any[]} */ ...children) => h('span', { class: 'phrase' }, ...children);
  const content = [
    group(quantity.element, h('span', {}, t.make.of), width.element, h('span', {}, t.make.by), height.element, unit),
    group(surface.element, cloth.element),
    group(on, board.element),
    group(price.element, currency),
  ];
  return {
    content,
    /** @param {any} props @param {number} index @param {any} row */
    update(props, index, row) {
      [quantity, width, height, surface, cloth, board, price].forEach((one) => one.update(props, index));
      cloth.element.hidden = row.surface !== 'cloth' && row.surface !== 'loose';
      board.element.hidden = on.hidden = row.surface === 'loose';
      say(unit, hasUnit(row.height) ? '' : SIGN[/** @type {'inch'} */ (props.order.units)]);
      say(currency, `${props.order.currency} ${t.make.each}`);
    },
  };
}

/** @type {((i: number) => import('./field.js').FieldShape)[]} */
const moreShapes = [
  (i) => ({ path: `panels[${i}].mark`, label: t.make.mark, size: 4 }),
  (i) => ({ path: `panels[${i}].spares`, label: t.make.spares, kind: 'number', size: 3 }),
  (i) => ({ path: `panels[${i}].thickness`, label: t.make.thickness, hint: t.make.thicknessHint, size: 6 }),
  (i) => ({ path: `panels[${i}].mount`, label: t.make.mount, when: (order) => order.panels[i]?.surface === 'cloth', kind: 'choice', options: [['', t.make.mountNow], ['later', t.make.mountLater]] }),
  (i) => ({ path: `panels[${i}].pack`, label: t.make.pack, kind: 'number', size: 3 }),
  (i) => ({ path: `panels[${i}].worth`, label: t.make.worth, hint: t.make.worthHint, kind: 'number', size: 6, unit: 'money' }),
  (i) => ({ path: `panels[${i}].mayTurn`, label: t.make.mayTurn, kind: 'flag', fallback: true }),
  (i) => ({ path: `panels[${i}].mayBuy`, label: t.make.mayBuy, kind: 'flag' }),
  (i) => ({ path: `panels[${i}].first`, label: t.make.first, kind: 'flag' }),
  (i) => ({ path: `panels[${i}].cradle`, label: t.make.cradle, kind: 'choice', options: [['', t.make.cradleAsked], ['true', t.make.cradleYes], ['false', t.make.cradleNo]], when: (order) => order.panels[i]?.surface !== 'loose' }),
];

/** The panel to scale, with its mark. */
function portrait() {
  const rect = svg('rect', { class: 'board' });
  const mark = h('span', { class: 'line-mark' });
  const picture = svg('svg', { viewBox: `-1 -1 ${BOX + 2} ${BOX + 2}`, width: BOX + 2, height: BOX + 2 }, rect);
  const element = h('span', { class: 'portrait', 'aria-hidden': 'true' }, mark, picture);
  return {
    element,
    /** @param {any} row @param {any} props */
    update(row, props) {
      const [width, height] = mm(row, props.order.units).map((side) => side * props.scale);
      set(rect, { x: (BOX - width) / 2, y: (BOX - height) / 2, width, height });
      say(mark, row.mark ?? '');
    },
  };
}
