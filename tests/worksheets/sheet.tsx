import { render } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useBench } from '../../src/store/store.ts';
import { App } from '../../src/worksheets/App.tsx';

/** The page as somebody sees it who opens a sheet of the forty-metre example. */
export function openSheet(key: Parameters<ReturnType<typeof useBench.getState>['show']>[0]) {
  useBench.setState(useBench.getInitialState(), true);
  window.location.hash = `#${key}`;
  useBench.getState().show(key);
  const page = render(<App />);
  const field = (path: string): HTMLInputElement => {
    const found = page.container.querySelector<HTMLInputElement>(`[id="${path}"]`);
    if (!found) throw new Error(`no field ${path} on ${key}`);
    return found;
  };
  const beside = (path: string) =>
    page.container.querySelector(`[id="${path}:problem"]`)?.textContent ?? '';
  const lead = () => page.container.querySelector('.sentence')?.textContent ?? '';
  return { ...page, user: userEvent.setup(), field, beside, lead };
}
