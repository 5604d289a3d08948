'use strict';
// The window's own script: forms and results work without it.
const faults = document.getElementById('faults');
if (faults) {
  faults.focus();
}
