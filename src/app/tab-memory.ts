/** What is kept as long as the app's tab lives, over a page that is loaded anew. Where storage is shut nothing is kept, and that is no error. */

export function recalled(key: string): string | null {
  try {
    return sessionStorage.getItem(key);
  } catch {
    return null;
  }
}

/** Null forgets. */
export function remember(key: string, text: string | null): void {
  try {
    if (text === null) sessionStorage.removeItem(key);
    else sessionStorage.setItem(key, text);
  } catch {
    // as above
  }
}
