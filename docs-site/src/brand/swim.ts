import { hundredths, splitsFromLaps } from 'backhalf';

/** The swim whose curve is the mark: a 400 by Mara Quill of the invented club Saltmarsh, 50 m pool. */
export const markLaps = [3142, 3410, 3465, 3458, 3431, 3387, 3320, 3196].map(hundredths);
export const markSwim = splitsFromLaps(50, markLaps);
