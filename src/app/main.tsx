import { render } from 'preact';
import { startPwa } from './pwa';
import './styles/font.css';

const root = document.getElementById('app');
if (root) render(<h1>Halyard</h1>, root);
void startPwa();
