/** Why answers are not on the phone, and what to do about it. */
export const storageFailures = {
  full: 'The phone has no room left. Remove something else from the phone, then try again. Until then your answers stay on this screen only.',
  'not-allowed':
    'This browser does not let pages keep anything: perhaps a private window, or site data is switched off. Your answers last until this page is closed. Keep them as a file, or open Halyard in an ordinary window.',
  'taken-over':
    'A newer version of Halyard is open in another tab and keeps the plans now. Load this page anew to go on with it.',
  'record-newer': 'A newer version of Halyard has written this. It is left as it is. Update Halyard to change it.',
  'record-broken': 'What is kept here cannot be read. It is left as it is; take it out as a file on the Plans screen.',
  other: 'The browser could not write it down. Try again; if it stays so, keep your plans as a file.',
} as const;
