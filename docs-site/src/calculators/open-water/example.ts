import { emptyLegs, type WaterFields } from './fields';

/** Oona Price's 1500 of the invented club Saltmarsh: out against the ebb, home with it. */
export const ebb: WaterFields = {
  ...emptyLegs,
  job: 'plan',
  legs: '2',
  laps: '1',
  start: 'pace',
  pace: '1:20',
  speed: '1.25',
  goal: '20:00',
  split: 'even',
  by: '0:20',
  effect: 'none',
  length: '750',
  out: '11:00',
  back: '9:00',
  'distance-1': '750',
  'current-1': 'against',
  'size-1': '0.25',
  'distance-2': '750',
  'current-2': 'with',
  'size-2': '0.25',
};
