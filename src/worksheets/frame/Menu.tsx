import { useRef } from 'react';
import { Button } from '../../design/Button.tsx';
import { fileName, saveBlob } from '../../design/saveBlob.ts';
import { examples } from '../../engine/rig/examples.ts';
import { LARGEST_FILE, writeRigFile } from '../../engine/rig/file.ts';
import { useBench } from '../../store/store.ts';
import { PrintMenu } from './PrintMenu.tsx';

/** New, open, save, print, and how the page looks. */
export function Menu() {
  const view = useBench((s) => s.view);
  const scheme = useBench((s) => s.scheme);
  const { newRig, openRig, setView, setScheme } = useBench.getState();
  const file = useRef<HTMLInputElement>(null);
  const projector = view === 'projector';
  return (
    <>
      <Button onPress={newRig}>New rig</Button>
      <label className="menu-choice menu-examples">
        <span className="unseen">Open an example</span>
        <select
          value=""
          onChange={(event) => {
            const rig = examples[Number(event.target.value)];
            if (rig) openRig(rig, `Open ${rig.title}`);
          }}
        >
          <option value="" disabled>
            Examples
          </option>
          {examples.map((rig, index) => (
            <option key={rig.title} value={index}>
              {rig.title}
            </option>
          ))}
        </select>
      </label>
      <Button onPress={() => file.current?.click()}>Open…</Button>
      <input
        ref={file}
        className="unseen"
        type="file"
        accept=".json,application/json"
        aria-label="Open a rig file"
        tabIndex={-1}
        onChange={(event) => {
          const [chosen] = event.target.files ?? [];
          event.target.value = '';
          if (chosen) void openFile(chosen);
        }}
      />
      <Button onPress={saveFile}>Save</Button>
      <PrintMenu />
      <Button
        pressed={projector}
        onPress={() => setView(projector ? 'desk' : 'projector')}
        label="Large type for a projector; arrow keys step through the workings"
      >
        Projector
      </Button>
      <Button
        onPress={() => setScheme(nextScheme[scheme])}
        label="Light, dark, or as the system says"
      >
        {schemeName[scheme]}
      </Button>
    </>
  );
}

const nextScheme = { auto: 'light', light: 'dark', dark: 'auto' } as const;
const schemeName = { auto: 'Light or dark', light: 'Light', dark: 'Dark' } as const;

async function openFile(file: File): Promise<void> {
  const { openText, tell } = useBench.getState();
  if (file.size > LARGEST_FILE) {
    tell({ weight: 'bad', says: `“${file.name}” is larger than any rig; nothing has changed.` });
    return;
  }
  try {
    openText(await file.text(), file.name);
  } catch {
    tell({ weight: 'bad', says: `“${file.name}” could not be read; nothing has changed.` });
  }
}

function saveFile(): void {
  const { rig } = useBench.getState();
  saveBlob(
    fileName(rig.title, 'json'),
    new Blob([writeRigFile(rig)], { type: 'application/json' }),
  );
}
