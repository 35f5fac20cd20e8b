/**
 * The page's policy lets a script be named only by a trusted type (require-trusted-types-for 'script'). Two policies
 * exist: `app-sw` for the service worker and `app-worker` for the solver's worker. Each lets through addresses of this
 * app alone. Where the browser has no trusted types the address is used as it is.
 */
type PolicyName = 'app-sw' | 'app-worker';

interface TrustedTypes {
  createPolicy(
    name: string,
    rules: { createScriptURL(url: string): string },
  ): { createScriptURL(url: string): unknown };
}

const policies = new Map<PolicyName, { createScriptURL(url: string): unknown }>();

function ownAddress(url: string): string {
  if (new URL(url, location.href).origin !== location.origin) throw new TypeError(`not an address of this app: ${url}`);
  return url;
}

/** The address of a worker script as the browser wants it. Typed as string, because the DOM types know no other. */
export function trustedScriptUrl(name: PolicyName, url: string): string {
  const factory = (globalThis as { trustedTypes?: TrustedTypes }).trustedTypes;
  if (!factory) return ownAddress(url);
  const policy = policies.get(name) ?? factory.createPolicy(name, { createScriptURL: ownAddress });
  policies.set(name, policy);
  return policy.createScriptURL(url) as string;
}
