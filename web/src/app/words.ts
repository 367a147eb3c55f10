import { count } from '../common/format';
import type { Documents } from './ask';

type Run = Documents['RunDocument'];

const states: Record<Run['state'], string> = {
  idle: 'not started', waiting: 'waiting for another study', going: 'being computed', stopping: 'stopping', stopped: 'stopped', finished: 'finished', failed: 'failed',
};

export const runWords = (run: Run) =>
  run.state === 'going' && run.stage ? `${run.stage}: ${count(run.done)} of ${count(run.items)}` : states[run.state];
export const isOn = (run: Run) => run.state === 'waiting' || run.state === 'going' || run.state === 'stopping';
