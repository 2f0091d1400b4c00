import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import './design/design.css';
import { runErrandsWith } from './store/errands.ts';
import { loadExpressions } from './store/expressions.ts';
import { keepRig } from './store/keep.ts';
import { storageOf } from './store/storageOf.ts';
import { runInWorkers } from './workers/runInWorkers.ts';
import { App } from './worksheets/App.tsx';

const writeNow = keepRig(storageOf(window));
window.addEventListener('pagehide', writeNow);
document.addEventListener('visibilitychange', () => {
  if (document.visibilityState === 'hidden') writeNow();
});

runErrandsWith(runInWorkers);

const root = document.getElementById('root');
if (root) {
  createRoot(root).render(
    <StrictMode>
      <App />
    </StrictMode>,
  );
}

// Sums such as 2*47p need more of the program: fetched when the page is at rest.
const atRest = window.requestIdleCallback ?? ((run: () => void) => setTimeout(run, 500));
atRest(() => void loadExpressions());
