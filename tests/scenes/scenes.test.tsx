import { cleanup, render } from '@testing-library/react';
import axe from 'axe-core';
import type { ReactNode } from 'react';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';

interface Scene {
  name: string;
  scene: () => ReactNode;
}

const scenes = Object.values(import.meta.glob<Scene>('./*.scene.tsx', { eager: true }));

/** What is read aloud or seen, a line an element that stands on its own. */
function text(element: Element): string {
  const lines: string[] = [];
  const alone = /^(P|H\d|LI|TR|DT|DD|LABEL|LEGEND|BUTTON|A|text|SUMMARY|CAPTION|DIV)$/;
  const walk = (node: Node) => {
    if (node.nodeType === 3) {
      lines[lines.length - 1] = `${lines[lines.length - 1] ?? ''}${node.textContent}`;
      return;
    }
    if (!(node instanceof Element)) return;
    if (node.matches('title, defs, [aria-hidden="true"]')) return;
    if (node instanceof HTMLInputElement) {
      const shown = node.type === 'radio' ? (node.checked ? '(x)' : '( )') : `[${node.value}]`;
      lines[lines.length - 1] = `${lines[lines.length - 1] ?? ''} ${shown} `;
      return;
    }
    if (alone.test(node.tagName)) lines.push('');
    for (const child of node.childNodes) walk(child);
    if (/^(TH|TD)$/.test(node.tagName)) {
      lines[lines.length - 1] = `${lines[lines.length - 1]} | `;
    }
    if (alone.test(node.tagName)) lines.push('');
  };
  walk(element);
  return lines
    .map((line) => line.replace(/\s+/g, ' ').trim())
    .filter((line) => line !== '')
    .join('\n');
}

describe('scenes', () => {
  const complaints: unknown[] = [];
  beforeEach(() => {
    complaints.length = 0;
    vi.spyOn(console, 'error').mockImplementation((...said) => complaints.push(said));
    vi.spyOn(console, 'warn').mockImplementation((...said) => complaints.push(said));
  });
  afterEach(() => {
    cleanup();
    vi.restoreAllMocks();
  });

  it('are all found', () => {
    expect(scenes.length).toBeGreaterThanOrEqual(9);
    expect(new Set(scenes.map((one) => one.name)).size).toBe(scenes.length);
  });

  it.each(scenes.map((one) => [one.name, one] as const))('%s reads as before', (name, one) => {
    const { container } = render(one.scene());
    expect(complaints).toEqual([]);
    expect(text(container)).toMatchSnapshot(name);
  });

  it.each(scenes.map((one) => [one.name, one] as const))('%s is accessible', async (_, one) => {
    const { container } = render(
      <div>
        <main>{one.name === 'Sheet' ? null : one.scene()}</main>
        {one.name === 'Sheet' && one.scene()}
      </div>,
    );
    const found = await axe.run(container, {
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'],
      // Colour is checked from the tokens; there is no layout here to see sizes in.
      rules: { 'color-contrast': { enabled: false }, 'target-size': { enabled: false } },
    });
    expect(found.violations.map((v) => [v.id, v.nodes.map((n) => n.html)])).toEqual([]);
  });

  it('gives every labelled thing an id of its own', () => {
    for (const one of scenes) {
      const { container } = render(one.scene());
      const ids = [...container.querySelectorAll('[id]')].map((element) => element.id);
      expect(ids.filter((id, i) => id !== 'hatch' && ids.indexOf(id) !== i)).toEqual([]);
      cleanup();
    }
  });
});
