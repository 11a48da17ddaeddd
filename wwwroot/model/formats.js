// @ts-check
/**
 * The formats painters buy frames in, as the service lists them (`GET /api/formats`), ordered for the rack.
 *
 * @typedef {{ name: string, width: number, height: number, face?: string }} Format
 * @typedef {{ id: string, name: string, unit: import('./measures.js').Unit, mark: string, source: string, faces: string[], formats: Format[] }} Series
 */

const FACED = /^\d+([FPMS])$/;

/** @param {any[]} listed the service's answer @returns {Series[]} */
export function seriesOf(listed) {
  return listed.map((one) => {
    const formats = one.formats.map((/** @type {Format} */ f) => ({ ...f, face: FACED.exec(f.name)?.[1] }));
    const faces = [...new Set(formats.map((/** @type {Format} */ f) => f.face).filter(Boolean))];
    return { id: one.name.toLowerCase(), name: one.name, unit: one.units, mark: one.mark, source: one.source, faces, formats };
  });
}

/**
 * A format by the name one writes ("6F", "a4", "SM"); the series on show is asked first.
 * @param {Series[]} all @param {string} name @param {string} shown
 * @returns {{ format: Format, unit: import('./measures.js').Unit } | null}
 */
export function formatByName(all, name, shown) {
  const order = [...all].sort((a, b) => Number(b.id === shown) - Number(a.id === shown));
  for (const series of order) {
    const format = series.formats.find((f) => f.name.toLowerCase() === name.toLowerCase());
    if (format) return { format, unit: series.unit };
  }
  return null;
}
