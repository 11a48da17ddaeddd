// @ts-check
/** Lines written as on paper, read back before they go on the ticket. */

import { readLines } from '../model/read-lines.js';
import { withOwn } from '../model/measures.js';
import { t } from '../texts/index.js';
import { h, refill } from './dom.js';

/**
 * @typedef {{ order: import('../model/order.js').Order, named: (name: string) => any, way: import('./rack.js').Way, add: (lines: Record<string, any>[]) => void }} WriteProps
 * @param {Element} element @param {WriteProps} props
 */
export function mountWrite(element, props) {
  const text = h('textarea', { id: 'write', rows: 1, placeholder: t.make.writeExample, 'aria-describedby': 'write-hint', oninput: show, onkeydown: enter });
  const back = h('ul', { class: 'read-back', 'aria-live': 'polite' });
  const put = h('button', { type: 'button', onclick: take }, t.make.putOn);
  element.append(
    h('label', { for: 'write', class: 'name' }, t.make.write),
    h('div', { class: 'write' }, text, put),
    h('p', { class: 'hint', id: 'write-hint' }, t.make.writeHint),
    back,
  );

  function readings() {
    return readLines(text.value, props.order.units, props.named);
  }

  function show() {
    const read = readings();
    text.rows = Math.min(8, text.value.split('\n').length);
    refill(back, ...read.map(({ text: written, line }) => (line
      ? h('li', {}, said(line, props))
      : h('li', { class: 'unread' }, t.make.unread(written)))));
    put.disabled = !read.some(({ line }) => line);
  }

  /** Takes what could be read and leaves the rest to be mended. */
  function take() {
    const read = readings();
    props.add(read.flatMap(({ line }) => (line ? [{ surface: props.way.surface, ...line, ...(line.shopPrice ? { shopPrice: t.typed(line.shopPrice) } : {}) }] : [])));
    text.value = read.filter(({ line }) => !line).map((one) => one.text).join('\n');
    show();
    text.focus();
  }

  /** @param {KeyboardEvent} event */
  function enter(event) {
    if (event.key !== 'Enter' || event.shiftKey || event.isComposing) return;
    event.preventDefault();
    take();
  }

  show();
  return { update: (/** @type {WriteProps} */ next) => { props = next; } };
}

/** "12 of 8 × 10 in, cloth glued on, linen". @param {Record<string, any>} line @param {WriteProps} props */
function said(line, props) {
  const surface = t.surfaces[/** @type {'cloth'} */ (line.surface ?? props.way.surface)];
  const rest = [surface, line.cloth, line.board, line.thickness && `${withOwn(line.thickness, props.order.units)} ${t.goods.thick}`, line.shopPrice && `${t.make.shop} ${t.typed(line.shopPrice)}`].filter(Boolean).join(', ');
  return `${line.quantity} ${t.make.of} ${t.figures(line.width)} × ${withOwn(line.height, props.order.units)}, ${rest}`;
}
