/** What stands at the foot of each page that is printed of a plan, before the page's number: styles/print.css puts it there. */
import { useEffect } from 'preact/hooks';
import { jobs } from '../../words/en/job-screens';
import { day, type Say, useSay } from '../say';

/** As a string of CSS. */
const footText = (name: string, say: Say): string =>
  JSON.stringify(say(jobs.foot, { name: name.replace(/\s+/g, ' '), date: day(Date.now()) }));

export function usePaperFoot(planName: string): void {
  const say = useSay();
  useEffect(() => {
    const { style } = document.documentElement;
    const put = (): void => style.setProperty('--paper-foot', footText(planName, say));
    put();
    addEventListener('beforeprint', put); // a page may stay open over midnight
    return () => {
      removeEventListener('beforeprint', put);
      style.removeProperty('--paper-foot');
    };
  }, [planName, say]);
}
