// @ts-check
/** The pencil's first question: how many of one size come out of one sheet. */

import * as plans from '../api/plans.js';
import { toWire } from '../model/order.js';
import { nameOf } from '../model/plan.js';
import { SIGN } from '../model/measures.js';
import { t } from '../texts/index.js';
import { h, refill, say } from './dom.js';
import { parse } from './drawing.js';

/**
 * @typedef {{ order: import('../model/order.js').Order, numbers: import('../model/numbers.js').Numbers }} YieldProps
 * @param {Element} element @param {YieldProps} props
 */
export function mountYields(element, props) {
  const width = h('input', { type: 'text', id: 'yield-width', size: 6, value: '8', autocomplete: 'off' });
  const height = h('input', { type: 'text', id: 'yield-height', size: 6, value: '10', autocomplete: 'off' });
  const unit = h('span', { class: 'unit' });
  const board = h('select', { id: 'yield-board' });
  const answer = h('div', { class: 'yield-answer', 'aria-live': 'polite' });
  const form = h('form', { class: 'yield', onsubmit: ask },
    h('h3', {}, t.yields.head),
    h('p', { class: 'fields' },
      named('yield-width', t.make.width, width), named('yield-height', t.make.height, height), unit, named('yield-board', t.yields.ask, board),
      h('button', { type: 'submit' }, t.yields.go)),
    answer);
  element.append(form);
  let names = '';

  /** @param {Event} event */
  async function ask(event) {
    event.preventDefault();
    form.setAttribute('aria-busy', 'true');
    try {
      show(await plans.yieldOf(question(props.order, width.value, height.value, board.value)));
    } catch (fault) {
      if (!(fault instanceof plans.Refused)) throw fault;
      refill(answer, h('p', { class: 'error' }, inWords(fault.problem)));
    } finally {
      form.removeAttribute('aria-busy');
    }
  }

  /** @param {any} found */
  function show(found) {
    refill(answer, ...found.boards.map((/** @type {any} */ one) => {
      const drawing = one.sheet?.svg ? parse(one.sheet.svg) : null;
      return h('div', { class: 'yield-board' },
        found.boards.length > 1 && h('h4', {}, nameOf(props.order, one.board)),
        h('p', { class: 'yield-count' }, h('strong', {}, String(one.count)), ` ${t.yields.comeOut}`),
        h('p', {}, t.yields.area(props.numbers.count(one.byArea))),
        drawing && h('div', { class: 'drawing-place' }, drawing));
    }));
  }

  const update = (/** @type {YieldProps} */ next) => {
    props = next;
    say(unit, SIGN[props.order.units]);
    const now = props.order.boards.map((one) => one.name || one.id).join('|');
    if (now === names && board.options.length > 0) return;
    names = now;
    const chosen = board.value;
    board.replaceChildren(...props.order.boards.map((one, i) => h('option', { value: i }, one.name || one.id)), props.order.boards.length > 1 && h('option', { value: '' }, t.yields.all) || '');
    if (chosen !== '') board.value = chosen;
    element.toggleAttribute('hidden', props.order.boards.length === 0);
  };
  update(props);
  return { update };
}

/** @param {string} id @param {string} label @param {Element} input */
const named = (id, label, input) => h('span', { class: 'field' }, h('label', { for: id, class: 'name' }, label), input);

/** @param {import('../model/order.js').Order} order @param {string} width @param {string} height @param {string} index of a board; empty: all */
function question(order, width, height, index) {
  // The boards to choose from are the ticket's own, wherever the batch takes its from.
  const { units, currency, saw, boards } = toWire(/** @type {any} */ ({ ...order, fromShelf: false }));
  return { units, currency, saw, panel: toWire(/** @type {any} */ ({ width, height })), boards: index === '' ? boards : [boards[Number(index)]] };
}

/** @param {import('../api/plans.js').Problem} problem */
function inWords(problem) {
  if (problem.title === 'unreachable') return t.wrong.unreachable;
  return Object.values(problem.errors ?? {}).flat().map(t.fault).join(' ') || t.problem(problem.type) || t.fault(problem.detail ?? problem.title);
}
