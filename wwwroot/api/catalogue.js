// @ts-check
/** What the service knows by itself: standard formats and demo orders. */

import { early } from './early.js';
import { Refused, reached } from './http.js';

/** @param {string} address */
async function ask(address) {
  const response = await reached(early(address));
  if (!response.ok) throw new Refused({ title: response.statusText, status: response.status });
  return response.json();
}

/** @returns {Promise<any[]>} */
export const formats = () => ask('/api/formats');

/** @returns {Promise<string[]>} */
export const demoNames = () => ask('/api/demo');

/** @param {string} name @returns {Promise<any>} */
export const demo = (name) => ask(`/api/demo/${encodeURIComponent(name)}`);
