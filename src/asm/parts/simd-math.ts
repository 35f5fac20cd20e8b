/**
 * Arithmetic on two doubles at a time. Sine, cosine, logarithm and exponential are polynomials (Cody & Waite reduction with the coefficients of
 * fdlibm; ln m = 2 artanh((m − 1)/(m + 1))), good to 1e-13. The relaxed build fuses products and sums.
 */
// @ts-ignore: decorator
@inline
export function madd(a: v128, b: v128, c: v128): v128 {
  if (ASC_FEATURE_RELAXED_SIMD) return f64x2.relaxed_madd(a, b, c);
  return f64x2.add(c, f64x2.mul(a, b));
}
// @ts-ignore: decorator
@inline
export function nmadd(a: v128, b: v128, c: v128): v128 {
  if (ASC_FEATURE_RELAXED_SIMD) return f64x2.relaxed_nmadd(a, b, c);
  return f64x2.sub(c, f64x2.mul(a, b));
}
// @ts-ignore: decorator
@inline
export function madd4(a: v128, b: v128, c: v128): v128 {
  if (ASC_FEATURE_RELAXED_SIMD) return f32x4.relaxed_madd(a, b, c);
  return f32x4.add(c, f32x4.mul(a, b));
}

export let cosine: v128 = f64x2.splat(0);
export let sine: v128 = f64x2.splat(0);

/** cos x and sin x into the two globals, for 0 ≤ x < 1e6. */
// @ts-ignore: decorator
@inline
export function cosSin(x: v128): void {
  const magic = f64x2.splat(6755399441055744.0); // 1.5 · 2^52: the low bits become the quadrant
  const t = madd(x, f64x2.splat(0.6366197723675814), magic);
  const q = f64x2.sub(t, magic);
  let y = f64x2.sub(x, f64x2.mul(q, f64x2.splat(1.5707963267341256)));
  y = f64x2.sub(y, f64x2.mul(q, f64x2.splat(6.077100506303966e-11)));
  y = f64x2.sub(y, f64x2.mul(q, f64x2.splat(2.0222662487959506e-21)));
  const z = f64x2.mul(y, y);
  let s = madd(z, f64x2.splat(1.58969099521155010221e-10), f64x2.splat(-2.50507602534068634195e-8));
  s = madd(z, s, f64x2.splat(2.75573137070700676789e-6));
  s = madd(z, s, f64x2.splat(-1.98412698298579493134e-4));
  s = madd(z, s, f64x2.splat(8.33333333332248946124e-3));
  s = madd(z, s, f64x2.splat(-1.66666666666666324348e-1));
  s = madd(f64x2.mul(z, y), s, y);
  let c = madd(z, f64x2.splat(-1.13596475577881948265e-11), f64x2.splat(2.08757232129817482790e-9));
  c = madd(z, c, f64x2.splat(-2.75573143513906633035e-7));
  c = madd(z, c, f64x2.splat(2.48015872894767294178e-5));
  c = madd(z, c, f64x2.splat(-1.38888888888741095749e-3));
  c = madd(z, c, f64x2.splat(4.16666666666666019037e-2));
  c = madd(f64x2.mul(z, z), c, madd(z, f64x2.splat(-0.5), f64x2.splat(1)));
  const one = i64x2.splat(1);
  const two = i64x2.splat(2);
  const swap = i64x2.neg(v128.and(t, one));
  const sinSign = i64x2.shl(v128.and(t, two), 62);
  const cosSign = i64x2.shl(v128.and(i64x2.add(t, one), two), 62);
  sine = v128.xor(v128.bitselect(c, s, swap), sinSign);
  cosine = v128.xor(v128.bitselect(s, c, swap), cosSign);
}

/** Natural logarithm of positive normal numbers. */
// @ts-ignore: decorator
@inline
export function ln(x: v128): v128 {
  // m in [√½, √2): bits shifted so that the exponent turns over at √½.
  const shifted = i64x2.sub(x, i64x2.splat(0x3fe6a09e667f3bcd));
  const exponentBits = v128.and(shifted, i64x2.splat(0xfff0000000000000));
  const m = i64x2.sub(x, exponentBits);
  // Exponent as a number: arithmetic shift, then the bits of 1.5 · 2^52 + e.
  const e = f64x2.sub(
    i64x2.add(i64x2.shr_s(shifted, 52), i64x2.splat(0x4338000000000000)),
    f64x2.splat(6755399441055744.0),
  );
  const s = f64x2.div(f64x2.sub(m, f64x2.splat(1)), f64x2.add(m, f64x2.splat(1)));
  const z = f64x2.mul(s, s);
  let p = madd(z, f64x2.splat(1.0 / 13), f64x2.splat(1.0 / 11));
  p = madd(z, p, f64x2.splat(1.0 / 9));
  p = madd(z, p, f64x2.splat(1.0 / 7));
  p = madd(z, p, f64x2.splat(1.0 / 5));
  p = madd(z, p, f64x2.splat(1.0 / 3));
  p = madd(z, p, f64x2.splat(1));
  const two = f64x2.add(s, s);
  return madd(e, f64x2.splat(0.6931471805599453), f64x2.mul(two, p));
}

/** e^x for −700 ≤ x ≤ 0. */
// @ts-ignore: decorator
@inline
export function exp(x: v128): v128 {
  const magic = f64x2.splat(6755399441055744.0);
  const t = madd(x, f64x2.splat(1.4426950408889634), magic); // low bits: the power of two
  const n = f64x2.sub(t, magic);
  let r = f64x2.sub(x, f64x2.mul(n, f64x2.splat(0.6931471803691238)));
  r = f64x2.sub(r, f64x2.mul(n, f64x2.splat(1.9082149292705877e-10)));
  let p = madd(r, f64x2.splat(1.0 / 39916800), f64x2.splat(1.0 / 3628800));
  p = madd(r, p, f64x2.splat(1.0 / 362880));
  p = madd(r, p, f64x2.splat(1.0 / 40320));
  p = madd(r, p, f64x2.splat(1.0 / 5040));
  p = madd(r, p, f64x2.splat(1.0 / 720));
  p = madd(r, p, f64x2.splat(1.0 / 120));
  p = madd(r, p, f64x2.splat(1.0 / 24));
  p = madd(r, p, f64x2.splat(1.0 / 6));
  p = madd(r, p, f64x2.splat(0.5));
  p = madd(r, p, f64x2.splat(1));
  p = madd(r, p, f64x2.splat(1));
  return i64x2.add(p, i64x2.shl(t, 52));
}
