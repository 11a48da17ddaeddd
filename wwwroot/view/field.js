// @ts-check
/**
 * One field of the order: a blank on the ticket with its unit and, where something is wrong with it, the words.
 *
 * @typedef {{ path: string, label: string, unit?: string, hint?: string, when?: (order: any) => boolean, size?: number, kind?: 'text' | 'number' | 'choice' | 'flag' | 'date' | 'time',
 *   options?: [string, string][] | ((order: any) => [string, string][]), list?: string, placeholder?: string, fallback?: boolean | string, spoken?: string }} FieldShape
 * @typedef {{ order: any, problem: import('../api/plans.js').Problem | null, change: (path: string, value: any) => void }} FieldProps
 */

import { hasUnit, SIGN } from '../model/measures.js';
import { at } from '../model/order.js';
import { t } from '../texts/index.js';
import { h, say, set } from './dom.js';

let next = 0;

/** @type {Record<string, string>} */
const TYPES = { flag: 'checkbox', date: 'date', time: 'time' };

/** @param {[string, string]} option */
const choice = ([value, text]) => h('option', { value }, text);

/**
 * @param {(index: number) => FieldShape} shape by the index of the row it stands in
 * @returns {{ element: any, update: (props: FieldProps, index?: number) => void }}
 */
export function field(shape) {
  const id = `f${next++}`;
  let { path, kind = 'text', label, size = 6, options, list, placeholder, fallback = false } = shape(0);
  /** @type {FieldProps['change']} */
  let change = () => {};
  const told = () => change(path, kind === 'flag' ? input.checked : input.value);
  const input = kind === 'choice'
    ? h('select', { id, onchange: told }, ...(Array.isArray(options) ? options : []).map(choice))
    : h('input', { id, type: TYPES[kind] ?? 'text', size, list, placeholder, oninput: told, autocomplete: 'off', inputmode: kind === 'number' ? 'decimal' : null });
  input.style.setProperty('--size', String(size));
  const unit = h('span', { class: 'unit' });
  const hint = h('span', { class: 'hint', id: `${id}h` });
  const error = h('span', { class: 'error', id: `${id}e` });
  const name = h('label', { for: id, class: kind === 'flag' ? '' : 'name' }, label);
  const element = h('span', { class: `field ${kind}` }, ...(kind === 'flag' ? [input, name] : [name, input]), unit, hint, error);

  return {
    element,
    update(props, index = 0) {
      const now = shape(index);
      ({ path } = now);
      ({ change } = props);
      say(name, now.label);
      const value = at(props.order, path);
      element.hidden = now.when ? !now.when(props.order) : false;
      say(unit, unitOf(now.unit, value, props.order));
      say(hint, now.hint ?? '');
      const words = faults(props.problem, path).map(t.fault).join(' ');
      say(error, words);
      set(input, {
        'data-path': path,
        'aria-label': now.spoken,
        'aria-invalid': words === '' ? null : 'true',
        'aria-describedby': [words && `${id}e`, now.hint && `${id}h`].filter(Boolean).join(' ') || null,
      });
      if (typeof options === 'function') offer(options(props.order));
      show(value);
    },
  };

  /** @param {[string, string][]} now */
  function offer(now) {
    const key = JSON.stringify(now);
    if (input.getAttribute('data-offered') === key) return;
    set(input, { 'data-offered': key });
    input.replaceChildren(...now.map(choice));
  }

  /** @param {any} value */
  function show(value) {
    if (kind === 'flag') input.checked = value ?? fallback;
    else if (input.value !== String(value ?? '')) input.value = String(value ?? '');
    // What is left out, or stands there by its name, is what is usual: a choice never stands blank.
    if (kind === 'choice' && input.selectedIndex < 0) input.value = fallback || '';
  }
}

/** The unit behind a blank; none where the text brings its own. @param {string | undefined} unit @param {any} value @param {any} order */
function unitOf(unit, value, order) {
  if (unit === 'length') return hasUnit(value) ? '' : SIGN[/** @type {'inch'} */ (order.units)];
  if (unit === 'area') return t.area[/** @type {'inch'} */ (order.units)];
  if (unit === 'volume') return t.volume[/** @type {'inch'} */ (order.units)];
  if (unit === 'pressure') return order.units === 'inch' ? 'psi' : 'kPa';
  if (unit === 'weight') return /[a-z]/i.test(String(value ?? '')) ? '' : order.units === 'inch' ? 'lb' : 'g';
  return unit === 'money' ? order.currency : unit ?? '';
}

/** What is wrong with a field; a pair such as `smallestKept` may be named as a whole. @param {FieldProps['problem']} problem @param {string} path @returns {string[]} */
function faults(problem, path) {
  return problem?.errors?.[path] ?? problem?.errors?.[path.replace(/\[[0-3]\]$/, '')] ?? [];
}

/**
 * Several fields at once.
 * @param {((index: number) => FieldShape)[]} shapes
 */
export function fields(shapes) {
  const all = shapes.map(field);
  return {
    elements: all.map((one) => one.element),
    /** @param {FieldProps} props @param {number} [index] */
    update: (props, index) => all.forEach((one) => one.update(props, index)),
  };
}
