// @ts-check
/** What the service keeps: what is on the shelf, what can be bought, plans made before, and what was cut. */

import { JSON_TYPE, Refused, ask } from './http.js';

/** So many plans are listed. */
export const MOST_PLANS = 40;

const NOT_CUT = 409;
const UNKNOWN = 404;

/** @param {string} address */
const json = async (address) => (await ask(address)).json();

/** @param {string} address @param {string} method @param {any} [body] @param {Record<string, string>} [headers] */
const send = async (address, method, body, headers = {}) =>
  (await ask(address, { method, headers: { ...JSON_TYPE, ...headers }, ...(body === undefined ? {} : { body: JSON.stringify(body) }) })).json();

/** What is in the studio, each heap under its pencil id. @returns {Promise<any[]>} */
export const stock = async () => (await json('/api/stock')).stock;

/** How many of a heap there really are. @param {any} heap @param {number} count */
export const correct = (heap, count) => send(`/api/stock/${heap.id}`, 'PATCH', { count }, { 'If-Match': `"${heap.version}"` });

/** What can be bought, by sort. @returns {Promise<Record<string, any[]>>} */
export const supplies = () => json('/api/supplies');

/** Saves a good as it stands on a ticket, over the one of that id. @param {string} sort @param {any} good */
export const supply = (sort, good) => send(`/api/supplies/${sort}/${encodeURIComponent(good.id)}`, 'PUT', good, { 'If-Match': '*' }).catch(async (fault) => {
  if (!(fault instanceof Refused) || fault.problem.status !== 412) throw fault;
  return send(`/api/supplies/${sort}/${encodeURIComponent(good.id)}`, 'PUT', good);
});

/** Puts a heap on the shelf. @param {any} heap */
export const add = (heap) => send('/api/stock', 'POST', heap);

/** The newest plans. @param {number} take @returns {Promise<any[]>} */
export const plans = async (take) => (await json(`/api/plans?take=${take}`)).plans;

/** The order a plan was made from. @param {string} id @returns {Promise<any>} */
export const orderOf = (id) => json(`/api/plans/${id}/order`);

/** The mounting of what a plan left for later. @param {string} id */
export const benchLater = (id) => json(`/api/plans/${id}/bench?mount=later`);

/** What was booked when a plan was cut; null where it is not. The list of plans says so of most, which spares a refusal. @param {string} id */
export async function cutOf(id) {
  const known = (await plans(MOST_PLANS)).find((one) => one.id === id);
  if (known && !known.isCut) return null;
  return json(`/api/plans/${id}/cut`).catch((fault) => {
    if (fault instanceof Refused && [NOT_CUT, UNKNOWN].includes(fault.problem.status ?? 0)) return null;
    throw fault;
  });
}

/** Books a plan as made. @param {string} id @param {any[]} spoiled panels by mark and count @param {any[]} spoiledSheets sheets by number and count */
export const cut = (id, spoiled, spoiledSheets) => send(`/api/plans/${id}/cut`, 'POST', { spoiled, spoiledSheets });

/** Takes the booking back. @param {string} id */
export const undoCut = (id) => send(`/api/plans/${id}/cut/undo`, 'POST');
