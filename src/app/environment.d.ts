/** Set by the build; see vite.config.ts. */
declare const __APP_VERSION__: string;
