/** Styles that the first screens do without; screens-later.ts brings them with the first screen that is fetched. */
import './styles/fields.css';
import './styles/pages.css';
import './styles/print.css';
