/**
 * The ground table of a module, set by `setTable`: its grid (see solver/ground-table.ts) and where its values lie, eight
 * single-precision numbers to a grid point.
 */
export let table: usize = 0;
export let countU: i32 = 0;
export let countV: i32 = 0;
export let hMin: f64 = 0;
export let scaleRho: f64 = 0;
export let scaleH: f64 = 0;
export let perStepU: f64 = 0;
export let perStepV: f64 = 0;
export let kappaRe: f64 = 0;
export let kappaIm: f64 = 0;

export function setTable(
  at: usize,
  u: i32,
  v: i32,
  least: f64,
  inverseScaleRho: f64,
  inverseScaleH: f64,
  stepU: f64,
  stepV: f64,
  re: f64,
  im: f64,
): void {
  table = at;
  countU = u;
  countV = v;
  hMin = least;
  scaleRho = inverseScaleRho;
  scaleH = inverseScaleH;
  perStepU = 1 / stepU;
  perStepV = 1 / stepV;
  kappaRe = re;
  kappaIm = im;
}
