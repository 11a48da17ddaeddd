// @ts-check
/** The ticket's head and its places: where each part of the page stands. */

import { reader } from '../model/numbers.js';
import { t, LANGUAGES } from '../texts/index.js';
import { h, say, set } from './dom.js';
import { field } from './field.js';

/**
 * @typedef {import('./field.js').FieldProps & { planned: string | null, canUndo: boolean, undo: () => void, fresh: () => void, demos: string[], openDemo: (name: string) => void, earlier: { title: string, saved: string }[], openEarlier: (index: number) => void, plans: any[], openPlan: (id: string) => void,
 *   setUnits: (unit: any) => void, decimals: boolean, setDecimals: (on: boolean) => void, language: string, setLanguage: (code: string) => void, kept: boolean }} HeadProps
 * @param {Element} element @param {HeadProps} props
 */
export function mountHead(element, props) {
  const title = field(() => ({ path: 'title', label: t.page.batch, size: 34, placeholder: t.page.batchHint }));
  // A blank shows as much as it is wide; paper has the whole title, and that of the plan it bears.
  const printed = h('span', { class: 'printed-title' });
  const units = select(t.page.units, Object.entries(t.units), (value) => props.setUnits(value));
  const currency = field(() => ({ path: 'currency', label: t.page.currency, size: 4 }));
  const inches = select(t.page.inchesAs, [['', t.page.fractions], ['decimals', t.page.decimals]], (value) => props.setDecimals(value !== ''));
  const language = select(t.page.language, LANGUAGES, (value) => props.setLanguage(value));
  const undo = h('button', { type: 'button', class: 'quiet', onclick: () => props.undo() }, t.page.undo);
  const fresh = h('button', { type: 'button', class: 'quiet', onclick: () => props.fresh() }, t.page.fresh);
  const opened = mountOpen(() => props);
  const lost = h('p', { class: 'hint', role: 'status' });
  element.append(
    h('a', { href: '#act', class: 'skip' }, t.page.skip),
    h('p', { class: 'kind' }, h('strong', {}, t.page.title), `${t.colon}${t.page.tagline}`),
    h('h1', {}, title.element, printed),
    h('div', { class: 'head-fields' }, units.element, currency.element, inches.element, language.element, opened.element, h('span', { class: 'head-tools' }, undo, fresh)),
    lost,
  );
  const update = (/** @type {HeadProps} */ next) => {
    props = next;
    title.update(props);
    say(printed, props.planned ?? props.order.title ?? '');
    currency.update(props);
    units.input.value = props.order.units;
    inches.input.value = props.decimals ? 'decimals' : '';
    inches.element.hidden = props.order.units !== 'inch';
    language.input.value = props.language;
    set(undo, { disabled: !props.canUndo });
    opened.update();
    say(lost, props.kept ? '' : t.page.notKept);
  };
  update(props);
  return { update };
}

/** Another ticket: one left before, or an example. @param {() => HeadProps} now */
function mountOpen(now) {
  const earlier = h('optgroup', { label: t.page.earlier });
  const examples = h('optgroup', { label: t.page.examples }, ...now().demos.map((name) => h('option', { value: `demo ${name}` }, spoken(name))));
  const kept = h('optgroup', { label: t.page.plans });
  const input = h('select', { id: 'open', onchange: choose }, h('option', { value: '' }, '…'), earlier, kept, examples);
  let shown = '';
  let listed = '';

  function choose() {
    const [sort, ...name] = input.value.split(' ');
    input.value = '';
    if (sort === 'demo') now().openDemo(name.join(' '));
    if (sort === 'earlier') now().openEarlier(Number(name[0]));
    if (sort === 'plan') now().openPlan(name[0]);
  }

  function updateKept() {
    const list = now().plans;
    const key = list.map((one) => one.id + one.isCut).join();
    kept.hidden = list.length === 0;
    if (key === listed) return;
    listed = key;
    kept.replaceChildren(...list.map((one) => h('option', { value: `plan ${one.id}` },
      `${one.title || t.page.unnamed}, ${new Date(one.createdAt).toLocaleDateString(reader())}${one.isCut ? `, ${t.page.isMade}` : ''}`)));
  }

  return {
    element: h('span', { class: 'field choice-field' }, h('label', { for: 'open', class: 'name' }, t.page.open), input),
    update() {
      updateKept();
      const list = now().earlier;
      const key = list.map((one) => one.saved).join();
      if (key === shown) return;
      shown = key;
      earlier.replaceChildren(...list.map((one, i) => h('option', { value: `earlier ${i}` }, `${one.title || t.page.unnamed}, ${new Date(one.saved).toLocaleDateString(reader())}`)));
      earlier.hidden = list.length === 0;
    },
  };
}

