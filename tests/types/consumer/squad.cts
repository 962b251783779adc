// The same from CommonJS.
import backhalf = require('backhalf');
import tables = require('backhalf/tables');

const swim = backhalf.splitsFromLaps(50, [3150, 3350].map(backhalf.hundredths));
const halves = backhalf.halvesOf(swim);

export = {
  swim,
  halves,
  compared: backhalf.compareHalves(halves),
  read: (text: string) => tables.readSplitTable(text, { every: 50 }),
};
