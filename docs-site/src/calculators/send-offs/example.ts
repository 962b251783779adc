import type { SendOffFields } from './fields';

/** Ivo Tarn's lane, and the squad of the invented club Saltmarsh. */
export const saltmarsh: SendOffFields = {
  what: 'lane',
  distance: '100',
  rest: '20',
  reps: '10',
  stagger: '5',
  swim: '1:12',
  swimmers: '4',
  squad: [
    'Mara Quill\t1:05',
    'Ivo Tarn\t1:12',
    'Bea Loxley\t1:08,5',
    'Nils Farrow\t1:20',
    'Oona Price\t1:06',
    'Teo Lark\t1:18',
    'Ada Wren\t1:11',
    'Jun Marlow\t1:25',
  ].join('\n'),
  lanes: '3',
  cap: '4',
};
