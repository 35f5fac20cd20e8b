import { render } from 'preact';
import { startPwa } from './pwa';
import './styles/font.css';

const root = document.getElementById('app');
if (root)
  render(
    <main>
      <h1>Halyard</h1>
    </main>,
    root,
  );
void startPwa();
