import { Button } from '../../design/Button.tsx';
import { useBench } from '../../store/store.ts';

/** What is to be said about opening, keeping or losing something; stays until it is put away. */
export function Notices() {
  const notice = useBench((s) => s.notice);
  const tell = useBench((s) => s.tell);
  return (
    <div aria-live="polite" className="notices">
      {notice && (
        <div
          className={`notice notice--${notice.weight}`}
          role={notice.weight === 'bad' ? 'alert' : undefined}
        >
          <p>{notice.says}</p>
          {notice.reasons && (
            <ul>
              {notice.reasons.map((reason) => (
                <li key={reason}>{reason}</li>
              ))}
            </ul>
          )}
          <Button onPress={() => tell(null)}>Put away</Button>
        </div>
      )}
    </div>
  );
}
