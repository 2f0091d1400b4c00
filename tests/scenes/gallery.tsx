/// <reference types="vite/client" />
/* Every scene on one page, or one alone with ?scene=Name; for the eye, in development only. */
import type { ReactNode } from 'react';
import { createRoot } from 'react-dom/client';
import '../../src/design/design.css';

interface Scene {
  name: string;
  scene: () => ReactNode;
}

const scenes = Object.values(import.meta.glob<Scene>('./*.scene.tsx', { eager: true }));
const asked = new URLSearchParams(location.search);
const root = document.documentElement;
for (const key of ['scheme', 'view'] as const) {
  const value = asked.get(key);
  if (value !== null) root.dataset[key] = value;
}

const only = asked.get('scene');
const shown = scenes.filter((one) => (only === null ? one.name !== 'Sheet' : one.name === only));
const place = document.getElementById('root');
if (place) {
  createRoot(place).render(
    only === 'Sheet'
      ? shown.map((one) => <div key={one.name}>{one.scene()}</div>)
      : shown.map((one) => (
          <div className="page" key={one.name}>
            <section className={one.name === 'Drawing' ? undefined : 'sheet'}>
              <div className="section__main">{one.scene()}</div>
            </section>
          </div>
        )),
  );
}
