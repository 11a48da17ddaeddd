// @ts-check
/**
 * A drawing of the plan. Its text comes from our own service; it is read as XML, looked through for anything that
 * could act, and put into the page, so that a cut can be lit and colours follow the page's.
 */

import * as plans from '../api/plans.js';
import { t } from '../texts/index.js';
import { h, refill } from './dom.js';

const ALLOWED = new Set(['svg', 'g', 'rect', 'path', 'text', 'title', 'desc', 'circle', 'line', 'polyline']);

/** @type {Map<string, Promise<string>>} */
const loaded = new Map();

/** @param {string} address */
function load(address) {
  const text = loaded.get(address) ?? plans.drawing(address);
  loaded.set(address, text);
  text.catch(() => loaded.delete(address));
  return text;
}

/** What the painter called things is not to be put into another language: the marks, and the batch where that is no size. @param {Element} root */
function ownWords(root) {
  const marks = [...root.querySelectorAll('[data-mark]')].map((one) => one.getAttribute('data-mark') ?? '');
  const batch = /^(.*): (?:Sheet|Cloth) \d+ of \d+$/.exec(root.querySelector('title')?.textContent ?? '')?.[1] ?? '';
  return new Set(/^[\d\s./×]*$/.test(batch) ? marks : [batch, ...marks]);
}

/** @param {string} text @returns {Element | null} */
export function parse(text) {
  const root = new DOMParser().parseFromString(text, 'image/svg+xml').documentElement;
  const safe = [root, ...root.querySelectorAll('*')].every((element) => ALLOWED.has(element.localName)
    && [...element.attributes].every((attribute) => !attribute.name.startsWith('on') && attribute.localName !== 'href'));
  if (!safe) return null;
  const own = ownWords(root);
  root.querySelectorAll('text, title, desc').forEach((words) => {
    const written = words.textContent ?? '';
    if (words.childElementCount === 0 && !own.has(written)) words.textContent = t.drawn(written);
  });
  return document.importNode(root, true);
}

/** Letters smaller than this, in CSS pixels, are guessed at and not read. */
const LEAST_LETTER = 8;

/** On a phone a drawing is as wide as its smallest letters ask, and moved along. */
export const narrow = matchMedia('(max-width: 48rem)');

/** How wide a drawing has to be for its smallest letters to be read. @param {Element} drawing */
function readable(drawing) {
  const sizes = [...drawing.querySelectorAll('text[font-size]')].map((text) => Number(text.getAttribute('font-size')));
  const [, , width] = (drawing.getAttribute('viewBox') ?? '').split(' ').map(Number);
  if (sizes.length > 0 && width > 0) /** @type {any} */ (drawing).style.setProperty('--readable', `${Math.ceil((LEAST_LETTER * width) / Math.min(...sizes))}px`);
}

/** Drawings that wait to be made: one a task, so that no frame has to wait for several. @type {(() => void)[]} */
const waiting = [];
const idle = window.requestIdleCallback ?? ((/** @type {() => void} */ work) => setTimeout(work));

/** So many parts of drawings are laid out before they come into sight. */
const MOST_AHEAD = 30_000;

/**
 * Lays a drawing out while nothing else happens: a thousand parts that are laid out just as they are scrolled into sight take a
 * frame of 50 to 90 ms. Where there are very many, the rest waits until it is looked at.
 * @param {HTMLElement} element
 */
function layOutAhead(element) {
  if (document.querySelectorAll('.laid svg *').length > MOST_AHEAD) return;
  element.classList.add('laid');
  element.getBoundingClientRect();
}

/** @param {() => void} work */
function inTurn(work) {
  waiting.push(work);
  if (waiting.length === 1) idle(next, { timeout: 500 });
}

function next() {
  waiting.shift()?.();
  if (waiting.length > 0) idle(next, { timeout: 500 });
}

// Paper does not wait.
addEventListener('beforeprint', () => waiting.splice(0).forEach((work) => work()));

/**
 * A figure that holds a drawing and opens it large.
 * @param {string} address @param {string} name @param {string | undefined} text the drawing, where the plan brought it along
 * @param {boolean} [scrolls] whether a phone shows a part of it at a time: then the keyboard has to reach it
 */
export function figure(address, name, text, scrolls = false) {
  const place = h('div', { class: 'drawing-place', 'aria-busy': 'true', ...(scrolls ? { tabindex: 0, role: 'group', 'aria-label': name } : {}) }, text === undefined && h('p', { class: 'hint' }, t.saw.drawn));
  const large = h('button', { type: 'button', class: 'quiet', onclick: () => enlarge(place, name), 'aria-label': `${t.saw.large}: ${name}` }, t.saw.large);
  const element = h('figure', { class: 'figure' }, place, h('figcaption', {}, name, ' ', large));
  const fill = async () => {
    try {
      const drawn = text ?? await load(address);
      inTurn(() => show(parse(drawn)));
    } catch (fault) {
      if (!(fault instanceof plans.Refused)) throw fault;
      show(null);
    }
  };
  const show = (/** @type {Element | null} */ drawing) => {
    if (drawing) readable(drawing);
    if (drawing) refill(place, drawing);
    else refill(place, h('p', { class: 'hint' }, t.wrong.drawing, ' '), h('button', { type: 'button', onclick: fill }, t.wrong.retry));
    place.removeAttribute('aria-busy');
    if (!drawing) return;
    element.dispatchEvent(new CustomEvent('drawn', { bubbles: true }));
    inTurn(() => layOutAhead(element));
  };
  void fill();
  return element;
}

/** @param {HTMLElement} place @param {string} name */
function enlarge(place, name) {
  const drawing = place.querySelector('svg')?.cloneNode(true);
  if (!drawing) return;
  const close = h('button', { type: 'button', onclick: () => dialog.close() }, t.saw.close);
  const zoom = h('input', { type: 'range', min: 1, max: 4, step: 0.25, value: 1, 'aria-label': t.saw.zoom, oninput: () => sheet.style.setProperty('--zoom', zoom.value) });
  const sheet = h('div', { class: 'large-sheet', tabindex: 0 }, drawing);
  const dialog = h('dialog', { class: 'large', 'aria-label': name, onclose: () => dialog.remove() }, h('div', { class: 'large-bar' }, h('strong', {}, name), zoom, close), sheet);
  document.body.append(dialog);
  dialog.showModal();
}
