// What a browser may do with the app, sent by our own servers and, where a host sends no headers, by a <meta> in the page.
// 'wasm-unsafe-eval' is what WebAssembly needs; nothing else may be evaluated, and nothing may be fetched from elsewhere.

export const contentSecurityPolicy = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "manifest-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "require-trusted-types-for 'script'",
  'trusted-types app-sw app-worker',
].join('; ');

/** `frame-ancestors` counts only in a header, never in a <meta>. */
export const securityHeaders = {
  'Content-Security-Policy': `${contentSecurityPolicy}; frame-ancestors 'none'`,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Embedder-Policy': 'require-corp',
};