/** "tern-island" as a person says it. @param {string} name */
const spoken = (name) => name.split('-').map((word) => word[0].toUpperCase() + word.slice(1)).join(' ');

let next = 0;

/** @param {string} label @param {[string, string][]} options @param {(value: string) => void} choose */
function select(label, options, choose) {
  const id = `s${next++}`;
  const input = h('select', { id, onchange: () => choose(input.value) }, ...options.map(([value, text]) => h('option', { value }, text)));
  return { element: h('span', { class: 'field choice-field' }, h('label', { for: id, class: 'name' }, label), input), input };
}

/**
 * The places of the page, in the painter's order.
 * @param {Element} ticket
 */
export function layOut(ticket) {
  const place = (/** @type {string} */ name, /** @type {string} */ tag = 'div') => h(tag, { class: name });
  const places = {
    head: place('ticket-head', 'header'), write: place('write-place'), lines: place('lines-place'), wishes: place('wishes-place'), rack: place('rack-place'),
    shelf: place('shelf-place'), goods: place('goods-place'), work: place('work-place'), yields: place('yield-place', 'aside'), problem: place('problem-place'), proof: place('proof-place'), changes: place('changes-place'), days: place('days'),
  };
  const fold = (/** @type {string} */ name, /** @type {string} */ head, /** @type {Element[]} */ ...content) =>
    h('details', { class: `fold fold-${name}` }, h('summary', {}, h('h3', {}, head)), ...content);
  const order = h('section', { class: 'day day-order', id: 'order', 'aria-labelledby': 'order-head' },
    h('div', { class: 'day-head' }, h('h2', { id: 'order-head' }, t.make.head)),
    h('div', { class: 'day-work' }, places.lines, places.write, h('section', { class: 'rack', 'aria-labelledby': 'formats-head' }, h('h3', { id: 'formats-head' }, t.make.rack), places.rack), places.wishes));
  const supplies = h('section', { class: 'day day-supplies', 'aria-labelledby': 'goods-head' },
    h('div', { class: 'day-head' }, h('h2', { id: 'goods-head' }, t.goods.head)),
    h('div', { class: 'day-work' }, places.shelf, places.goods, fold('work', t.work.head, places.work), places.yields));
  ticket.append(places.head, order, supplies, places.problem, places.proof, places.days, datalist('board-kinds'), datalist('cloth-kinds'));
  return places;
}

/** @param {string} id */
const datalist = (id) => h('datalist', { id });

/** The kinds one has, to choose from while typing. @param {any} order */
export function offerKinds(order) {
  for (const [id, list] of [['board-kinds', order.boards], ['cloth-kinds', order.cloths]]) {
    const kinds = [...new Set(list.map((/** @type {any} */ one) => one.kind).filter(Boolean))].join('|');
    const element = document.getElementById(id);
    if (!element || element.getAttribute('data-kinds') === kinds) continue;
    set(element, { 'data-kinds': kinds });
    element.replaceChildren(...kinds.split('|').map((kind) => h('option', { value: kind })));
  }
}
